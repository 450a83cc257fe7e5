// SPDX-License-Identifier: GPL-3.0-or-later
#include "registry/reading_phrase.h"
#include "words/phrase_sources.h"

#include <QtGlobal>

namespace crownring::words {

const char* sourceOf(ReadingPhrase phrase) {
    switch (phrase) {
    case ReadingPhrase::Read:
        return QT_TRANSLATE_NOOP("Phrase", "%1 %2");
    case ReadingPhrase::Held:
        return QT_TRANSLATE_NOOP("Phrase", "%1 held at %2");
    case ReadingPhrase::Step:
        return QT_TRANSLATE_NOOP("Phrase", "%1 %2 to below %3");
    case ReadingPhrase::InGore:
        return QT_TRANSLATE_NOOP("Phrase", "%1, gore %2");
    case ReadingPhrase::InRow:
        return QT_TRANSLATE_NOOP("Phrase", "%1, row %2");
    case ReadingPhrase::InZone:
        return QT_TRANSLATE_NOOP("Phrase", "%1, %2");
    case ReadingPhrase::OfItem:
        return QT_TRANSLATE_NOOP("Phrase", "%1 (%2)");
    case ReadingPhrase::AtPressure:
        return QT_TRANSLATE_NOOP("Phrase", "%1 at %2");
    case ReadingPhrase::OnArea:
        return QT_TRANSLATE_NOOP("Phrase", "%1 on %2");
    case ReadingPhrase::BetweenJaws:
        return QT_TRANSLATE_NOOP("Phrase", "%1 between jaws of %2");
    case ReadingPhrase::Along:
        return QT_TRANSLATE_NOOP("Phrase", "%1, %2");
    case ReadingPhrase::Failed:
        return QT_TRANSLATE_NOOP("Phrase", "%1 fails");
    case ReadingPhrase::AReading:
        return QT_TRANSLATE_NOOP("Phrase", "a reading");
    case ReadingPhrase::HeldAt:
        return QT_TRANSLATE_NOOP("Phrase", "held at %1");
    case ReadingPhrase::WithLimit:
        return QT_TRANSLATE_NOOP("Phrase", "%1; %2");
    case ReadingPhrase::HeldFor:
        return QT_TRANSLATE_NOOP("Phrase", "for %1");
    case ReadingPhrase::Dry:
        return QT_TRANSLATE_NOOP("Phrase", "dry");
    case ReadingPhrase::NotDry:
        return QT_TRANSLATE_NOOP("Phrase", "not dry");
    case ReadingPhrase::FromInside:
        return QT_TRANSLATE_NOOP("Phrase", "from inside");
    case ReadingPhrase::FromOutside:
        return QT_TRANSLATE_NOOP("Phrase", "from outside");
    case ReadingPhrase::StepShown:
        return QT_TRANSLATE_NOOP("Phrase", "at least %1, below %2");
    }
    return "";
}

}
