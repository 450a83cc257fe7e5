// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is stated of a kind of entries. Beside the struct that holds what such an entry says, say `FlightLogged`,
/// stands `Kind<FlightLogged>` with all of these; one that leaves any out does not compile:
///
///     name        "flight.logged": written here, and asked for as `kindName<FlightLogged>()`
///     keys        for people: what `crownringctl post --help` says of its keys; in brackets what may be left out
///     time        of the day, when an entry states none
///     mentions    what must be in the record for it to make sense: a `Key` each, in the order of complaint
///     brings      the member with the name that it brings into the record, or `nothing`
///     toldUnder   the members with the names that it is found under, beside the rows of its own
///     hasRows     whether the projections keep rows of its own for it; an amendment's are those of what it amends
///     inspection  the member with the inspection that it adds a word to, or `nothing`
///     read        takes its keys from JSON
///     write       puts them back, defaults left out: the record's hashes rest on these texts, so they never change

#include "civil/moment.h"

#include <nlohmann/json_fwd.hpp>

#include <concepts>
#include <string_view>
#include <tuple>

namespace crownring {

class ObjectReader;

template <class Body>
struct Kind;

inline constexpr struct Nothing {
} nothing;

/// The key by which an entry speaks of names, and how to get at them: a member, or a function of the struct.
template <class Names>
struct Key {
    std::string_view key;
    Names names;
};
template <class Names>
Key(const char*, Names) -> Key<Names>;

template <class Body>
concept EntryKind = std::equality_comparable<Body> &&
    requires(ObjectReader& reader, nlohmann::json& into, const Body& body) {
    { Kind<Body>::name } -> std::convertible_to<std::string_view>;
    { Kind<Body>::keys } -> std::convertible_to<std::string_view>;
    { Kind<Body>::time } -> std::convertible_to<TimeOfDay>;
    Kind<Body>::mentions;
    Kind<Body>::brings;
    Kind<Body>::toldUnder;
    { Kind<Body>::hasRows } -> std::convertible_to<bool>;
    Kind<Body>::inspection;
    { Kind<Body>::read(reader) } -> std::same_as<Body>;
    { Kind<Body>::write(into, body) } -> std::same_as<void>;
};

/// Whether entries of this kind add a word to an inspection, or may.
template <class Body>
concept OfInspection = !std::same_as<decltype(Kind<Body>::inspection), const Nothing>;

}
