// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/signed_phrase.h"
#include "words/phrase_sources.h"

#include <QtGlobal>

namespace crownring::words {

const char* sourceOf(SignedPhrase phrase) {
    switch (phrase) {
    case SignedPhrase::Statement:
        return QT_TRANSLATE_NOOP("Phrase", "the statement");
    case SignedPhrase::Licence:
        return QT_TRANSLATE_NOOP("Phrase", "the licence");
    case SignedPhrase::Clocks:
        return QT_TRANSLATE_NOOP("Phrase", "the clocks");
    case SignedPhrase::Exceptions:
        return QT_TRANSLATE_NOOP("Phrase", "what is not covered");
    case SignedPhrase::Seal:
        return QT_TRANSLATE_NOOP("Phrase", "the seal");
    case SignedPhrase::Outstanding:
        return QT_TRANSLATE_NOOP("Phrase", "what is outstanding");
    case SignedPhrase::Covers:
        return QT_TRANSLATE_NOOP("Phrase", "what the visit accomplishes");
    case SignedPhrase::ItemAt:
        return QT_TRANSLATE_NOOP("Phrase", "%1 at %2 h");
    case SignedPhrase::ItemAsks:
        return QT_TRANSLATE_NOOP("Phrase", "%1: %2");
    case SignedPhrase::Confirmed:
        return QT_TRANSLATE_NOOP("Phrase", "who confirmed the wording");
    case SignedPhrase::ConfirmedAs:
        return QT_TRANSLATE_NOOP("Phrase", "%1, revision %2, by %3 on %4 against %5");
    case SignedPhrase::Nothing:
        return QT_TRANSLATE_NOOP("Phrase", "nothing");
    case SignedPhrase::DraftUnconfirmed:
        return QT_TRANSLATE_NOOP("Phrase", "Draft; wording not confirmed against the current rule");
    case SignedPhrase::WordingConfirmed:
        return QT_TRANSLATE_NOOP("Phrase", "Confirmed against %1 by %2, %3: %4.");
    case SignedPhrase::WordingOfADay:
        return QT_TRANSLATE_NOOP("Phrase", "%1, revision %2, on %3");
    case SignedPhrase::WordingUnsaid:
        return QT_TRANSLATE_NOOP("Phrase", "The record does not say who had confirmed the wording: it was signed "
                                           "before that was asked.");
    case SignedPhrase::WithCode:
        return QT_TRANSLATE_NOOP("Phrase", "Signed with the signatory's own code (key %1…).");
    case SignedPhrase::WithoutCode:
        return QT_TRANSLATE_NOOP("Phrase", "Signed without a code of the signatory's own.");
    }
    return "";
}

}
