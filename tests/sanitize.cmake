# SPDX-License-Identifier: GPL-3.0-or-later
# One sanitised tree for tests and fuzz targets. Of the checks for undefined behaviour those that find bugs of ours. Not
# `null` and `alignment`: they guard each access of each template, a quarter of what a file of core costs to compile
# (entry_json.cpp with clang 14, seconds of a core: addresses alone 2.8, these 2.9, with null 3.4, with alignment 3.6, with
# all 4.0), and what they would catch the address sanitizer catches, when it is used.
set(undefined signed-integer-overflow integer-divide-by-zero shift bounds bool enum float-cast-overflow
    nonnull-attribute returns-nonnull-attribute return unreachable builtin)
list(JOIN undefined , undefined)
add_compile_options(-fsanitize=address,${undefined} -fno-sanitize-recover=all -fno-omit-frame-pointer)
add_link_options(-fsanitize=address,${undefined})
if(CMAKE_CXX_COMPILER_ID STREQUAL GNU)
    # With its own instrumentation in the way g++ sees uninitialised values in std::regex that are none.
    add_compile_options(-Wno-maybe-uninitialized)
endif()
