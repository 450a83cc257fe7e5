// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/store_fault.h"

namespace crownring {

FaultRow rowOf(StoreFault fault) {
    switch (fault) {
    case StoreFault::Refused:
        return {"refused", Code::StoreFailed};
    case StoreFault::Busy:
        return {"busy", Code::StoreBusy};
    case StoreFault::DiskFull:
        return {"disk-full", Code::StoreFailed};
    case StoreFault::DiskFailed:
        return {"disk-failed", Code::StoreFailed};
    case StoreFault::Damaged:
        return {"damaged", Code::StoreFailed};
    case StoreFault::RightsMissing:
        return {"rights-missing", Code::StoreFailed};
    case StoreFault::Lost:
        return {"lost", Code::StoreFailed};
    case StoreFault::CommitUnknown:
        return {"commit-unknown", Code::StoreFailed};
    case StoreFault::Gone:
        return {"gone", Code::StoreFailed};
    case StoreFault::ChangedMeanwhile:
        return {"changed-meanwhile", Code::StoreFailed};
    case StoreFault::NotOpened:
        return {"not-opened", Code::StoreUnopened};
    case StoreFault::SettingNotTaken:
        return {"setting-not-taken", Code::StoreUnopened};
    case StoreFault::NoRecord:
        return {"no-record", Code::StoreUnopened};
    case StoreFault::EmptyFile:
        return {"empty-file", Code::StoreUnopened};
    case StoreFault::IsAFolder:
        return {"is-a-folder", Code::StoreUnopened};
    case StoreFault::NoFile:
        return {"no-file", Code::StoreUnopened};
    case StoreFault::NotADatabase:
        return {"not-a-database", Code::StoreForeign};
    case StoreFault::OtherProgramsFile:
        return {"other-programs-file", Code::StoreForeign};
    case StoreFault::OtherProgramsTables:
        return {"other-programs-tables", Code::StoreForeign};
    case StoreFault::Newer:
        return {"newer", Code::StoreNewer};
    case StoreFault::Older:
        return {"older", Code::FileUnwritable};
    case StoreFault::OtherSchema:
        return {"other-schema", Code::StoreForeign};
    case StoreFault::ReadOnlyFile:
        return {"read-only-file", Code::FileUnwritable};
    case StoreFault::ReadOnlyFolder:
        return {"read-only-folder", Code::FileUnwritable};
    case StoreFault::DriverGivesNoHandle:
        return {"driver-gives-no-handle", Code::StoreFailed};
    case StoreFault::ValueUnread:
        return {"value-unread", Code::StoreFailed};
    case StoreFault::NameAltered:
        return {"name-altered", Code::StoreFailed};
    case StoreFault::NameMissing:
        return {"name-missing", Code::StoreFailed};
    case StoreFault::NotIntact:
        return {"not-intact", Code::StoreFailed};
    case StoreFault::SubjectNotIntact:
        return {"subject-not-intact", Code::StoreFailed};
    case StoreFault::EntryAltered:
        return {"entry-altered", Code::StoreFailed};
    case StoreFault::JournalAltered:
        return {"journal-altered", Code::StoreFailed};
    case StoreFault::RecordAltered:
        return {"record-altered", Code::StoreFailed};
    case StoreFault::AmendsItself:
        return {"amends-itself", Code::StoreFailed};
    case StoreFault::JournalLacks:
        return {"journal-lacks", Code::StoreFailed};
    case StoreFault::CopyDamaged:
        return {"copy-damaged", Code::StoreFailed};
    case StoreFault::CopyDangles:
        return {"copy-dangles", Code::StoreFailed};
    case StoreFault::CopyBroken:
        return {"copy-broken", Code::StoreFailed};
    case StoreFault::SharedRecord:
        return {"shared-record", Code::StoreFailed};
    case StoreFault::IdTwice:
        return {"id-twice", Code::DuplicateId};
    case StoreFault::IdKnown:
        return {"id-known", Code::DuplicateId};
    case StoreFault::NoEntry:
        return {"no-entry", Code::UnknownReference};
    case StoreFault::ItemNotEntered:
        return {"item-not-entered", Code::UnknownReference};
    case StoreFault::BalloonNotEntered:
        return {"balloon-not-entered", Code::UnknownReference};
    case StoreFault::InspectionNotOpened:
        return {"inspection-not-opened", Code::UnknownReference};
    case StoreFault::DefectNotFound:
        return {"defect-not-found", Code::UnknownReference};
    case StoreFault::PersonNotEntitled:
        return {"person-not-entitled", Code::UnknownReference};
    case StoreFault::NothingNamedSo:
        return {"nothing-named-so", Code::UnknownReference};
    case StoreFault::CannotBeCorrected:
        return {"cannot-be-corrected", Code::CannotAmend};
    }
    return {};
}

bool isDamage(const Fault& fault) {
    const auto* ofStore = std::get_if<StoreFault>(&fault);
    if (!ofStore)
        return false;
    switch (*ofStore) {
    case StoreFault::Damaged:
    case StoreFault::ValueUnread:
    case StoreFault::NameAltered:
    case StoreFault::NameMissing:
    case StoreFault::NotIntact:
    case StoreFault::SubjectNotIntact:
    case StoreFault::EntryAltered:
    case StoreFault::JournalAltered:
    case StoreFault::RecordAltered:
    case StoreFault::AmendsItself:
    case StoreFault::JournalLacks:
        return true;
    default:
        return false;
    }
}

}
