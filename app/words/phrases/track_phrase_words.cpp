// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/track/track_phrase.h"
#include "words/phrase_sources.h"

#include <QtGlobal>

namespace crownring::words {

const char* sourceOf(TrackPhrase phrase) {
    switch (phrase) {
    case TrackPhrase::NamesNoBalloon:
        return QT_TRANSLATE_NOOP("Phrase", "the track names no balloon (H record GID); choose one");
    case TrackPhrase::SatelliteAltitudes:
        return QT_TRANSLATE_NOOP("Phrase",
                                 "the altitudes are of the satellites only, so take-off and landing are less sharp");
    }
    return "";
}

}
