// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/programme/schema_phrase.h"
#include "words/phrase_sources.h"

#include <QtGlobal>

namespace crownring::words {

const char* sourceOf(SchemaPhrase phrase) {
    switch (phrase) {
    case SchemaPhrase::OneOf:
        return QT_TRANSLATE_NOOP("Phrase", "one of %1");
    case SchemaPhrase::OneOfTheKeys:
        return QT_TRANSLATE_NOOP("Phrase", "one of the keys %1");
    case SchemaPhrase::WholeNumber:
        return QT_TRANSLATE_NOOP("Phrase", "a whole number from %1 to %2");
    case SchemaPhrase::TextLike:
        return QT_TRANSLATE_NOOP("Phrase", "text like %1");
    case SchemaPhrase::TextOfLength:
        return QT_TRANSLATE_N_NOOP("Phrase", "a text of 1 to %n characters");
    case SchemaPhrase::TrueOrFalse:
        return QT_TRANSLATE_NOOP("Phrase", "true or false");
    case SchemaPhrase::List:
        return QT_TRANSLATE_NOOP("Phrase", "a list, nothing in it twice");
    case SchemaPhrase::ListNotEmpty:
        return QT_TRANSLATE_NOOP("Phrase", "a list, not empty, nothing in it twice");
    case SchemaPhrase::WhatTheSchemaStates:
        return QT_TRANSLATE_NOOP("Phrase", "what %1 states");
    }
    return "";
}

}
