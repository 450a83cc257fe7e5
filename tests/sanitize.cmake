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
if(CMAKE_CXX_COMPILER_ID STREQUAL Clang)
    # The collector of QML's engine scans the real stack, so nothing is kept beside it; then no function need ask.
    add_compile_options(-fsanitize-address-use-after-return=never)
elseif(CMAKE_CXX_COMPILER_ID STREQUAL GNU)
    # With its own instrumentation in the way g++ sees uninitialised values in std::regex that are none.
    add_compile_options(-Wno-maybe-uninitialized)
endif()

# What the sanitised tree asks of a room besides. Optimised is what every test waits for, reading and keeping a record, and what
# computes long; the rest is mostly templates that take up to four times as long to compile so (seconds of a core, clang 14:
# gate 7 and 33, crownringctl 13 and 37; store/journal 13 and 13). What reads the bytes of others is counted for the fuzz targets.
set(optimised -O1)
set(optimised_rooms "^(fabric|record|rules|registry|store|civil|measure|problem|text)(/|$)")
set(coverage inline-8bit-counters,indirect-calls,trace-cmp,pc-table)
function(crownring_sanitise room target)
    if(room MATCHES "${optimised_rooms}")
        target_compile_options(${target} PRIVATE ${optimised})
    endif()
    if(CMAKE_CXX_COMPILER_ID STREQUAL Clang AND room MATCHES "^(measure|civil|record|rules|exchange)")
        target_compile_options(${target} PRIVATE -fsanitize-coverage=${coverage})
    endif()
endfunction()

# Links what tests/optimised.cpp holds in front of a program's own files (gate/release_gate, seconds of a core: 30 without, 19
# with it; it takes 15 to compile, once).
if(CMAKE_CXX_COMPILER_ID STREQUAL Clang)
    add_library(crownring_optimised OBJECT ${CMAKE_CURRENT_LIST_DIR}/optimised.cpp)
    target_compile_options(crownring_optimised PRIVATE ${optimised})
    set_target_properties(crownring_optimised PROPERTIES POSITION_INDEPENDENT_CODE ON UNITY_BUILD OFF)
endif()
function(crownring_lead program)
    if(TARGET crownring_optimised)
        add_dependencies(${program} crownring_optimised)
        target_link_options(${program} PRIVATE $<TARGET_OBJECTS:crownring_optimised>)
    endif()
endfunction()
