// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/reading/judged_phrase.h"
#include "words/phrase_sources.h"

#include <QtGlobal>

namespace crownring::words {

const char* sourceOf(JudgedPhrase phrase) {
    switch (phrase) {
    case JudgedPhrase::AtLeast:
        return QT_TRANSLATE_NOOP("Phrase", "%1, at least %2 is stated");
    case JudgedPhrase::AtMost:
        return QT_TRANSLATE_NOOP("Phrase", "%1, at most %2 is stated");
    case JudgedPhrase::Between:
        return QT_TRANSLATE_NOOP("Phrase", "%1, at least %2 and at most %3 is stated");
    case JudgedPhrase::Undecided:
        return QT_TRANSLATE_NOOP("Phrase", "%1: the reading is a bound that does not reach the limit");
    case JudgedPhrase::NoLimit:
        return QT_TRANSLATE_NOOP("Phrase", "no limit is stated for %1");
    case JudgedPhrase::LimitWithoutPressure:
        return QT_TRANSLATE_NOOP("Phrase", "the limit does not state its pressure");
    case JudgedPhrase::OtherTest:
        return QT_TRANSLATE_NOOP("Phrase", "the limit is for %1, the reading is %2");
    case JudgedPhrase::TestNotSaid:
        return QT_TRANSLATE_NOOP("Phrase", "the limit is for %1, the reading is %2 and does not say the rest");
    case JudgedPhrase::DirectionNotSaid:
        return QT_TRANSLATE_NOOP("Phrase", "the limit is for the %1, the reading does not state its direction");
    case JudgedPhrase::FuelTooCold:
        return QT_TRANSLATE_NOOP("Phrase", "%1; at %2 propane presses %3 by gauge at rest, less than the %4 that are "
                                           "stated: this shows no fault and no pass, read it again with warmer fuel");
    }
    return "";
}

}
