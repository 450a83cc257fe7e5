// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/release_fault.h"

namespace crownring {

FaultRow rowOf(ReleaseFault fault) {
    switch (fault) {
    case ReleaseFault::ClosedAlready:
        return {"closed-already", Code::NotReleasable};
    case ReleaseFault::ClosedByAnother:
        return {"closed-by-another", Code::NotReleasable};
    case ReleaseFault::ClosedSince:
        return {"closed-since", Code::NotReleasable};
    case ReleaseFault::BeforeOpening:
        return {"before-opening", Code::NotReleasable};
    case ReleaseFault::NothingLookedAt:
        return {"nothing-looked-at", Code::NotReleasable};
    case ReleaseFault::NothingLookedAtOn:
        return {"nothing-looked-at-on", Code::NotReleasable};
    case ReleaseFault::OutOfService:
        return {"item-out-of-service", Code::NotReleasable};
    case ReleaseFault::FittedElsewhere:
        return {"fitted-elsewhere", Code::NotReleasable};
    case ReleaseFault::ChecklistCut:
        return {"checklist-cut", Code::NotReleasable};
    case ReleaseFault::NotInspected:
        return {"not-inspected", Code::NotReleasable};
    case ReleaseFault::NoSuchPlace:
        return {"no-such-place", Code::NotReleasable};
    case ReleaseFault::SaidAfter:
        return {"said-after", Code::NotReleasable};
    case ReleaseFault::Unsupported:
        return {"list-unsupported", Code::NotReleasable};
    case ReleaseFault::LineOpen:
        return {"line-open", Code::NotReleasable};
    case ReleaseFault::LeftOutstanding:
        return {"left-outstanding", Code::NotReleasable};
    case ReleaseFault::TooFewReadings:
        return {"too-few-readings", Code::NotReleasable};
    case ReleaseFault::NoTester:
        return {"no-tester", Code::NotReleasable};
    case ReleaseFault::TesterNotCalibrated:
        return {"tester-not-calibrated", Code::NotReleasable};
    case ReleaseFault::TesterMeasuresOther:
        return {"tester-measures-other", Code::NotReleasable};
    case ReleaseFault::TesterBeyondRange:
        return {"tester-beyond-range", Code::NotReleasable};
    case ReleaseFault::Doubtful:
        return {"doubtful", Code::NotReleasable};
    case ReleaseFault::Fails:
        return {"fails", Code::NotReleasable};
    case ReleaseFault::DecidesNothing:
        return {"decides-nothing", Code::NotReleasable};
    case ReleaseFault::NoLimitStated:
        return {"no-limit-stated", Code::NotReleasable};
    case ReleaseFault::DefectBarsFlight:
        return {"defect-bars-flight", Code::NotReleasable};
    case ReleaseFault::NothingToList:
        return {"nothing-to-list", Code::NotReleasable};
    case ReleaseFault::NoListOfWork:
        return {"no-list-of-work", Code::NotReleasable};
    case ReleaseFault::NotIndependent:
        return {"not-independent", Code::NotReleasable};
    case ReleaseFault::MaterialNotPutDown:
        return {"material-not-put-down", Code::NotReleasable};
    case ReleaseFault::ComponentOfBalloon:
        return {"component-of-balloon", Code::NotReleasable};
    case ReleaseFault::ComponentFitted:
        return {"component-fitted", Code::NotReleasable};
    case ReleaseFault::WorkNotDescribed:
        return {"work-not-described", Code::NotReleasable};
    case ReleaseFault::WorkNotDescribedOn:
        return {"work-not-described-on", Code::NotReleasable};
    case ReleaseFault::GradeNotSaid:
        return {"grade-not-said", Code::NotReleasable};
    case ReleaseFault::NoOwnersTask:
        return {"no-owners-task", Code::NotReleasable};
    case ReleaseFault::NotOfTheTask:
        return {"not-of-the-task", Code::NotReleasable};
    case ReleaseFault::OwnersTaskOffTheAircraft:
        return {"owners-task-off-the-aircraft", Code::NotReleasable};
    case ReleaseFault::NothingOutstanding:
        return {"nothing-is-outstanding", Code::NotReleasable};
    case ReleaseFault::NoLimitation:
        return {"no-limitation", Code::NotReleasable};
    case ReleaseFault::AbandonedAfterRelease:
        return {"abandoned-after-release", Code::NotReleasable};
    case ReleaseFault::WhyNotSaid:
        return {"why-not-said", Code::NotReleasable};
    case ReleaseFault::GoesWithIt:
        return {"goes-with-it", Code::NotReleasable};
    case ReleaseFault::NothingRead:
        return {"nothing-read", Code::NotReleasable};
    case ReleaseFault::Excepted:
        return {"excepted", Code::NotReleasable};
    case ReleaseFault::OtherText:
        return {"other-text", Code::NotReleasable};
    case ReleaseFault::NotAccomplished:
        return {"not-accomplished", Code::NotReleasable};
    case ReleaseFault::NotWithItsSignature:
        return {"not-with-its-signature", Code::NotReleasable};
    case ReleaseFault::FoundBefore:
        return {"found-before", Code::NotReleasable};
    case ReleaseFault::RevokeInstead:
        return {"revoke-instead", Code::NotReleasable};
    case ReleaseFault::NoReleaseToRevoke:
        return {"no-release-to-revoke", Code::NotReleasable};
    case ReleaseFault::NobodyRevokes:
        return {"nobody-revokes", Code::NotReleasable};
    case ReleaseFault::StaysRevoked:
        return {"stays-revoked", Code::NotReleasable};
    case ReleaseFault::CorrectedUnsaid:
        return {"corrected-unsaid", Code::CannotAmend};
    case ReleaseFault::SaidBefore:
        return {"said-before", Code::NotReleasable};
    case ReleaseFault::NamedBefore:
        return {"named-before", Code::NotReleasable};
    case ReleaseFault::MayNotSign:
        return {"may-not-sign", Code::NotReleasable};
    case ReleaseFault::MayNotGradeDown:
        return {"may-not-grade-down", Code::NotReleasable};
    case ReleaseFault::GradedDownUnsaid:
        return {"graded-down-unsaid", Code::NotReleasable};
    case ReleaseFault::ReadingUnsaid:
        return {"reading-unsaid", Code::NotReleasable};
    case ReleaseFault::GroundUnsaid:
        return {"ground-unsaid", Code::NotReleasable};
    case ReleaseFault::ClearingRestsOnIt:
        return {"clearing-rests-on-it", Code::NotReleasable};
    case ReleaseFault::DeferralUnsaid:
        return {"deferral-unsaid", Code::NotReleasable};
    case ReleaseFault::LinesLeftOut:
        return {"lines-left-out", Code::NotReleasable};
    case ReleaseFault::MayNotDefer:
        return {"may-not-defer", Code::NotReleasable};
    case ReleaseFault::NobodyDefers:
        return {"nobody-defers", Code::NotReleasable};
    case ReleaseFault::MayNotClear:
        return {"may-not-clear", Code::NotReleasable};
    case ReleaseFault::ClearedBefore:
        return {"cleared-before", Code::NotReleasable};
    case ReleaseFault::NotReadAgain:
        return {"not-read-again", Code::NotReleasable};
    case ReleaseFault::RepairElsewhere:
        return {"repair-elsewhere", Code::NotReleasable};
    case ReleaseFault::TestNotRead:
        return {"test-not-read", Code::NotReleasable};
    case ReleaseFault::RegistrationInUse:
        return {"registration-in-use", Code::NotReleasable};
    case ReleaseFault::RenamedAndOut:
        return {"renamed-and-out", Code::NotReleasable};
    case ReleaseFault::FoundWithClearing:
        return {"found-with-clearing", Code::NotReleasable};
    case ReleaseFault::FoundElsewhere:
        return {"found-elsewhere", Code::NotReleasable};
    case ReleaseFault::ListAnswered:
        return {"list-answered", Code::NotReleasable};
    case ReleaseFault::ApprovedBefore:
        return {"approved-before", Code::NotReleasable};
    case ReleaseFault::DefectStands:
        return {"defect-stands", Code::NotReleasable};
    case ReleaseFault::ListedStands:
        return {"listed-stands", Code::NotReleasable};
    case ReleaseFault::TestStands:
        return {"test-stands", Code::NotReleasable};
    case ReleaseFault::LeftOut:
        return {"left-out", Code::NotReleasable};
    case ReleaseFault::NotGiven:
        return {"not-given", Code::NotReleasable};
    case ReleaseFault::WordingNotAdopted:
        return {"wording-not-adopted", Code::NotReleasable};
    case ReleaseFault::WordingNotConfirmed:
        return {"wording-not-confirmed", Code::NotReleasable};
    case ReleaseFault::ChecklistNotConfirmed:
        return {"checklist-not-confirmed", Code::NotReleasable};
    case ReleaseFault::PlaceUnfilled:
        return {"place-unfilled", Code::NotReleasable};
    case ReleaseFault::NoSuchLine:
        return {"no-such-line", Code::NotReleasable};
    case ReleaseFault::DirectiveOpen:
        return {"directive-open", Code::NotReleasable};
    case ReleaseFault::NotFlown:
        return {"not-flown", Code::NotReleasable};
    case ReleaseFault::EntryUnread:
        return {"entry-unread", Code::NotReleasable};
    }
    return {};
}

}
