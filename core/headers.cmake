# SPDX-License-Identifier: GPL-3.0-or-later
# What the files of a room begin with is compiled once a storey, not once a file: a room takes the headers of the highest
# storey that it sees. Every build does so.
set(plain_headers <algorithm> <array> <charconv> <chrono> <cmath> <cstdint> <functional> <map> <memory> <numeric> <optional>
    <set> <span> <string> <string_view> <tuple> <unordered_map> <utility> <variant> <vector> <tl/expected.hpp>)

#   crownring_headers(STOREY <header> …)
function(crownring_headers storey)
    set(target crownring_${storey}_headers)
    add_library(${target} OBJECT ${CMAKE_SOURCE_DIR}/core/headers.cpp)
    set_target_properties(${target} PROPERTIES POSITION_INDEPENDENT_CODE ON)
    target_include_directories(${target} PRIVATE ${CMAKE_SOURCE_DIR}/core)
    target_precompile_headers(${target} PRIVATE ${plain_headers} ${ARGN})
    if(CROWNRING_SANITIZE)
        crownring_sanitise(${storey}_headers ${target})
    endif()
endfunction()

function(crownring_begin_with_headers name target rooms)
    set(storey plain)
    if(name MATCHES "^fabric/")
        set(storey fabric)
    elseif(name STREQUAL record OR rooms MATCHES crownring_record)
        set(storey record)
    endif()
    set_target_properties(${target} PROPERTIES POSITION_INDEPENDENT_CODE ON)
    target_precompile_headers(${target} REUSE_FROM crownring_${storey}_headers)
    if(CROWNRING_SANITIZE)
        crownring_sanitise(${name} ${target})
    endif()
endfunction()
