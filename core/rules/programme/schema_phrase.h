// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a schema allows at a place, for the mend of a problem: "give …".

#include "problem/argument.h"

namespace crownring {

enum class SchemaPhrase : std::uint8_t {
    OneOf,        ///< %1: the words
    OneOfTheKeys, ///< %1: the keys
    WholeNumber,  ///< %1, %2: the least and the most
    TextLike,     ///< %1: a regular expression
    TextOfLength, ///< %1: the most characters
    TrueOrFalse,
    List,
    ListNotEmpty,
    WhatTheSchemaStates, ///< %1: the file of the schema
};

}
