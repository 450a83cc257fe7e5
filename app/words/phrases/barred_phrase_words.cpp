// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/barred_phrase.h"
#include "words/phrase_sources.h"

#include <QtGlobal>

namespace crownring::words {

const char* sourceOf(BarredPhrase phrase) {
    switch (phrase) {
    case BarredPhrase::NobodyNamed:
        return QT_TRANSLATE_NOOP("Phrase", "nobody is named who signs");
    case BarredPhrase::NotEntitled:
        return QT_TRANSLATE_NOOP("Phrase", "%1 is not authorised as %2");
    case BarredPhrase::Ended:
        return QT_TRANSLATE_NOOP("Phrase", "%1: the authorisation as %2 ended on %3");
    case BarredPhrase::NotYet:
        return QT_TRANSLATE_NOOP("Phrase", "%1: the authorisation as %2 begins on %3");
    case BarredPhrase::OnlyFor:
        return QT_TRANSLATE_NOOP("Phrase", "%1: the authorisation as %2 is for %3 only");
    case BarredPhrase::NotFor:
        return QT_TRANSLATE_NOOP("Phrase", "%1: the authorisation as %2 is for %3 only, not for %4");
    case BarredPhrase::EntitledToNothing:
        return QT_TRANSLATE_NOOP("Phrase", "%1 is authorised to sign nothing on %2");
    case BarredPhrase::OtherRules:
        return QT_TRANSLATE_NOOP("Phrase", "what %1 signs as is not one of the rules that this visit is under");
    case BarredPhrase::OtherState:
        return QT_TRANSLATE_NOOP("Phrase", "%1 decides nothing on a balloon that flies by the rules of another state");
    case BarredPhrase::OwnerForHire:
        return QT_TRANSLATE_NOOP("Phrase",
                                 "a pilot-owner releases nothing on a balloon operated for hire (Subpart-ADD)");
    case BarredPhrase::AnnualByAMechanic:
        return QT_TRANSLATE_NOOP("Phrase", "an annual inspection is signed by a repair station, the manufacturer or a "
                                           "mechanic (A&P) who holds an inspection authorization");
    case BarredPhrase::MajorByAMechanic:
        return QT_TRANSLATE_NOOP("Phrase", "a major repair or alteration is approved by a repair station, the "
                                           "manufacturer or a mechanic (A&P) who holds an inspection authorization");
    case BarredPhrase::OwnersTasksOnly:
        return QT_TRANSLATE_NOOP("Phrase",
                                 "a pilot-owner releases the tasks of his own list, in a visit of such tasks");
    case BarredPhrase::IncompleteInTheUs:
        return QT_TRANSLATE_NOOP("Phrase", "a release after incomplete maintenance is one of Part-ML");
    case BarredPhrase::DeferredForHire:
        return QT_TRANSLATE_NOOP("Phrase", "on a balloon operated for hire (Subpart-ADD) certifying staff agree to "
                                           "defer a defect of required equipment");
    case BarredPhrase::RequiredInTheUs:
        return QT_TRANSLATE_NOOP("Phrase",
                                 "what grounds the balloon is repaired: only equipment that is not required may wait, "
                                 "removed or deactivated, and placarded inoperative");
    case BarredPhrase::DangerToFlight:
        return QT_TRANSLATE_NOOP("Phrase", "its finder calls it a danger to flight: nobody defers that");
    case BarredPhrase::OwnerMayNot:
        return QT_TRANSLATE_NOOP("Phrase", "a pilot-owner may not release it: %1");
    case BarredPhrase::NotPreventive:
        return QT_TRANSLATE_NOOP("Phrase",
                                 "a pilot may approve preventive maintenance only: this is no item of its list");
    case BarredPhrase::FailedReading:
        return QT_TRANSLATE_NOOP("Phrase", "'%1' was found by a reading beyond the manual's limit: nobody defers that");
    case BarredPhrase::OwnFindingsOnly:
        return QT_TRANSLATE_NOOP("Phrase", "%1 decides as owner of what he found himself, on a balloon that is not "
                                           "operated for hire");
    case BarredPhrase::IndependentForHire:
        return QT_TRANSLATE_NOOP("Phrase",
                                 "a balloon operated for hire (Subpart-ADD) is maintained, and released, by an "
                                 "approved maintenance organisation");
    case BarredPhrase::ReviewsOnly:
        return QT_TRANSLATE_NOOP("Phrase", "as %1 one signs airworthiness reviews, and nothing else");
    case BarredPhrase::NoReviewer:
        return QT_TRANSLATE_NOOP("Phrase", "as %1 one does not sign an airworthiness review: the authority does, the "
                                           "review staff of an approved organisation, or independent certifying staff "
                                           "with an authorisation");
    case BarredPhrase::IndependentReviewsAdd:
        return QT_TRANSLATE_NOOP(
            "Phrase", "independent certifying staff do not review a balloon operated for hire (Subpart-ADD)");
    case BarredPhrase::ExtendedByOthers:
        return QT_TRANSLATE_NOOP("Phrase", "a certificate is extended by an approved CAMO or CAO, not as %1");
    case BarredPhrase::NoApproval:
        return QT_TRANSLATE_NOOP("Phrase", "%1 has no organisation, or no approval of it, in the record");
    case BarredPhrase::ApprovalUnknown:
        return QT_TRANSLATE_NOOP("Phrase", "the approval %1 does not say under which annex the organisation works");
    case BarredPhrase::MaintenanceExtends:
        return QT_TRANSLATE_NOOP(
            "Phrase", "a certificate is extended by an approved CAMO or CAO: this organisation works under %1");
    case BarredPhrase::ReviewOutsideVisit:
        return QT_TRANSLATE_NOOP("Phrase", "a review by %1 is made while the annual or 100-hour inspection of the "
                                           "balloon is performed, and no such inspection of that day is named");
    case BarredPhrase::ReviewAnothersVisit:
        return QT_TRANSLATE_NOOP("Phrase",
                                 "the inspection %1 was signed for %2: who reviews while it is performed is of "
                                 "whom performs it");
    case BarredPhrase::NoLicenceBeside:
        return QT_TRANSLATE_NOOP("Phrase", "%1 holds no licence as independent certifying staff on that day");
    case BarredPhrase::AuthorisationOld:
        return QT_TRANSLATE_NOOP("Phrase", "%1: the authorisation %2 was good for 5 years, until %3");
    case BarredPhrase::NoReviewOfLate:
        return QT_TRANSLATE_NOOP("Phrase", "%1: no review within 12 months under the authorisation %2, the last on %3: "
                                           "one under supervision comes first");
    case BarredPhrase::ReviewByOwner:
        return QT_TRANSLATE_NOOP("Phrase", "an airworthiness review is not carried out by a pilot-owner");
    }
    return "";
}

}
