// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/checklist/checklist_phrase.h"
#include "words/phrase_sources.h"

#include <QtGlobal>

namespace crownring::words {

const char* sourceOf(ChecklistPhrase phrase) {
    switch (phrase) {
    case ChecklistPhrase::FurtherWork:
        return QT_TRANSLATE_NOOP("Phrase", "Further work");
    }
    return "";
}

}
