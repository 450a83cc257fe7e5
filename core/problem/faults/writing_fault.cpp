// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/writing_fault.h"

namespace crownring {

FaultRow rowOf(WritingFault fault) {
    switch (fault) {
    case WritingFault::NamesNoFile:
        return {"names-no-file", Code::FileUnwritable};
    case WritingFault::IsARecord:
        return {"is-a-record", Code::FileUnwritable};
    case WritingFault::Exists:
        return {"exists", Code::FileExists};
    case WritingFault::ReadOnly:
        return {"read-only", Code::FileUnwritable};
    case WritingFault::IsADatabase:
        return {"is-a-database", Code::FileUnwritable};
    case WritingFault::BesideADatabase:
        return {"beside-a-database", Code::FileUnwritable};
    case WritingFault::LostLink:
        return {"lost-link", Code::FileUnwritable};
    case WritingFault::NoPlainFile:
        return {"no-plain-file", Code::FileUnwritable};
    case WritingFault::NotLookedAt:
        return {"not-looked-at", Code::FileUnwritable};
    case WritingFault::NotWritten:
        return {"not-written", Code::FileUnwritable};
    case WritingFault::TheRecordItself:
        return {"the-record-itself", Code::FileUnwritable};
    case WritingFault::OpenElsewhere:
        return {"open-elsewhere", Code::FileUnwritable};
    case WritingFault::LaterVersion:
        return {"later-version", Code::FileUnwritable};
    case WritingFault::HoldsOtherEntries:
        return {"holds-other-entries", Code::FileUnwritable};
    case WritingFault::HoldsOtherPictures:
        return {"holds-other-pictures", Code::FileUnwritable};
    }
    return {};
}

}
