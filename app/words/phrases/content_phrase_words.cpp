// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/content_phrase.h"
#include "words/phrase_sources.h"

#include <QtGlobal>

namespace crownring::words {

const char* sourceOf(ContentPhrase phrase) {
    switch (phrase) {
    case ContentPhrase::Work:
        return QT_TRANSLATE_NOOP("Phrase", "a description of the work");
    case ContentPhrase::Date:
        return QT_TRANSLATE_NOOP("Phrase", "the date on which it was completed");
    case ContentPhrase::Person:
        return QT_TRANSLATE_NOOP("Phrase", "the name of the person who signs");
    case ContentPhrase::Capacity:
        return QT_TRANSLATE_NOOP("Phrase", "as what the person signs");
    case ContentPhrase::Licence:
        return QT_TRANSLATE_NOOP("Phrase", "the number of the licence, certificate or approval");
    case ContentPhrase::Manuals:
        return QT_TRANSLATE_NOOP("Phrase", "the maintenance data used, with their revision");
    case ContentPhrase::AircraftTime:
        return QT_TRANSLATE_NOOP("Phrase", "the total time in service of the aircraft");
    case ContentPhrase::Time:
        return QT_TRANSLATE_NOOP("Phrase", "the total time in service");
    case ContentPhrase::Discrepancies:
        return QT_TRANSLATE_NOOP("Phrase", "the list of discrepancies");
    case ContentPhrase::DiscrepanciesDate:
        return QT_TRANSLATE_NOOP("Phrase", "the date of the list of discrepancies");
    case ContentPhrase::HighestTemperature:
        return QT_TRANSLATE_NOOP("Phrase", "the highest temperature that the tell-tale shows");
    }
    return "";
}

}
