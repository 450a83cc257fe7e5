// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/fabric/left_out_phrase.h"
#include "words/phrase_sources.h"

#include <QtGlobal>

namespace crownring::words {

const char* sourceOf(LeftOutPhrase phrase) {
    switch (phrase) {
    case LeftOutPhrase::BeforeEnvelope:
        return QT_TRANSLATE_NOOP("Phrase", "it was taken before the envelope was entered");
    case LeftOutPhrase::NothingOnAScaleOfRatios:
        return QT_TRANSLATE_NOOP("Phrase", "a figure of nothing has no place on a scale of ratios");
    }
    return "";
}

}
