// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/writing_fault.h"
#include "words/fault_sources.h"

#include <QtGlobal>

namespace crownring::words {

Sources sourcesOf(WritingFault fault) {
    switch (fault) {
    case WritingFault::NamesNoFile:
        return {QT_TRANSLATE_NOOP("Problem", "this names no file"), QT_TRANSLATE_NOOP("Problem", "name another file")};
    case WritingFault::IsARecord:
        return {QT_TRANSLATE_NOOP("Problem", "this is a record, and no record is ever written over"),
                QT_TRANSLATE_NOOP("Problem", "name another file")};
    case WritingFault::Exists:
        return {QT_TRANSLATE_NOOP("Problem", "there is a file of that name already"),
                QT_TRANSLATE_NOOP("Problem", "name another, or say that it may be replaced (--force)")};
    case WritingFault::ReadOnly:
        return {QT_TRANSLATE_NOOP("Problem", "the file that is there may only be read"),
                QT_TRANSLATE_NOOP("Problem", "name another file")};
    case WritingFault::IsADatabase:
        return {QT_TRANSLATE_NOOP("Problem", "this is a database, and none is ever written over"),
                QT_TRANSLATE_NOOP("Problem", "name another file")};
    case WritingFault::BesideADatabase:
        return {QT_TRANSLATE_NOOP("Problem", "a database keeps its last changes there"),
                QT_TRANSLATE_NOOP("Problem", "name another file")};
    case WritingFault::LostLink:
        return {QT_TRANSLATE_NOOP("Problem", "this is a link to where nothing is"),
                QT_TRANSLATE_NOOP("Problem", "name another file")};
    case WritingFault::NoPlainFile:
        return {QT_TRANSLATE_NOOP("Problem", "this is a folder, a device or a pipe"),
                QT_TRANSLATE_NOOP("Problem", "name another file")};
    case WritingFault::NotLookedAt:
        return {QT_TRANSLATE_NOOP("Problem", "what is there cannot be looked at, and may be a record"),
                QT_TRANSLATE_NOOP("Problem", "name another file")};
    case WritingFault::NotWritten:
        return {
            QT_TRANSLATE_NOOP("Problem", "the file cannot be written: %1"),
            QT_TRANSLATE_NOOP("Problem", "choose a folder that exists, that you may write to, on a disk with room")};
    case WritingFault::TheRecordItself:
        return {QT_TRANSLATE_NOOP("Problem", "this is the record itself"),
                QT_TRANSLATE_NOOP("Problem", "name another file")};
    case WritingFault::OpenElsewhere:
        return {QT_TRANSLATE_NOOP("Problem", "this record is open in another program"),
                QT_TRANSLATE_NOOP("Problem", "name another file")};
    case WritingFault::LaterVersion:
        return {QT_TRANSLATE_NOOP("Problem", "this record is no older copy: it was written by a later version"),
                QT_TRANSLATE_NOOP("Problem", "name another file")};
    case WritingFault::HoldsOtherEntries:
        return {QT_TRANSLATE_NOOP("Problem",
                                  "this record is no older copy: it holds entries that the one that is copied lacks"),
                QT_TRANSLATE_NOOP("Problem", "name another file")};
    case WritingFault::HoldsOtherPictures:
        return {QT_TRANSLATE_NOOP(
                    "Problem", "this record is no older copy: it holds photographs that the one that is copied lacks"),
                QT_TRANSLATE_NOOP("Problem", "name another file")};
    }
    return {};
}

}
