// SPDX-License-Identifier: GPL-3.0-or-later
#include "registry/flight_phrase.h"
#include "words/phrase_sources.h"

#include <QtGlobal>

namespace crownring::words {

const char* sourceOf(FlightPhrase phrase) {
    switch (phrase) {
    case FlightPhrase::TakeOff:
        return QT_TRANSLATE_NOOP("Phrase", "take-off %1, zone not stated");
    case FlightPhrase::Track:
        return QT_TRANSLATE_NOOP("Phrase", "from track %1");
    case FlightPhrase::FixesSkipped:
        return QT_TRANSLATE_N_NOOP("Phrase", "%n fixes skipped");
    case FlightPhrase::BeganAloft:
        return QT_TRANSLATE_NOOP("Phrase", "recorded from in the air, so longer than this");
    case FlightPhrase::EndedAloft:
        return QT_TRANSLATE_NOOP("Phrase", "recording ends in the air, so longer than this");
    }
    return "";
}

}
