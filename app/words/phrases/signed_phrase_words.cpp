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
    }
    return "";
}

}
