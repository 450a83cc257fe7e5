// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a signature consists of, for saying that it is another than the record composes; and what vouches for it.

#include "problem/argument.h"

namespace crownring {

enum class SignedPhrase : std::uint8_t {
    Statement,
    Licence,
    Clocks,
    Exceptions,
    Seal,
    Outstanding,
    Covers,
    ItemAt,   ///< %1: the item, %2: its time in service
    ItemAsks, ///< %1: the item, %2: a requirement
    Nothing,
    Confirmed,   ///< who confirmed the wording
    ConfirmedAs, ///< %1: the text, %2: its revision, %3: by whom, %4: when, %5: against what
    DraftUnconfirmed,
    WordingConfirmed, ///< %1: the rule, %2: by whom, %3: licence, %4: what
    WordingOfADay,    ///< %1: the text or checklist, %2: its revision, %3: when
    WordingUnsaid,
    WithCode, ///< %1: the beginning of the key
    WithoutCode,
};

}
