// SPDX-License-Identifier: GPL-3.0-or-later
#include "paper/paper_phrase.h"
#include "words/phrase_sources.h"

#include <QtGlobal>

namespace crownring::words {

const char* sourceOf(PaperPhrase phrase) {
    switch (phrase) {
    case PaperPhrase::Record:
        return QT_TRANSLATE_NOOP("Phrase", "Record");
    case PaperPhrase::Gore:
        return QT_TRANSLATE_NOOP("Phrase", "Gore");
    case PaperPhrase::Row:
        return QT_TRANSLATE_NOOP("Phrase", "Row");
    case PaperPhrase::Reading:
        return QT_TRANSLATE_NOOP("Phrase", "Reading");
    case PaperPhrase::Verdict:
        return QT_TRANSLATE_NOOP("Phrase", "Verdict");
    case PaperPhrase::Passed:
        return QT_TRANSLATE_NOOP("Phrase", "passed");
    case PaperPhrase::Failed:
        return QT_TRANSLATE_NOOP("Phrase", "failed");
    case PaperPhrase::Line:
        return QT_TRANSLATE_NOOP("Phrase", "Line");
    case PaperPhrase::Source:
        return QT_TRANSLATE_NOOP("Phrase", "Source");
    case PaperPhrase::Mark:
        return QT_TRANSLATE_NOOP("Phrase", "Mark");
    case PaperPhrase::Finding:
        return QT_TRANSLATE_NOOP("Phrase", "Finding");
    case PaperPhrase::By:
        return QT_TRANSLATE_NOOP("Phrase", "By");
    case PaperPhrase::Open:
        return QT_TRANSLATE_NOOP("Phrase", "open");
    case PaperPhrase::Done:
        return QT_TRANSLATE_NOOP("Phrase", "done");
    case PaperPhrase::NotApplicable:
        return QT_TRANSLATE_NOOP("Phrase", "n.a.");
    case PaperPhrase::Number:
        return QT_TRANSLATE_NOOP("Phrase", "No.");
    case PaperPhrase::Items:
        return QT_TRANSLATE_NOOP("Phrase", "Items");
    }
    return "";
}

}
