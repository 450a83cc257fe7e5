// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/verdict_phrase.h"
#include "words/phrase_sources.h"

#include <QtGlobal>

namespace crownring::words {

const char* sourceOf(VerdictPhrase phrase) {
    switch (phrase) {
    case VerdictPhrase::EntryBeforeMissing:
        return QT_TRANSLATE_NOOP("Phrase", "an entry before it is missing");
    case VerdictPhrase::WriterUnknown:
        return QT_TRANSLATE_NOOP("Phrase", "its writer is not known");
    case VerdictPhrase::HashDiffers:
        return QT_TRANSLATE_NOOP("Phrase", "it is not what was written: its hash does not fit");
    case VerdictPhrase::NoEntry:
        return QT_TRANSLATE_NOOP("Phrase", "its text is no entry: %1");
    case VerdictPhrase::ColumnsDiffer:
        return QT_TRANSLATE_NOOP("Phrase", "its id, kind or date is not what its text says");
    case VerdictPhrase::LastEntriesMissing:
        return QT_TRANSLATE_NOOP("Phrase", "the last entries of writer %1 are missing");
    case VerdictPhrase::TableLacks:
        return QT_TRANSLATE_NOOP("Phrase", "what follows from the journal is missing beside it (in the table %1: %2)");
    case VerdictPhrase::TableHoldsMore:
        return QT_TRANSLATE_NOOP("Phrase",
                                 "what stands beside the journal does not follow from it (in the table %1: %2)");
    case VerdictPhrase::SchemaDiffers:
        return QT_TRANSLATE_NOOP("Phrase", "the database of the record is not built as this version builds it (%1)");
    case VerdictPhrase::StepDiffers:
        return QT_TRANSLATE_NOOP("Phrase", "the record does not note as this version takes them the steps that built "
                                           "its database (step %1)");
    case VerdictPhrase::PhotographDiffers:
        return QT_TRANSLATE_NOOP("Phrase", "the photograph %1 is not what it was");
    case VerdictPhrase::PhotographsOther:
        return QT_TRANSLATE_NOOP("Phrase", "the photographs are no longer those that were kept: some are gone, or were "
                                           "added beside the program");
    case VerdictPhrase::FileDamaged:
        return QT_TRANSLATE_NOOP("Phrase", "the file is damaged (the database says: %1)");
    case VerdictPhrase::ReferenceDangles:
        return QT_TRANSLATE_NOOP("Phrase",
                                 "the file is damaged: something in it refers to what is not there (in the table %1)");
    case VerdictPhrase::Unreadable:
        return QT_TRANSLATE_NOOP("Phrase", "the record cannot be read: %1");
    case VerdictPhrase::Stopped:
        return QT_TRANSLATE_NOOP("Phrase", "stopped before the end");
    case VerdictPhrase::LineUnread:
        return QT_TRANSLATE_NOOP("Phrase", "line %1 of the journal, %2: %3");
    case VerdictPhrase::LineKeyUnread:
        return QT_TRANSLATE_NOOP("Phrase", "line %1 of the journal, %2: key '%3': %4");
    }
    return "";
}

}
