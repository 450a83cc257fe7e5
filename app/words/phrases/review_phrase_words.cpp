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
    case ReviewPhrase::DirectiveStatus:
        return QT_TRANSLATE_NOOP("Phrase", "Status of directives and bulletins");
    case ReviewPhrase::StatusOn:
        return QT_TRANSLATE_NOOP("Phrase", "%1, on %2");
    case ReviewPhrase::NoDirectives:
        return QT_TRANSLATE_NOOP(
            "Phrase", "The record has no directive for what is on the balloon. It knows of none that was not entered.");
    case ReviewPhrase::Directive:
        return QT_TRANSLATE_NOOP("Phrase", "Directive, revision, effective");
    case ReviewPhrase::DirectiveItem:
        return QT_TRANSLATE_NOOP("Phrase", "Item");
    case ReviewPhrase::DirectiveState:
        return QT_TRANSLATE_NOOP("Phrase", "Status");
    case ReviewPhrase::DirectiveMethod:
        return QT_TRANSLATE_NOOP("Phrase", "Method of compliance");
    case ReviewPhrase::DirectiveDone:
        return QT_TRANSLATE_NOOP("Phrase", "Done on, at");
    case ReviewPhrase::DirectiveNext:
        return QT_TRANSLATE_NOOP("Phrase", "Next due");
    case ReviewPhrase::DirectiveNumber:
        return QT_TRANSLATE_NOOP("Phrase", "%1, revision %2, %3, %4");
    case ReviewPhrase::DirectiveAdvised:
        return QT_TRANSLATE_NOOP("Phrase", "%1 (recommended)");
    case ReviewPhrase::ByOtherMeans:
        return QT_TRANSLATE_NOOP("Phrase", "%1; by other means: %2");
    case ReviewPhrase::StatusNotApplicable:
        return QT_TRANSLATE_NOOP("Phrase", "Not applicable: %1");
    case ReviewPhrase::StatusUnproven:
        return QT_TRANSLATE_NOOP("Phrase", "Not shown: %1");
    case ReviewPhrase::StatusOverdue:
        return QT_TRANSLATE_NOOP("Phrase", "OVERDUE");
    case ReviewPhrase::StatusAtOnce:
        return QT_TRANSLATE_NOOP("Phrase", "BEFORE THE NEXT FLIGHT");
    case ReviewPhrase::StatusClosed:
        return QT_TRANSLATE_NOOP("Phrase", "Complied with");
    case ReviewPhrase::StatusSuperseded:
        return QT_TRANSLATE_NOOP("Phrase", "Superseded");
    case ReviewPhrase::StatusUpcoming:
        return QT_TRANSLATE_NOOP("Phrase", "Not yet effective");
    case ReviewPhrase::StatusOpen:
        return QT_TRANSLATE_NOOP("Phrase", "Open");
    case ReviewPhrase::StatusRests:
        return QT_TRANSLATE_NOOP(
            "Phrase", "From the directives that are in the record, and what it says of items and their parts (14 CFR "
                      "91.417(a)(2)(v); ML.A.305(c)). Whoever entered them answers for the list being whole.");
    case ReviewPhrase::WhatHappened:
        return QT_TRANSLATE_NOOP("Phrase", "What happened");
    case ReviewPhrase::WhatItMadeDue:
        return QT_TRANSLATE_NOOP("Phrase", "What it made due");
    case ReviewPhrase::MadeDue:
        return QT_TRANSLATE_NOOP("Phrase", "made due: %1");
    case ReviewPhrase::MadeNothingDue:
        return QT_TRANSLATE_NOOP("Phrase", "nothing that is adopted");
    case ReviewPhrase::EventStatus:
        return QT_TRANSLATE_NOOP("Phrase", "Events and what they made due");
    case ReviewPhrase::EventStatusOf:
        return QT_TRANSLATE_NOOP("Phrase", "%1, reported from %2 to %3, and what is open from before");
    case ReviewPhrase::NoEvents:
        return QT_TRANSLATE_NOOP("Phrase", "No event is reported in the record for these days, and none is open.");
    case ReviewPhrase::EventOpen:
        return QT_TRANSLATE_NOOP("Phrase", "OPEN");
    case ReviewPhrase::EventDone:
        return QT_TRANSLATE_NOOP("Phrase", "done on %1");
    case ReviewPhrase::EventReportUntil:
        return QT_TRANSLATE_NOOP("Phrase",
                                 "if it is to be reported to the authority: by %1, %2 UTC; no report is in the "
                                 "record");
    case ReviewPhrase::ReportedTo:
        return QT_TRANSLATE_NOOP("Phrase", "Reports to others");
    case ReviewPhrase::EventStatusRests:
        return QT_TRANSLATE_NOOP("Phrase",
                                 "By what is reported in the record, of the items that are on the balloon on the "
                                 "last day. What nobody reported does not stand here.");
    }
    return "";
}

}
