// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Why a record is not what was written, or cannot be read.

#include "problem/argument.h"

namespace crownring {

enum class VerdictPhrase : std::uint8_t {
    EntryBeforeMissing,
    WriterUnknown,
    HashDiffers,
    NoEntry, ///< %1: why
    ColumnsDiffer,
    LastEntriesMissing, ///< %1: the writer
    TableLacks,         ///< %1: the table, %2: the row
    TableHoldsMore,     ///< %1: the table, %2: the row
    SchemaDiffers,      ///< %1: its part
    StepDiffers,        ///< %1: the number of the step
    PhotographDiffers,  ///< %1: its digest
    PhotographsOther,
    FileDamaged,      ///< %1: what the database says
    ReferenceDangles, ///< %1: the table
    Unreadable,       ///< %1: why
    Stopped,
    LineUnread,    ///< %1: its number, %2: the kind of entry, %3: why
    LineKeyUnread, ///< %1: its number, %2: the kind of entry, %3: the key, %4: why
};

}
