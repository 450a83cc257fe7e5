// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/reading/limit_phrase.h"
#include "words/phrase_sources.h"

#include <QtGlobal>

namespace crownring::words {

const char* sourceOf(LimitPhrase phrase) {
    switch (phrase) {
    case LimitPhrase::Least:
        return QT_TRANSLATE_NOOP("Phrase", "at least %1");
    case LimitPhrase::Most:
        return QT_TRANSLATE_NOOP("Phrase", "at most %1");
    case LimitPhrase::Proof:
        return QT_TRANSLATE_NOOP("Phrase", "to be held: %1");
    case LimitPhrase::LeastAndMost:
        return QT_TRANSLATE_NOOP("Phrase", "at least %1, at most %2");
    case LimitPhrase::MostAndProof:
        return QT_TRANSLATE_NOOP("Phrase", "at most %1, to be held: %2");
    }
    return "";
}

}
