// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/reading/doubt_phrase.h"
#include "words/phrase_sources.h"

#include <QtGlobal>

namespace crownring::words {

const char* sourceOf(DoubtPhrase phrase) {
    switch (phrase) {
    case DoubtPhrase::IsThatSo:
        return QT_TRANSLATE_NOOP("Phrase", "%1: %2 is outside %3 to %4. Is that so?");
    case DoubtPhrase::IsItRather:
        return QT_TRANSLATE_NOOP("Phrase", "%1: %2 is outside %3 to %4. Is it %5?");
    case DoubtPhrase::HeldTooShort:
        return QT_TRANSLATE_NOOP("Phrase", "%1: the manual has it held for %3 s. Was it held for %2 s only?");
    case DoubtPhrase::HoldUnsaid:
        return QT_TRANSLATE_NOOP("Phrase", "%1: the manual has it held for %2 s. For how long was it held?");
    case DoubtPhrase::FarFromStated:
        return QT_TRANSLATE_NOOP("Phrase", "%1: the manual has %3 held. Did it hold at %2?");
    }
    return "";
}

}
