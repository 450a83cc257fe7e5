// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The record as a file or a database.

#include "problem/fault.h"

namespace crownring {

enum class StoreFault : std::uint8_t {
    Refused,       ///< %1: what the database says
    Busy,          ///< %1: what the database says
    DiskFull,      ///< %1: what the database says
    DiskFailed,    ///< %1: what the database says
    Damaged,       ///< %1: what the database says
    RightsMissing, ///< %1: what the database says
    Lost,          ///< %1: what the database says; nothing was written
    CommitUnknown, ///< %1: what the database says, %2: the id of an entry
    Gone,          ///< %1: where it was opened
    ChangedMeanwhile,
    NotOpened,       ///< %1: what the database says
    SettingNotTaken, ///< %1: the setting, %2: as it is, %3: as it must be
    NoRecord,        ///< %1: where
    EmptyFile,       ///< %1: where
    IsAFolder,       ///< %1: where
    NoFile,          ///< %1: the name
    NotADatabase,    ///< %1: what the database says
    OtherProgramsFile,
    OtherProgramsTables,
    Newer,       ///< %1: the version of its schema, %2: the newest known here
    Older,       ///< the same, where it may not be written
    OtherSchema, ///< %1: the table, index or trigger
    ReadOnlyFile,
    ReadOnlyFolder, ///< %1: the folder
    DriverGivesNoHandle,
    ValueUnread, ///< %1: the table, %2: the row, %3: the column
    NameAltered, ///< %1: as it stands, %2: its number
    NameMissing,
    NotIntact,
    SubjectNotIntact, ///< %1: the item or balloon
    EntryAltered,     ///< %1: the id of an entry
    JournalAltered,   ///< %1: what is wrong with it
    RecordAltered,    ///< %1: what is wrong with it
    AmendsItself,     ///< %1: the id of an entry
    JournalLacks,     ///< %1: the id of an entry that another amends
    CopyDamaged,
    CopyDangles,
    CopyBroken, ///< %1: why
    SharedRecord,
    IdTwice,             ///< %1: the id
    IdKnown,             ///< %1: the id
    NoEntry,             ///< %1: the id
    ItemNotEntered,      ///< %1: its id
    BalloonNotEntered,   ///< %1: its registration
    InspectionNotOpened, ///< %1: its name
    DefectNotFound,      ///< %1: its name
    PersonNotEntitled,   ///< %1: the name
    NothingNamedSo,      ///< %1: the name
    CannotBeCorrected,   ///< %1: the id of an entry that cannot be read
};
[[nodiscard]] FaultRow rowOf(StoreFault fault);
/// Something in the record is not what was written there: nothing may be said from it.
[[nodiscard]] bool isDamage(const Fault& fault);

}
