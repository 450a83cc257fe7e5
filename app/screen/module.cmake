# SPDX-License-Identifier: GPL-3.0-or-later
option(CROWNRING_QML_AHEAD "Compile QML ahead: a quicker start for a much longer build" OFF)

# What nearly every file of the screen begins with, compiled once.
add_library(crownring_screen_headers STATIC ${CMAKE_CURRENT_LIST_DIR}/headers.cpp)
target_link_libraries(crownring_screen_headers PUBLIC crownring_words crownring_registry crownring_rules Qt6::Core Qt6::Gui
    Qt6::Qml Qt6::Quick)
target_precompile_headers(crownring_screen_headers PRIVATE <QtCore/QtCore> <QtQml/qqmlregistration.h> <registry/books.h>
    <rules/due/due_list.h>)

# One folder of the screen, seen from QML as Crownring.NAME: the C++ of app/screen/NAME and the QML of qml/NAME.
# USES names the modules below that it may know.
#   crownring_module(NAME [USES module …] [LIBRARIES lib …] [PRIVATE_LIBRARIES lib …] [IMPORTS QtCharts …])
function(crownring_module name)
    cmake_parse_arguments(MODULE "" "" "USES;LIBRARIES;PRIVATE_LIBRARIES;IMPORTS" ${ARGN})
    set(target crownring_screen_${name})
    file(GLOB sources CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/app/screen/${name}/*.cpp ${CMAKE_SOURCE_DIR}/app/screen/${name}/*.h
        ${CMAKE_SOURCE_DIR}/app/screen/${name}/*/*.cpp ${CMAKE_SOURCE_DIR}/app/screen/${name}/*/*.h)
    file(GLOB files CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/qml/${name}/*.qml)
    foreach(file IN LISTS files)
        get_filename_component(alias ${file} NAME)
        set_source_files_properties(${file} PROPERTIES QT_RESOURCE_ALIAS ${alias})
    endforeach()
    string(SUBSTRING ${name} 0 1 first)
    string(SUBSTRING ${name} 1 -1 rest)
    string(TOUPPER ${first} first)
    set(uri Crownring.${first}${rest})
    set(imports QtQuick QtQml.Models ${MODULE_IMPORTS})
    foreach(used IN LISTS MODULE_USES)
        get_target_property(below crownring_screen_${used} QT_QML_MODULE_URI)
        list(APPEND imports ${below})
    endforeach()
    if(NOT CROWNRING_QML_AHEAD)
        set(interpreted NO_CACHEGEN)
    endif()
    qt_add_library(${target} STATIC)
    # moc 6.4 stumbles over <concepts> when it is the first header of a file; classes for moc need nothing of it.
    set_target_properties(${target} PROPERTIES AUTOMOC ON AUTOMOC_MOC_OPTIONS "-D_GLIBCXX_CONCEPTS")
    qt_add_qml_module(${target} URI ${uri} VERSION 1.0 RESOURCE_PREFIX /qt/qml
        OUTPUT_DIRECTORY ${CMAKE_BINARY_DIR}/imports/Crownring/${first}${rest} IMPORT_PATH ${CMAKE_BINARY_DIR}/imports
        ${interpreted} DEPENDENCIES ${imports} SOURCES ${sources} QML_FILES ${files})
    list(TRANSFORM MODULE_USES PREPEND crownring_screen_ OUTPUT_VARIABLE uses)
    target_include_directories(${target} PUBLIC ${CMAKE_SOURCE_DIR}/app)
    target_link_libraries(${target} PUBLIC ${uses} ${MODULE_LIBRARIES} Qt6::Core Qt6::Gui Qt6::Qml Qt6::Quick
        PRIVATE ${MODULE_PRIVATE_LIBRARIES})
    if(sources)
        target_link_libraries(${target} PUBLIC crownring_words)
        target_precompile_headers(${target} REUSE_FROM crownring_screen_headers)
    endif()
    set_property(GLOBAL APPEND PROPERTY crownring_modules ${name})
    # The linter reads what the modules below have written of themselves.
    if(TARGET ${target}_qmllint AND uses)
        add_dependencies(${target} ${uses})
    endif()
endfunction()
