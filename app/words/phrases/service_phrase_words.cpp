// SPDX-License-Identifier: GPL-3.0-or-later
#include "registry/service_phrase.h"
#include "words/phrase_sources.h"

#include <QtGlobal>

namespace crownring::words {

const char* sourceOf(ServicePhrase phrase) {
    switch (phrase) {
    case ServicePhrase::LaidUp:
        return QT_TRANSLATE_NOOP("Phrase", "laid up since %1");
    case ServicePhrase::Sold:
        return QT_TRANSLATE_NOOP("Phrase", "sold on %1");
    case ServicePhrase::SoldTo:
        return QT_TRANSLATE_NOOP("Phrase", "sold on %1 to %2");
    case ServicePhrase::Scrapped:
        return QT_TRANSLATE_NOOP("Phrase", "scrapped on %1");
    case ServicePhrase::Lost:
        return QT_TRANSLATE_NOOP("Phrase", "lost since %1");
    case ServicePhrase::Renamed:
        return QT_TRANSLATE_NOOP("Phrase", "flies as %2 since %1");
    case ServicePhrase::Away:
        return QT_TRANSLATE_NOOP("Phrase", "away since %1");
    case ServicePhrase::AwayTo:
        return QT_TRANSLATE_NOOP("Phrase", "away since %1, at %2");
    case ServicePhrase::Unserviceable:
        return QT_TRANSLATE_NOOP("Phrase", "unserviceable since %1");
    case ServicePhrase::Quarantined:
        return QT_TRANSLATE_NOOP("Phrase", "quarantined since %1");
    case ServicePhrase::Condemned:
        return QT_TRANSLATE_NOOP("Phrase", "condemned on %1, for good");
    case ServicePhrase::Overheated:
        return QT_TRANSLATE_NOOP("Phrase", "overheated on %1, at %2: condemned for good");
    case ServicePhrase::With:
        return QT_TRANSLATE_NOOP("Phrase", "with %1, %2");
    case ServicePhrase::TakenOut:
        return QT_TRANSLATE_NOOP("Phrase", "taken out of %2, which was kept apart since %1");
    case ServicePhrase::TakenOutHot:
        return QT_TRANSLATE_NOOP("Phrase", "taken out of %2, which was overheated on %1, and not released since");
    case ServicePhrase::TakenOutBurnt:
        return QT_TRANSLATE_NOOP("Phrase", "taken out of %2 after the fire of %1, and not released since");
    }
    return "";
}

}
