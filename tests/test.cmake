# SPDX-License-Identifier: GPL-3.0-or-later
# Tests are mostly templates that cost more to compile with checks for undefined behaviour than to run. Without the two
# macros, which Qt gives each folder its own value of, the headers below can be shared.
set(test_options -O0 -UQT_TESTCASE_BUILDDIR -UQT_TESTCASE_SOURCEDIR -fno-sanitize=undefined)

# The heavy headers that tests begin with, compiled once; where Qt Gui is linked the same ones read differently.
#   crownring_test_headers(NAME LIBRARIES … HEADERS <header> …)
function(crownring_test_headers name)
    cmake_parse_arguments(TEST "" "" "LIBRARIES;HEADERS" ${ARGN})
    add_library(crownring_${name} STATIC ${CMAKE_SOURCE_DIR}/tests/test_main.cpp)
    target_link_libraries(crownring_${name} PUBLIC Qt6::Test rapidcheck ${TEST_LIBRARIES})
    target_include_directories(crownring_${name} PUBLIC ${CMAKE_SOURCE_DIR}/tests)
    target_compile_options(crownring_${name} PRIVATE ${test_options})
    target_precompile_headers(crownring_${name} PRIVATE <QtTest> <rapidcheck.h> ${TEST_HEADERS})
endfunction()

# What cannot notice the machine's zone: nothing of it asks for a local time (tests/lint holds it to that), so one zone tells
# all. Left are the civil dates themselves, crownringctl, which asks for today, and QML, whose engine has dates of its own.
set(timeless text problem paper measure record registry rules bench fabric parts forecast answers gate acts sheets print store exchange
    words writing screen trust)

# The tests of this folder and those below it are one program, ROOM_tests; each NAME_test.cpp is a class that it runs in a
# process of its own and a test of ctest, called by its path. Files of other names are what tests share.
#   crownring_tests(ROOM LABEL record LIBRARIES crownring_record … [WINDOW])
function(crownring_tests room)
    cmake_parse_arguments(TEST "WINDOW" "LABEL" "LIBRARIES" ${ARGN})
    file(GLOB_RECURSE sources RELATIVE ${CMAKE_CURRENT_SOURCE_DIR} CONFIGURE_DEPENDS *.cpp)
    set(program ${room}_tests)
    add_executable(${program} ${sources})
    target_include_directories(${program} PRIVATE ${CMAKE_CURRENT_BINARY_DIR})
    target_compile_options(${program} PRIVATE ${test_options})
    target_compile_definitions(${program} PRIVATE CROWNRING_SOURCE_DIR="${CMAKE_SOURCE_DIR}")
    if(TEST_WINDOW)
        set(main crownring_window_test_main)
    else()
        set(main crownring_test_main)
    endif()
    target_link_libraries(${program} PRIVATE ${main} ${TEST_LIBRARIES})
    target_precompile_headers(${program} REUSE_FROM ${main})
    if(room IN_LIST timeless)
        list(APPEND TEST_LABEL timeless)
    endif()
    list(FILTER sources INCLUDE REGEX "_test\\.cpp$")
    foreach(source IN LISTS sources)
        # Included at the end of its source; AUTOMOC would compile a second file for each.
        cmake_path(GET source STEM stem)
        qt_generate_moc(${source} ${CMAKE_CURRENT_BINARY_DIR}/${stem}.moc)
        target_sources(${program} PRIVATE ${CMAKE_CURRENT_BINARY_DIR}/${stem}.moc)
        string(REGEX REPLACE "_test\\.cpp$" "" name ${source})
        string(REGEX REPLACE "_test$" "" class ${stem})
        add_test(NAME ${room}/${name} COMMAND ${program} ${class})
        set_tests_properties(${room}/${name} PROPERTIES LABELS "${TEST_LABEL}"
            ENVIRONMENT "QT_QPA_PLATFORM=offscreen;QT_QUICK_BACKEND=software;RC_PARAMS=seed=20261125;QTEST_FUNCTION_TIMEOUT=600000;XDG_CACHE_HOME=${CMAKE_BINARY_DIR}/cache")
        # They wipe the database that they are offered, and take turns.
        file(STRINGS ${source} shared REGEX "shared_database\\.h")
        if(shared)
            set_tests_properties(${room}/${name} PROPERTIES RESOURCE_LOCK shared_database)
        endif()
    endforeach()
endfunction()
