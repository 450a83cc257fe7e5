// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/review_phrase.h"
#include "words/phrase_sources.h"

#include <QtGlobal>

namespace crownring::words {

const char* sourceOf(ReviewPhrase phrase) {
    switch (phrase) {
    case ReviewPhrase::AirworthinessReview:
        return QT_TRANSLATE_NOOP("Phrase", "Airworthiness review");
    case ReviewPhrase::ReviewExtended:
        return QT_TRANSLATE_NOOP("Phrase", "Extension of the airworthiness review certificate");
    case ReviewPhrase::ReviewRecommended:
        return QT_TRANSLATE_NOOP("Phrase", "Recommendation for an airworthiness review certificate");
    case ReviewPhrase::ReviewedEnvelope:
        return QT_TRANSLATE_NOOP("Phrase", "Envelope");
    case ReviewPhrase::ReviewForm:
        return QT_TRANSLATE_NOOP("Phrase", "Form");
    case ReviewPhrase::CertificateNumber:
        return QT_TRANSLATE_NOOP("Phrase", "Number");
    case ReviewPhrase::IssuedOn:
        return QT_TRANSLATE_NOOP("Phrase", "Issued on");
    case ReviewPhrase::PrintedExpiry:
        return QT_TRANSLATE_NOOP("Phrase", "Expires on, as printed");
    case ReviewPhrase::ReviewedDuring:
        return QT_TRANSLATE_NOOP("Phrase", "Made during inspection");
    case ReviewPhrase::ReviewFindings:
        return QT_TRANSLATE_NOOP("Phrase", "Findings");
    case ReviewPhrase::NoCertificateItself:
        return QT_TRANSLATE_NOOP("Phrase", "This is the record of what was signed, for the file. The certificate "
                                           "itself is the form (%1) that was issued.");
    case ReviewPhrase::ReviewSignature:
        return QT_TRANSLATE_NOOP("Phrase", "Signature");
    case ReviewPhrase::Reviewer:
        return QT_TRANSLATE_NOOP("Phrase", "Reviewed by");
    case ReviewPhrase::ReviewingAs:
        return QT_TRANSLATE_NOOP("Phrase", "Signing as");
    case ReviewPhrase::ReviewedUnder:
        return QT_TRANSLATE_NOOP("Phrase", "Under");
    case ReviewPhrase::NotSupportedFor:
        return QT_TRANSLATE_NOOP("Phrase", "The record, as it is now, would refuse this: %1.");
    }
    return "";
}

}
