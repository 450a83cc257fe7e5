# SPDX-License-Identifier: GPL-3.0-or-later
include(headers)

# A room of the house is one static library that sees only the rooms named for it: what is not linked is not found.
# A folder inside a room is a room of its own: `fabric/numeric` is the target crownring_fabric_numeric.
#   crownring_room(NAME SOURCES a.cpp … [ROOMS other …] [LIBRARIES lib …])
function(crownring_room name)
    cmake_parse_arguments(ROOM "" "" "SOURCES;ROOMS;LIBRARIES;PRIVATE_LIBRARIES" ${ARGN})
    string(REPLACE "/" "_" target crownring_${name})
    list(TRANSFORM ROOM_ROOMS REPLACE "/" "_")
    list(TRANSFORM ROOM_ROOMS PREPEND crownring_)
    if(ROOM_SOURCES)
        add_library(${target} STATIC ${ROOM_SOURCES})
        target_include_directories(${target} PUBLIC ${CMAKE_SOURCE_DIR}/core)
        target_link_libraries(${target} PUBLIC ${ROOM_ROOMS} ${ROOM_LIBRARIES} PRIVATE ${ROOM_PRIVATE_LIBRARIES})
        crownring_begin_with_headers(${name} ${target} "${ROOM_ROOMS}")
    else()
        add_library(${target} INTERFACE)
        target_include_directories(${target} INTERFACE ${CMAKE_SOURCE_DIR}/core)
        target_link_libraries(${target} INTERFACE ${ROOM_ROOMS} ${ROOM_LIBRARIES})
    endif()
endfunction()

# A room that is nothing but its folders; who links it links them all.
#   crownring_rooms(NAME folder …)
function(crownring_rooms name)
    foreach(folder IN LISTS ARGN)
        add_subdirectory(${folder})
        list(APPEND folders ${name}/${folder})
    endforeach()
    crownring_room(${name} ROOMS ${folders})
endfunction()

# Puts files into the program as texts: defines in NAME.cpp `namespace crownring::embedded`, a function NAME() that returns
# the pairs of file name and content. Sets ${name} to the path of the generated source.
function(crownring_embed name)
    file(GLOB files CONFIGURE_DEPENDS ${ARGN})
    set(source ${CMAKE_CURRENT_BINARY_DIR}/${name}.cpp)
    add_custom_command(OUTPUT ${source}
        COMMAND ${CMAKE_COMMAND} "-DNAME=${name}" "-DOUT=${source}" "-DFILES=${files}" -P ${CMAKE_SOURCE_DIR}/core/embed.cmake
        DEPENDS ${files} ${CMAKE_SOURCE_DIR}/core/embed.cmake VERBATIM)
    set(${name} ${source} PARENT_SCOPE)
endfunction()
