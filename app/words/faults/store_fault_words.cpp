// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/store_fault.h"
#include "words/fault_sources.h"

#include <QtGlobal>

namespace crownring::words {

Sources sourcesOf(StoreFault fault) {
    switch (fault) {
    case StoreFault::Refused:
        return {QT_TRANSLATE_NOOP("Problem", "the database of the record cannot do this: what it holds may not be as "
                                             "this program made it (the database says: %1)"),
                QT_TRANSLATE_NOOP("Problem",
                                  "nothing was written; verify the record, and go back to a backup that verifies")};
    case StoreFault::Busy:
        return {QT_TRANSLATE_NOOP("Problem", "another program is writing to the record (the database says: %1)"),
                QT_TRANSLATE_NOOP("Problem", "nothing was written; try again in a moment")};
    case StoreFault::DiskFull:
        return {QT_TRANSLATE_NOOP("Problem", "the disk that holds the record is full (the database says: %1)"),
                QT_TRANSLATE_NOOP(
                    "Problem", "nothing was written and nothing is lost; free space on that disk, then do it again")};
    case StoreFault::DiskFailed:
        return {QT_TRANSLATE_NOOP("Problem", "the disk that holds the record failed (the database says: %1)"),
                QT_TRANSLATE_NOOP("Problem", "nothing was written; see that the disk is well, then verify the record")};
    case StoreFault::Damaged:
        return {QT_TRANSLATE_NOOP("Problem", "the file of the record is damaged (the database says: %1)"),
                QT_TRANSLATE_NOOP("Problem", "verify the record, and go back to a backup that verifies")};
    case StoreFault::RightsMissing:
        return {QT_TRANSLATE_NOOP("Problem", "the record's server does not let you do this (the database says: %1)"),
                QT_TRANSLATE_NOOP("Problem", "nothing was written; ask who keeps the server for the right to")};
    case StoreFault::Lost:
        return {QT_TRANSLATE_NOOP("Problem", "the connection to the shared record was lost (the database says: %1)"),
                QT_TRANSLATE_NOOP("Problem", "nothing was written; do it again when the server is there")};
    case StoreFault::CommitUnknown:
        return {QT_TRANSLATE_NOOP("Problem", "it is unknown whether this was written: the connection to the shared"
                                             " record was lost before it answered (the database says: %1)"),
                QT_TRANSLATE_NOOP("Problem",
                                  "when the server is there, look in the journal for the entry %2; all of it was"
                                  " written or none")};
    case StoreFault::Gone:
        return {QT_TRANSLATE_NOOP("Problem", "the record is no longer where it was opened (%1): it was moved, deleted"
                                             " or replaced"),
                QT_TRANSLATE_NOOP("Problem", "nothing was written; open it where it is now")};
    case StoreFault::ChangedMeanwhile:
        return {QT_TRANSLATE_NOOP("Problem", "somebody else has written to the record, which is only read here"),
                QT_TRANSLATE_NOOP("Problem", "open it again")};
    case StoreFault::NotOpened:
        return {QT_TRANSLATE_NOOP("Problem", "the record cannot be opened (the database says: %1)"),
                QT_TRANSLATE_NOOP("Problem", "check the name and whether it may be read and written")};
    case StoreFault::SettingNotTaken:
        return {QT_TRANSLATE_NOOP("Problem", "the database does not work as the record needs it (%1 is %2, not %3)"),
                QT_TRANSLATE_NOOP("Problem", "check the name and whether it may be read and written")};
    case StoreFault::NoRecord:
        return {QT_TRANSLATE_NOOP("Problem", "there is no record at %1"),
                QT_TRANSLATE_NOOP("Problem", "check the name and whether it may be read and written")};
    case StoreFault::EmptyFile:
        return {QT_TRANSLATE_NOOP("Problem", "the file %1 is empty: it holds no record"),
                QT_TRANSLATE_NOOP(
                    "Problem", "see whether it is the right file, and go back to a backup; an act that writes makes a "
                               "new record of it")};
    case StoreFault::IsAFolder:
        return {QT_TRANSLATE_NOOP("Problem", "%1 is a folder"),
                QT_TRANSLATE_NOOP("Problem", "check the name and whether it may be read and written")};
    case StoreFault::NoFile:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' names no file that a record could be"),
                QT_TRANSLATE_NOOP("Problem", "name a file: no device, no pipe, no memory")};
    case StoreFault::NotADatabase:
        return {QT_TRANSLATE_NOOP("Problem",
                                  "this file is no record of Crownring, or so damaged that it can no longer be told "
                                  "(the database says: %1)"),
                QT_TRANSLATE_NOOP("Problem",
                                  "name a Crownring record or a new file; if it was one, go back to a backup that "
                                  "verifies")};
    case StoreFault::OtherProgramsFile:
        return {QT_TRANSLATE_NOOP("Problem", "the file is a database of another program"),
                QT_TRANSLATE_NOOP("Problem", "name a Crownring record, or a new file")};
    case StoreFault::OtherProgramsTables:
        return {QT_TRANSLATE_NOOP("Problem", "the database holds tables of another program"),
                QT_TRANSLATE_NOOP("Problem", "name a Crownring record, or a new file")};
    case StoreFault::Newer:
        return {QT_TRANSLATE_NOOP("Problem",
                                  "the record was written by a later version (schema %1, this program knows %2)"),
                QT_TRANSLATE_NOOP("Problem", "use the newer program")};
    case StoreFault::Older:
        return {QT_TRANSLATE_NOOP("Problem", "the record was written by an earlier version (schema %1, this program "
                                             "reads %2), and may not be written here to bring it up to date"),
                QT_TRANSLATE_NOOP("Problem", "copy it to a folder where it may be written, and open the copy")};
    case StoreFault::OtherSchema:
        return {QT_TRANSLATE_NOOP("Problem", "the record may only be read: its database is not built as this version "
                                             "builds it (%1)"),
                QT_TRANSLATE_NOOP("Problem", "go back to a backup that verifies, and find out who altered the file")};
    case StoreFault::ReadOnlyFile:
        return {QT_TRANSLATE_NOOP("Problem", "the file may only be read"),
                QT_TRANSLATE_NOOP("Problem", "see that it may be written, or copy it")};
    case StoreFault::ReadOnlyFolder:
        return {QT_TRANSLATE_NOOP("Problem", "the record may only be read: nothing may be written into its folder %1"),
                QT_TRANSLATE_NOOP("Problem", "see that the folder may be written, or copy the record elsewhere")};
    case StoreFault::DriverGivesNoHandle:
        return {QT_TRANSLATE_NOOP("Problem", "the database driver gives no SQLite handle"),
                QT_TRANSLATE_NOOP("Problem", "install Qt's SQLite driver as the system has it")};
    case StoreFault::NameAltered:
        return {QT_TRANSLATE_NOOP("Problem", "what the record holds is damaged: another name was written where '%1' "
                                             "stands now (name %2)"),
                QT_TRANSLATE_NOOP("Problem", "see what verify says; rebuild makes the names anew from the journal")};
    case StoreFault::NameMissing:
        return {QT_TRANSLATE_NOOP("Problem",
                                  "what the record holds is damaged: a name is missing that its journal has, and "
                                  "nobody can say that this one is not in it"),
                QT_TRANSLATE_NOOP("Problem", "see what verify says; rebuild makes the names anew from the journal")};
    case StoreFault::ValueUnread:
        return {QT_TRANSLATE_NOOP(
                    "Problem",
                    "what the record holds is damaged: nothing can be made of %3 in the table %1 (there stands: %2)"),
                QT_TRANSLATE_NOOP("Problem", "verify the record; where its journal is sound, rebuild it")};
    case StoreFault::NotIntact:
        return {QT_TRANSLATE_NOOP("Problem",
                                  "the record is not intact: what stands beside its journal is not what was written"),
                QT_TRANSLATE_NOOP("Problem", "verify the record; where its journal is sound, rebuild it")};
    case StoreFault::SubjectNotIntact:
        return {QT_TRANSLATE_NOOP("Problem", "the record is not intact: what it holds of %1 is not what was written"),
                QT_TRANSLATE_NOOP("Problem", "verify the record; where its journal is sound, rebuild it")};
    case StoreFault::EntryAltered:
        return {QT_TRANSLATE_NOOP("Problem", "the record is not intact: the entry '%1' is not what was written"),
                QT_TRANSLATE_NOOP("Problem", "verify the record, and go back to a copy that is intact")};
    case StoreFault::JournalAltered:
        return {QT_TRANSLATE_NOOP("Problem", "the journal itself is not intact: %1"),
                QT_TRANSLATE_NOOP("Problem", "go back to a copy that is intact")};
    case StoreFault::RecordAltered:
        return {QT_TRANSLATE_NOOP("Problem", "the record is not intact: %1"),
                QT_TRANSLATE_NOOP("Problem", "go back to a copy that is intact")};
    case StoreFault::AmendsItself:
        return {QT_TRANSLATE_NOOP("Problem", "what the record holds is damaged: the entry '%1' amends itself"),
                QT_TRANSLATE_NOOP("Problem", "verify the record")};
    case StoreFault::JournalLacks:
        return {QT_TRANSLATE_NOOP("Problem", "the journal lacks the entry '%1'"),
                QT_TRANSLATE_NOOP("Problem", "verify the record")};
    case StoreFault::CopyDamaged:
        return {QT_TRANSLATE_NOOP("Problem", "the copy is damaged"), QT_TRANSLATE_NOOP("Problem", "verify the record")};
    case StoreFault::CopyDangles:
        return {QT_TRANSLATE_NOOP("Problem", "the copy has references that lead nowhere"),
                QT_TRANSLATE_NOOP("Problem", "verify the record")};
    case StoreFault::CopyBroken:
        return {QT_TRANSLATE_NOOP("Problem", "the copy is not intact: %1"),
                QT_TRANSLATE_NOOP("Problem", "verify the record")};
    case StoreFault::SharedRecord:
        return {QT_TRANSLATE_NOOP("Problem", "a shared record is backed up by its database server"),
                QT_TRANSLATE_NOOP("Problem", "ask who keeps the server")};
    case StoreFault::IdTwice:
        return {QT_TRANSLATE_NOOP("Problem", "the id '%1' stands twice"),
                QT_TRANSLATE_NOOP("Problem", "give each entry an id of its own, or none")};
    case StoreFault::IdKnown:
        return {QT_TRANSLATE_NOOP("Problem", "the record already holds an entry '%1'"),
                QT_TRANSLATE_NOOP("Problem", "if it is the same entry, leave it out; else give it another id")};
    case StoreFault::NoEntry:
        return {QT_TRANSLATE_NOOP("Problem", "the record holds no entry '%1'"),
                QT_TRANSLATE_NOOP("Problem", "point at the id of an entry that was posted before this one")};
    case StoreFault::ItemNotEntered:
        return {QT_TRANSLATE_NOOP("Problem", "no item '%1' has been entered"),
                QT_TRANSLATE_NOOP("Problem", "enter it first, or mend its id")};
    case StoreFault::BalloonNotEntered:
        return {QT_TRANSLATE_NOOP("Problem", "no balloon '%1' has been entered"),
                QT_TRANSLATE_NOOP("Problem", "enter it first, or mend the registration")};
    case StoreFault::InspectionNotOpened:
        return {QT_TRANSLATE_NOOP("Problem", "no inspection '%1' has been entered"),
                QT_TRANSLATE_NOOP("Problem", "open it first, or mend its name")};
    case StoreFault::DefectNotFound:
        return {QT_TRANSLATE_NOOP("Problem", "no defect '%1' has been entered"),
                QT_TRANSLATE_NOOP("Problem", "enter first what was found, or mend its name")};
    case StoreFault::PersonNotEntitled:
        return {QT_TRANSLATE_NOOP("Problem", "no person '%1' has been entered"),
                QT_TRANSLATE_NOOP("Problem", "enter first what the person is authorised to sign, or mend the name")};
    case StoreFault::NothingNamedSo:
        return {QT_TRANSLATE_NOOP("Problem", "no thing '%1' has been entered"),
                QT_TRANSLATE_NOOP("Problem", "mend its name")};
    case StoreFault::CannotBeCorrected:
        return {QT_TRANSLATE_NOOP("Problem", "the entry '%1' cannot be read, and so not be corrected"),
                QT_TRANSLATE_NOOP("Problem", "void it with a reason, and write it again as it should be")};
    }
    return {};
}

}
