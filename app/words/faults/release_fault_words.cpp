// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/release_fault.h"
#include "words/fault_sources.h"

#include <QtGlobal>

namespace crownring::words {

Sources sourcesOf(ReleaseFault fault) {
    switch (fault) {
    case ReleaseFault::ClosedAlready:
        return {QT_TRANSLATE_NOOP("Problem", "the inspection is closed already"),
                QT_TRANSLATE_NOOP("Problem", "correct what was written instead")};
    case ReleaseFault::ClosedByAnother:
        return {QT_TRANSLATE_NOOP("Problem", "the inspection is closed by another entry already"),
                QT_TRANSLATE_NOOP("Problem", "close it once")};
    case ReleaseFault::ClosedSince:
        return {QT_TRANSLATE_NOOP("Problem", "the inspection '%1' is closed since %2"),
                QT_TRANSLATE_NOOP("Problem", "correct what was written with entry.corrected, or open another")};
    case ReleaseFault::BeforeOpening:
        return {QT_TRANSLATE_NOOP("Problem", "it would be closed before it was opened on %1"),
                QT_TRANSLATE_NOOP("Problem", "close it on that day or later")};
    case ReleaseFault::NothingLookedAt:
        return {QT_TRANSLATE_NOOP("Problem", "nothing was looked at"),
                QT_TRANSLATE_NOOP("Problem", "carry out the inspection first")};
    case ReleaseFault::NothingLookedAtOn:
        return {QT_TRANSLATE_NOOP("Problem", "none of the lines of %1 is done, so it was not inspected"),
                QT_TRANSLATE_NOOP("Problem", "carry them out, or open a visit without it")};
    case ReleaseFault::OutOfService:
        return {QT_TRANSLATE_NOOP("Problem", "%1 is out of service: %2"),
                QT_TRANSLATE_NOOP("Problem", "open a visit without it, or correct its state")};
    case ReleaseFault::FittedElsewhere:
        return {QT_TRANSLATE_NOOP("Problem", "%1 is on %2, and this would be said of %3"),
                QT_TRANSLATE_NOOP("Problem", "open a visit without it, or correct where it is fitted")};
    case ReleaseFault::ChecklistCut:
        return {QT_TRANSLATE_NOOP(
                    "Problem", "the checklist of this visit is called '%1', revision %2, and lacks lines of that: %3"),
                QT_TRANSLATE_NOOP("Problem", "use the whole of it, or give your own a name of its own")};
    case ReleaseFault::NotInspected:
        return {QT_TRANSLATE_NOOP("Problem", "%1 is not done on %2, and the words would say that it is"),
                QT_TRANSLATE_NOOP("Problem",
                                  "take it into the work and carry out its lines, or open a visit without the item")};
    case ReleaseFault::NoSuchPlace:
        return {QT_TRANSLATE_NOOP("Problem", "%1: the type %2 has no such gore or row"),
                QT_TRANSLATE_NOOP("Problem", "correct the place, or the description of the type")};
    case ReleaseFault::SaidAfter:
        return {
            QT_TRANSLATE_NOOP("Problem", "of this inspection something is said after the moment of the signature (%1)"),
            QT_TRANSLATE_NOOP("Problem", "date the signature after it, with its time, or correct what was said")};
    case ReleaseFault::Unsupported:
        return {QT_TRANSLATE_NOOP("Problem", "the list of '%1' is no longer supported by the record: %2"),
                QT_TRANSLATE_NOOP("Problem", "inspect again, or correct what was corrected wrongly")};
    case ReleaseFault::LineOpen:
        return {QT_TRANSLATE_NOOP("Problem", "%1 is open"),
                QT_TRANSLATE_NOOP("Problem", "carry it out, or put it down as not applicable")};
    case ReleaseFault::LeftOutstanding:
        return {
            QT_TRANSLATE_NOOP("Problem", "%1 is still to be done: the release after incomplete maintenance said so"),
            QT_TRANSLATE_NOOP("Problem", "carry it out and put it down as done; it cannot become not applicable")};
    case ReleaseFault::TooFewReadings:
        return {QT_TRANSLATE_NOOP("Problem", "%1: %2 of %3 readings taken"),
                QT_TRANSLATE_NOOP("Problem", "take the readings that are missing")};
    case ReleaseFault::NoTester:
        return {QT_TRANSLATE_NOOP("Problem", "%1: no test equipment is named"),
                QT_TRANSLATE_NOOP("Problem", "say which was used")};
    case ReleaseFault::TesterNotCalibrated:
        return {
            QT_TRANSLATE_NOOP("Problem", "%1: test equipment %2 is not in calibration on %3"),
            QT_TRANSLATE_NOOP("Problem", "take it again with one that is, or enter the calibration that proves it")};
    case ReleaseFault::TesterMeasuresOther:
        return {QT_TRANSLATE_NOOP("Problem", "%1: %2 measures %3"),
                QT_TRANSLATE_NOOP("Problem", "take it again with an instrument for it, or correct which one it was")};
    case ReleaseFault::TesterBeyondRange:
        return {QT_TRANSLATE_NOOP("Problem", "%1 lies beyond the range for which %2 is calibrated"),
                QT_TRANSLATE_NOOP("Problem", "take it again with one that reaches so far, or correct the figure")};
    case ReleaseFault::Doubtful:
        return {QT_TRANSLATE_NOOP("Problem", "%1: %2"), QT_TRANSLATE_NOOP("Problem", "correct it, or stand by it")};
    case ReleaseFault::Fails:
        return {QT_TRANSLATE_NOOP("Problem", "%1 fails: %2"),
                QT_TRANSLATE_NOOP("Problem",
                                  "rectify it and take the reading again in the same place, or write down its defect")};
    case ReleaseFault::DecidesNothing:
        return {QT_TRANSLATE_NOOP("Problem", "%1 is inconclusive: %2"),
                QT_TRANSLATE_NOOP("Problem", "take one that is conclusive")};
    case ReleaseFault::NoLimitStated:
        return {QT_TRANSLATE_NOOP("Problem", "%1 is inconclusive: %2"),
                QT_TRANSLATE_NOOP("Problem", "state the limit of the type's manual")};
    case ReleaseFault::DefectBarsFlight:
        return {
            QT_TRANSLATE_NOOP("Problem", "the defect '%1' on %2 is open and grounds the balloon"),
            QT_TRANSLATE_NOOP(
                "Problem",
                "rectify it, or have it deferred by who is authorised to; else close with a list of discrepancies")};
    case ReleaseFault::NothingToList:
        return {QT_TRANSLATE_NOOP("Problem", "there is no open defect to list"),
                QT_TRANSLATE_NOOP("Problem", "write down what was found, or release it")};
    case ReleaseFault::NoListOfWork:
        return {QT_TRANSLATE_NOOP("Problem", "a list of discrepancies ends an inspection, and this visit is none: %1"),
                QT_TRANSLATE_NOOP("Problem",
                                  "write down what was found as defects, and release the work that was done, "
                                  "or abandon the visit")};
    case ReleaseFault::NotIndependent:
        return {QT_TRANSLATE_NOOP("Problem", "%1 is put down by %2, who did the work"),
                QT_TRANSLATE_NOOP("Problem", "have somebody else look and put it down; where no vent or control line "
                                             "was worked on, put it down as not applicable")};
    case ReleaseFault::MaterialNotPutDown:
        return {QT_TRANSLATE_NOOP("Problem", "%1 is put down as not applicable, and a part or material went into %2"),
                QT_TRANSLATE_NOOP("Problem", "look at its document and put the line down as done")};
    case ReleaseFault::ComponentOfBalloon:
        return {QT_TRANSLATE_NOOP("Problem", "work on a component is off the aircraft, and this visit is of %1"),
                QT_TRANSLATE_NOOP("Problem", "open a visit of the item alone, or a repair of the balloon")};
    case ReleaseFault::ComponentFitted:
        return {QT_TRANSLATE_NOOP("Problem", "%1 is fitted to %2, and is released off the aircraft"),
                QT_TRANSLATE_NOOP("Problem", "write down its removal, or open a visit of the balloon")};
    case ReleaseFault::WorkNotDescribed:
        return {QT_TRANSLATE_NOOP("Problem", "what was done is not described"),
                QT_TRANSLATE_NOOP("Problem", "describe the work, and to which data it was done")};
    case ReleaseFault::WorkNotDescribedOn:
        return {QT_TRANSLATE_NOOP("Problem", "what was done on %1 is not described"),
                QT_TRANSLATE_NOOP("Problem", "describe the work, and to which data it was done")};
    case ReleaseFault::GradeNotSaid:
        return {QT_TRANSLATE_NOOP("Problem", "whether '%1' on %2 is minor or major is not said"),
                QT_TRANSLATE_NOOP("Problem", "correct the description: servicing, minor, standard, or major with its "
                                             "form or approval")};
    case ReleaseFault::NoOwnersTask:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' on %2 is no task of the pilot-owner's list that was done here"),
                QT_TRANSLATE_NOOP(
                    "Problem", "name the line of the task and settle it, or let authorised people release the work")};
    case ReleaseFault::NotOfTheTask:
        return {
            QT_TRANSLATE_NOOP("Problem", "'%1' on %2 is more than the pilot-owner's task that it is written under: %3"),
            QT_TRANSLATE_NOOP("Problem", "name the line of the task that it was, or let authorised people release it")};
    case ReleaseFault::OwnersTaskOffTheAircraft:
        return {QT_TRANSLATE_NOOP("Problem", "%1 is on no balloon: work on it is maintenance of a component, which no "
                                             "pilot-owner releases"),
                QT_TRANSLATE_NOOP("Problem", "leave it out, or let authorised people release it as a component")};
    case ReleaseFault::NothingOutstanding:
        return {QT_TRANSLATE_NOOP("Problem", "nothing is outstanding: the maintenance is complete"),
                QT_TRANSLATE_NOOP("Problem", "sign the release")};
    case ReleaseFault::NoLimitation:
        return {QT_TRANSLATE_NOOP("Problem", "under which limitation it may fly is not said"),
                QT_TRANSLATE_NOOP("Problem", "name it, for instance the check flight that the data ask for")};
    case ReleaseFault::AbandonedAfterRelease:
        return {
            QT_TRANSLATE_NOOP("Problem", "it was released after incomplete maintenance: what is outstanding stays"),
            QT_TRANSLATE_NOOP("Problem", "do it and sign the closing release, or close with a list of discrepancies")};
    case ReleaseFault::WhyNotSaid:
        return {QT_TRANSLATE_NOOP("Problem", "%1 is put down as not applicable, and why is not said"),
                QT_TRANSLATE_NOOP("Problem", "say that it is not fitted, that the manual does not ask for it and on "
                                             "which page, or another reason in words")};
    case ReleaseFault::GoesWithIt:
        return {QT_TRANSLATE_NOOP("Problem", "%1 goes with this inspection, and was left out on %2"),
                QT_TRANSLATE_NOOP("Problem", "do it in this visit; where it is not part of its work, open the visit "
                                             "anew with it")};
    case ReleaseFault::NothingRead:
        return {QT_TRANSLATE_NOOP(
                    "Problem",
                    "%1 is said to be done, and no reading of it is judged against a limit of the type's manual"),
                QT_TRANSLATE_NOOP(
                    "Problem",
                    "take the readings, state the manual's limit, or put it down as not asked for by the manual")};
    case ReleaseFault::Excepted:
        return {QT_TRANSLATE_NOOP("Problem", "%1"),
                QT_TRANSLATE_NOOP("Problem", "do it, or close with a list of discrepancies: the statement of "
                                             "airworthiness is not for a balloon that may not fly")};
    case ReleaseFault::OtherText:
        return {QT_TRANSLATE_NOOP("Problem", "what is signed as %1 is not what the record composes, which is '%2'"),
                QT_TRANSLATE_NOOP("Problem", "write what the record composes")};
    case ReleaseFault::NotAccomplished:
        return {QT_TRANSLATE_NOOP("Problem", "the inspection '%3' did not accomplish '%1' on %2"),
                QT_TRANSLATE_NOOP("Problem", "leave it out: what was done is what its lines and readings say")};
    case ReleaseFault::NotWithItsSignature:
        return {
            QT_TRANSLATE_NOOP(
                "Problem", "'%1' is an inspection of this record: what it accomplished is written with its signature"),
            QT_TRANSLATE_NOOP("Problem", "sign the inspection, or name the paper that it was done under")};
    case ReleaseFault::FoundBefore:
        return {QT_TRANSLATE_NOOP("Problem", "the defect '%1' was found on %2 on %3 already, and is open"),
                QT_TRANSLATE_NOOP("Problem", "give this one a name of its own")};
    case ReleaseFault::RevokeInstead:
        return {QT_TRANSLATE_NOOP("Problem",
                                  "the inspection '%1' was signed: its signature and what it covers are not voided"),
                QT_TRANSLATE_NOOP("Problem", "correct what was written, or withdraw the release with release.revoked")};
    case ReleaseFault::NoReleaseToRevoke:
        return {QT_TRANSLATE_NOOP("Problem", "the inspection '%1' has no release that could be withdrawn"),
                QT_TRANSLATE_NOOP("Problem", "see its name, and whether it was withdrawn already")};
    case ReleaseFault::NobodyRevokes:
        return {QT_TRANSLATE_NOOP("Problem", "who withdraws the release is not said"),
                QT_TRANSLATE_NOOP("Problem", "name the person in by")};
    case ReleaseFault::StaysRevoked:
        return {
            QT_TRANSLATE_NOOP("Problem", "the release of '%1' stays withdrawn"),
            QT_TRANSLATE_NOOP("Problem", "inspect and sign again: taking the withdrawal back accomplishes nothing")};
    case ReleaseFault::CorrectedUnsaid:
        return {QT_TRANSLATE_NOOP("Problem", "the inspection '%1' is signed: who corrects it, and why, is not said"),
                QT_TRANSLATE_NOOP("Problem", "name yourself in by, and the reason in the note of the correction")};
    case ReleaseFault::SaidBefore:
        return {
            QT_TRANSLATE_NOOP("Problem", "%1 is dated before the inspection was opened on %2"),
            QT_TRANSLATE_NOOP("Problem", "what is done in a visit is dated in it: correct the day, or do it again")};
    case ReleaseFault::NamedBefore:
        return {
            QT_TRANSLATE_NOOP("Problem", "something is written down as accomplished under the name '%1' already"),
            QT_TRANSLATE_NOOP("Problem", "give the inspection another name, or correct the reference of that entry")};
    case ReleaseFault::MayNotSign:
        return {QT_TRANSLATE_NOOP("Problem", "%1"),
                QT_TRANSLATE_NOOP("Problem",
                                  "have it signed by who is authorised to, or enter who that is (Bench, What "
                                  "releases rest on, People)")};
    case ReleaseFault::MayNotGradeDown:
        return {QT_TRANSLATE_NOOP("Problem", "%1"),
                QT_TRANSLATE_NOOP(
                    "Problem", "what was found to ground the balloon is called less, or taken out, by certifying staff "
                               "or a mechanic; a pilot-owner decides of what he found himself")};
    case ReleaseFault::GradedDownUnsaid:
        return {
            QT_TRANSLATE_NOOP("Problem", "defect %1 is called less than it was found to be, and by whom or why is not "
                                         "said"),
            QT_TRANSLATE_NOOP("Problem", "say who decided it in 'by' and, of a correction, in 'graded_by', and why in "
                                         "the note")};
    case ReleaseFault::ReadingUnsaid:
        return {QT_TRANSLATE_NOOP("Problem", "%1 failed and would no longer, and by whom or why is not said"),
                QT_TRANSLATE_NOOP("Problem",
                                  "say who decided it in 'by', and why in the note, or in the reason of a void")};
    case ReleaseFault::GroundUnsaid:
        return {QT_TRANSLATE_NOOP("Problem",
                                  "what grounds a balloon rests on this (%1), and by whom or why it is taken "
                                  "back is not said"),
                QT_TRANSLATE_NOOP("Problem", "say who decided it in 'by', and why in the note of the correction or the "
                                             "reason of the void")};
    case ReleaseFault::ClearingRestsOnIt:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' was rectified on the ground of this reading: %2"),
                QT_TRANSLATE_NOOP("Problem",
                                  "take the reading again, or void what rectified it first; where that is signed, "
                                  "write the defect down again")};
    case ReleaseFault::DeferralUnsaid:
        return {QT_TRANSLATE_NOOP("Problem", "the deferral of '%1' would say more than was agreed to, and who agrees, "
                                             "or why, is not said"),
                QT_TRANSLATE_NOOP("Problem",
                                  "name in 'agreed_by' who agrees to it now, and in the note why; of a void, "
                                  "in 'by' and the reason")};
    case ReleaseFault::LinesLeftOut:
        return {QT_TRANSLATE_NOOP("Problem",
                                  "'%1' on %2 would be accomplished without lines of the checklist in force: "
                                  "'%3', and so many more: %4"),
                QT_TRANSLATE_NOOP("Problem", "open the visit with the lines of the checklist in force; what does not "
                                             "apply is settled so, with why")};
    case ReleaseFault::MayNotDefer:
        return {QT_TRANSLATE_NOOP("Problem", "%1"),
                QT_TRANSLATE_NOOP("Problem", "have it deferred by who is authorised to, or rectified")};
    case ReleaseFault::NobodyDefers:
        return {QT_TRANSLATE_NOOP("Problem", "%1"), QT_TRANSLATE_NOOP("Problem", "have it rectified")};
    case ReleaseFault::MayNotClear:
        return {QT_TRANSLATE_NOOP("Problem", "that '%1' is put right is not said by who may release it: %2"),
                QT_TRANSLATE_NOOP("Problem",
                                  "name in 'by' who released the work, by what the record says of who may; a "
                                  "pilot-owner rectifies what grounds in a visit of his own tasks")};
    case ReleaseFault::ClearedBefore:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' was found on %2, and is said to be rectified before that"),
                QT_TRANSLATE_NOOP("Problem", "see which of the two dates or times is right")};
    case ReleaseFault::NotReadAgain:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' was found by a reading (%2), and no later one in its place passes"),
                QT_TRANSLATE_NOOP("Problem",
                                  "write down the repair or the new part, take the reading again in the same "
                                  "place, then say that it is rectified")};
    case ReleaseFault::RepairElsewhere:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' was found by a reading (%2), and this repair is not in its place"),
                QT_TRANSLATE_NOOP("Problem", "name the place of that reading; of a repair in another place, leave the "
                                             "defect out")};
    case ReleaseFault::TestNotRead:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' on %2 is on the list of discrepancies of inspection '%3': a bare "
                                             "statement answers no test"),
                QT_TRANSLATE_NOOP("Problem", "take the readings in a visit that was opened with it, a rectification "
                                             "for instance, and have that released; or name the paper, who signed it "
                                             "and the licence")};
    case ReleaseFault::RegistrationInUse:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' carries another envelope"),
                QT_TRANSLATE_NOOP("Problem",
                                  "remove from that registration what is fitted to it, or see which registration "
                                  "is meant")};
    case ReleaseFault::RenamedAndOut:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is %2, and %3"),
                QT_TRANSLATE_NOOP("Problem", "state what became of it of the registration that it has by now; what is "
                                             "out of service takes no other before it is in service again")};
    case ReleaseFault::FoundWithClearing:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' was rectified on %2, at a time that is not said: that would "
                                             "answer what is found on that day too"),
                QT_TRANSLATE_NOOP("Problem", "give what was found again a name of its own, or correct that entry so "
                                             "that it says its time")};
    case ReleaseFault::FoundElsewhere:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' was found on %2, not on this item"),
                QT_TRANSLATE_NOOP("Problem", "name the item that it was found on")};
    case ReleaseFault::ListAnswered:
        return {QT_TRANSLATE_NOOP("Problem", "the inspection '%1' has no list of discrepancies that is pending"),
                QT_TRANSLATE_NOOP("Problem", "see its name, how it was closed, and whether its return to service was "
                                             "approved already")};
    case ReleaseFault::ApprovedBefore:
        return {QT_TRANSLATE_NOOP("Problem",
                                  "the return to service would be approved before the list of %1 was signed, "
                                  "or before an approval of it was withdrawn"),
                QT_TRANSLATE_NOOP("Problem", "approve it on a later day, or state the time of that day")};
    case ReleaseFault::DefectStands:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' on %2 is on the list of discrepancies and is not rectified"),
                QT_TRANSLATE_NOOP("Problem", "rectify it: what is deferred still stands on the list")};
    case ReleaseFault::ListedStands:
        return {
            QT_TRANSLATE_NOOP("Problem", "'%1' on %2 is on the list of discrepancies and still stands against flight"),
            QT_TRANSLATE_NOOP("Problem", "do it; where the part was replaced, put the old one out of service")};
    case ReleaseFault::TestStands:
        return {
            QT_TRANSLATE_NOOP("Problem", "'%1' on %2 is on the list of discrepancies, and no reading since answers it"),
            QT_TRANSLATE_NOOP("Problem", "take the readings in a visit that was opened with it, a rectification for "
                                         "instance, and have that released; a bare statement answers no test")};
    case ReleaseFault::LeftOut:
        return {QT_TRANSLATE_NOOP(
                    "Problem", "the inspection '%3' accomplished '%1' on %2, which is not written with the approval"),
                QT_TRANSLATE_NOOP("Problem", "post the requirement.done of it in the same batch, dated as the "
                                             "inspection was closed; 'inspection approve' does")};
    case ReleaseFault::NotGiven:
        return {QT_TRANSLATE_NOOP("Problem", "%1 is not given"), QT_TRANSLATE_NOOP("Problem", "give it")};
    case ReleaseFault::WordingNotAdopted:
        return {
            QT_TRANSLATE_NOOP("Problem", "the wording '%1' (revision %2) is the program's own, and no organisation "
                                         "has adopted it by this day"),
            QT_TRANSLATE_NOOP("Problem",
                              "adopt it, or your manual's own wording, under 'Wording that is signed' in Rules or with "
                              "'text adopt', then have it confirmed against the current rule")};
    case ReleaseFault::WordingNotConfirmed:
        return {
            QT_TRANSLATE_NOOP("Problem", "nobody who may sign such a visit has confirmed the wording '%1' "
                                         "(revision %2) against the current rule by this day"),
            QT_TRANSLATE_NOOP("Problem",
                              "read it beside the rule and confirm it, under 'Wording that is signed' in Rules or with "
                              "'text confirm'")};
    case ReleaseFault::ChecklistNotConfirmed:
        return {
            QT_TRANSLATE_NOOP("Problem", "nobody who may sign such a visit has confirmed the checklist '%1' "
                                         "(revision %2) against the current rule by this day"),
            QT_TRANSLATE_NOOP("Problem",
                              "read it beside the rule and confirm it, under 'Wording that is signed' in Rules or with "
                              "'text confirm'")};
    case ReleaseFault::PlaceUnfilled:
        return {QT_TRANSLATE_NOOP("Problem", "the wording '%1' speaks of {%2}, for which the record has nothing here"),
                QT_TRANSLATE_NOOP("Problem", "give it, or adopt a wording without it")};
    case ReleaseFault::NoSuchLine:
        return {QT_TRANSLATE_NOOP("Problem", "the checklist of the inspection has no line '%1'"),
                QT_TRANSLATE_NOOP("Problem", "write the line as the checklist has it; the nearest is '%2'")};
    case ReleaseFault::DirectiveOpen:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is not done while a directive stands against flight: %2"),
                QT_TRANSLATE_NOOP("Problem", "answer the directive first, or settle the line as not applicable and "
                                             "say in words what stands open")};
    case ReleaseFault::NotFlown:
        return {QT_TRANSLATE_NOOP("Problem",
                                  "'%1' is put down as done, and no free flight of %2 with what was worked on "
                                  "is logged after the work and before that"),
                QT_TRANSLATE_NOOP("Problem", "log the check flight, and put the line down as done after it")};
    case ReleaseFault::EntryUnread:
        return {QT_TRANSLATE_NOOP("Problem", "the record holds an entry that cannot be read, '%1' (%2)"),
                QT_TRANSLATE_NOOP("Problem", "void it with a reason, and write it again as it should be")};
    }
    return {};
}

}
