# SPDX-License-Identifier: GPL-3.0-or-later
# What is tested is optimised and checked for undefined behaviour; the tests themselves are mostly templates that cost
# more to compile so than to run. Without the two macros, which Qt gives each folder its own value of, the headers below
# can be shared.
set(test_options -O0 -UQT_TESTCASE_BUILDDIR -UQT_TESTCASE_SOURCEDIR -fno-sanitize=undefined)

# The heavy headers that most tests begin with, compiled once.
add_library(crownring_test_headers STATIC test_headers.cpp)
target_link_libraries(crownring_test_headers PRIVATE Qt6::Test rapidcheck)
target_compile_options(crownring_test_headers PRIVATE ${test_options})
target_precompile_headers(crownring_test_headers PRIVATE <QtTest> <rapidcheck.h>)

#   crownring_test(NAME LABEL record SOURCES a_test.cpp LIBRARIES crownring_record …)
# Each test is a Qt Test program without a window; RapidCheck is there for properties. The first source includes its moc;
# AUTOMOC would compile a second file for each test.
function(crownring_test name)
    cmake_parse_arguments(TEST "" "LABEL" "SOURCES;LIBRARIES" ${ARGN})
    list(GET TEST_SOURCES 0 source)
    cmake_path(REPLACE_EXTENSION source moc OUTPUT_VARIABLE moc)
    qt_generate_moc(${source} ${CMAKE_CURRENT_BINARY_DIR}/${moc})
    add_executable(${name} ${TEST_SOURCES} ${CMAKE_CURRENT_BINARY_DIR}/${moc})
    target_include_directories(${name} PRIVATE ${CMAKE_CURRENT_BINARY_DIR})
    target_link_libraries(${name} PRIVATE ${TEST_LIBRARIES} Qt6::Test rapidcheck)
    target_compile_options(${name} PRIVATE ${test_options})
    # Where Qt Gui is linked the same headers read differently.
    if(NOT TEST_LIBRARIES MATCHES "crownring_screen|crownring_qml|Gui|Widgets")
        target_precompile_headers(${name} REUSE_FROM crownring_test_headers)
    endif()
    target_include_directories(${name} PRIVATE ${CMAKE_SOURCE_DIR}/tests)
    target_compile_definitions(${name} PRIVATE CROWNRING_SOURCE_DIR="${CMAKE_SOURCE_DIR}")
    add_test(NAME ${name} COMMAND ${name})
    set_tests_properties(${name} PROPERTIES LABELS "${TEST_LABEL}" ENVIRONMENT "QT_QPA_PLATFORM=offscreen;RC_PARAMS=seed=20261125")
endfunction()
