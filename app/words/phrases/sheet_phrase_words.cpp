// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/sheet_phrase.h"
#include "words/phrase_sources.h"

#include <QtGlobal>

namespace crownring::words {

const char* sourceOf(SheetPhrase phrase) {
    switch (phrase) {
    case SheetPhrase::Draft:
        return QT_TRANSLATE_NOOP("Phrase", "%1 (DRAFT, not signed)");
    case SheetPhrase::DraftNote:
        return QT_TRANSLATE_NOOP("Phrase",
                                 "DRAFT: the inspection is open on %1. Nothing on this page is signed or released.");
    case SheetPhrase::PapersOf:
        return QT_TRANSLATE_NOOP("Phrase", "Papers of inspection %1");
    case SheetPhrase::SignedInTheRecord:
        return QT_TRANSLATE_NOOP("Phrase", "Signed in the record");
    case SheetPhrase::ToBeSigned:
        return QT_TRANSLATE_NOOP("Phrase", "To be signed");
    case SheetPhrase::Name:
        return QT_TRANSLATE_NOOP("Phrase", "Name");
    case SheetPhrase::ActingAs:
        return QT_TRANSLATE_NOOP("Phrase", "Signing as");
    case SheetPhrase::LicenceNumber:
        return QT_TRANSLATE_NOOP("Phrase", "Licence or certificate no. and kind");
    case SheetPhrase::Date:
        return QT_TRANSLATE_NOOP("Phrase", "Date");
    case SheetPhrase::Signature:
        return QT_TRANSLATE_NOOP("Phrase", "Signature");
    case SheetPhrase::Gore:
        return QT_TRANSLATE_NOOP("Phrase", "gore %1");
    case SheetPhrase::Row:
        return QT_TRANSLATE_NOOP("Phrase", "row %1");
    case SheetPhrase::Step:
        return QT_TRANSLATE_NOOP("Phrase", "%1 to below %2");
    case SheetPhrase::Jaws:
        return QT_TRANSLATE_NOOP("Phrase", "%1 jaws");
    case SheetPhrase::Abandoned:
        return QT_TRANSLATE_NOOP("Phrase", "Inspection abandoned");
    case SheetPhrase::WorkOnItems:
        return QT_TRANSLATE_NOOP("Phrase", "Record of work on items");
    case SheetPhrase::ReleaseToService:
        return QT_TRANSLATE_NOOP("Phrase", "Certificate of release to service");
    case SheetPhrase::WithoutRelease:
        return QT_TRANSLATE_NOOP("Phrase", "Inspection without release");
    case SheetPhrase::ApprovedSince:
        return QT_TRANSLATE_NOOP("Phrase",
                                 "Inspection with a list of discrepancies; the return to service is approved since");
    case SheetPhrase::WorkDone:
        return QT_TRANSLATE_NOOP("Phrase", "Of the work, done");
    case SheetPhrase::WorkNotDone:
        return QT_TRANSLATE_NOOP("Phrase", "Of the work, not done");
    case SheetPhrase::NotDone:
        return QT_TRANSLATE_NOOP("Phrase", "Taken into the work and not done, so not certified");
    case SheetPhrase::AnsweredSince:
        return QT_TRANSLATE_NOOP("Phrase", "%1 when the list was signed; answered since");
    case SheetPhrase::ReturnToService:
        return QT_TRANSLATE_NOOP("Phrase", "Maintenance record entry: approval for return to service");
    case SheetPhrase::NoReturnToService:
        return QT_TRANSLATE_NOOP("Phrase", "Maintenance record entry: not approved for return to service");
    case SheetPhrase::OpenDefects:
        return QT_TRANSLATE_NOOP("Phrase", "Open defects");
    case SheetPhrase::OpenDefect:
        return QT_TRANSLATE_NOOP("Phrase", "%1: %2 (%3)");
    case SheetPhrase::SealOver:
        return QT_TRANSLATE_N_NOOP("Phrase", "The signature covers %n entries of the record; digest %2.");
    case SheetPhrase::CorrectedSinceSee:
        return QT_TRANSLATE_NOOP("Phrase", "Entries of this inspection were corrected since they were written; the "
                                           "inspection report shows both wordings.");
    case SheetPhrase::LogbookEntry:
        return QT_TRANSLATE_NOOP("Phrase", "Logbook entry");
    case SheetPhrase::NotSigned:
        return QT_TRANSLATE_NOOP("Phrase", "not signed");
    case SheetPhrase::TotalTime:
        return QT_TRANSLATE_NOOP("Phrase", "Total time in service (the envelope's clock)");
    case SheetPhrase::TimeInService:
        return QT_TRANSLATE_NOOP("Phrase", "Time in service");
    case SheetPhrase::HighestTemperature:
        return QT_TRANSLATE_NOOP("Phrase", "Highest temperature of the tell-tale");
    case SheetPhrase::NotRead:
        return QT_TRANSLATE_NOOP("Phrase", "not read");
    case SheetPhrase::DiscrepancyList:
        return QT_TRANSLATE_NOOP("Phrase", "List of discrepancies and unairworthy items");
    case SheetPhrase::DiscrepancyNote:
        return QT_TRANSLATE_NOOP(
            "Phrase",
            "Dated %1, for the owner or operator: what was open on that day. An item that grounds the balloon "
            "is rectified, or deferred by who is authorised to, before the next flight.");
    case SheetPhrase::Number:
        return QT_TRANSLATE_NOOP("Phrase", "No.");
    case SheetPhrase::Item:
        return QT_TRANSLATE_NOOP("Phrase", "Item");
    case SheetPhrase::Discrepancy:
        return QT_TRANSLATE_NOOP("Phrase", "Discrepancy");
    case SheetPhrase::Severity:
        return QT_TRANSLATE_NOOP("Phrase", "Severity");
    case SheetPhrase::State:
        return QT_TRANSLATE_NOOP("Phrase", "State");
    case SheetPhrase::NothingOpen:
        return QT_TRANSLATE_NOOP("Phrase", "Nothing is open.");
    case SheetPhrase::Report:
        return QT_TRANSLATE_NOOP("Phrase", "Inspection report");
    case SheetPhrase::WorkReport:
        return QT_TRANSLATE_NOOP("Phrase", "Report of the visit");
    case SheetPhrase::Visit:
        return QT_TRANSLATE_NOOP("Phrase", "Visit");
    case SheetPhrase::Opened:
        return QT_TRANSLATE_NOOP("Phrase", "Opened");
    case SheetPhrase::Closed:
        return QT_TRANSLATE_NOOP("Phrase", "Closed");
    case SheetPhrase::NotYet:
        return QT_TRANSLATE_NOOP("Phrase", "not yet");
    case SheetPhrase::Outcome:
        return QT_TRANSLATE_NOOP("Phrase", "Outcome");
    case SheetPhrase::NoneYet:
        return QT_TRANSLATE_NOOP("Phrase", "none yet");
    case SheetPhrase::OutcomeReleased:
        return QT_TRANSLATE_NOOP("Phrase", "released");
    case SheetPhrase::OutcomeSigned:
        return QT_TRANSLATE_NOOP("Phrase", "work signed for; it releases no aircraft and no component");
    case SheetPhrase::OutcomeDiscrepancies:
        return QT_TRANSLATE_NOOP("Phrase", "not released; a list of discrepancies was given");
    case SheetPhrase::OutcomeIncomplete:
        return QT_TRANSLATE_NOOP("Phrase", "released after incomplete maintenance");
    case SheetPhrase::OutcomeAbandoned:
        return QT_TRANSLATE_NOOP("Phrase", "abandoned; nothing is released");
    case SheetPhrase::Checklist:
        return QT_TRANSLATE_NOOP("Phrase", "Checklist");
    case SheetPhrase::NoChecklist:
        return QT_TRANSLATE_NOOP("Phrase", "none in the record; the lines are the shop's own");
    case SheetPhrase::Revision:
        return QT_TRANSLATE_NOOP("Phrase", "%1, revision %2");
    case SheetPhrase::Inspectors:
        return QT_TRANSLATE_NOOP("Phrase", "Inspectors");
    case SheetPhrase::ToBeDone:
        return QT_TRANSLATE_NOOP("Phrase", "To be done");
    case SheetPhrase::Items:
        return QT_TRANSLATE_NOOP("Phrase", "Items");
    case SheetPhrase::Kind:
        return QT_TRANSLATE_NOOP("Phrase", "Kind");
    case SheetPhrase::Type:
        return QT_TRANSLATE_NOOP("Phrase", "Type");
    case SheetPhrase::SerialNumber:
        return QT_TRANSLATE_NOOP("Phrase", "Serial no.");
    case SheetPhrase::NotRecorded:
        return QT_TRANSLATE_NOOP("Phrase", "not recorded");
    case SheetPhrase::OtherLines:
        return QT_TRANSLATE_NOOP("Phrase", "Other lines");
    case SheetPhrase::OnItem:
        return QT_TRANSLATE_NOOP("Phrase", "%1: %2");
    case SheetPhrase::WithTester:
        return QT_TRANSLATE_NOOP("Phrase", "test equipment %1");
    case SheetPhrase::Photographs:
        return QT_TRANSLATE_N_NOOP("Phrase", "%n photographs in the record");
    case SheetPhrase::CorrectionsNote:
        return QT_TRANSLATE_NOOP("Phrase",
                                 "The rest of this report says what these entries say now; the record keeps both.");
    case SheetPhrase::CorrectedSince:
        return QT_TRANSLATE_NOOP("Phrase", "Corrected since");
    case SheetPhrase::RepairOrPart:
        return QT_TRANSLATE_NOOP("Phrase", "Repair or part");
    case SheetPhrase::WhereSizeSerials:
        return QT_TRANSLATE_NOOP("Phrase", "Where, size, serial numbers");
    case SheetPhrase::LotOrDocument:
        return QT_TRANSLATE_NOOP("Phrase", "Material lot or release document");
    case SheetPhrase::By:
        return QT_TRANSLATE_NOOP("Phrase", "By");
    case SheetPhrase::OffAndOn:
        return QT_TRANSLATE_NOOP("Phrase", "off %1, on %2");
    case SheetPhrase::NotStated:
        return QT_TRANSLATE_NOOP("Phrase", "not stated");
    case SheetPhrase::RepairsAndParts:
        return QT_TRANSLATE_NOOP("Phrase", "Repairs and parts");
    case SheetPhrase::Defect:
        return QT_TRANSLATE_NOOP("Phrase", "Defect");
    case SheetPhrase::Defects:
        return QT_TRANSLATE_NOOP("Phrase", "Defects");
    case SheetPhrase::WhatBecameOfIt:
        return QT_TRANSLATE_NOOP("Phrase", "What became of it");
    case SheetPhrase::Readings:
        return QT_TRANSLATE_NOOP("Phrase", "Readings");
    case SheetPhrase::Testers:
        return QT_TRANSLATE_NOOP("Phrase", "Test equipment");
    case SheetPhrase::QuantityAndTest:
        return QT_TRANSLATE_NOOP("Phrase", "Quantity and test");
    case SheetPhrase::Where:
        return QT_TRANSLATE_NOOP("Phrase", "Where");
    case SheetPhrase::Reading:
        return QT_TRANSLATE_NOOP("Phrase", "Reading");
    case SheetPhrase::Limit:
        return QT_TRANSLATE_NOOP("Phrase", "Limit");
    case SheetPhrase::Result:
        return QT_TRANSLATE_NOOP("Phrase", "Result");
    case SheetPhrase::Tester:
        return QT_TRANSLATE_NOOP("Phrase", "Test equipment");
    case SheetPhrase::Measures:
        return QT_TRANSLATE_NOOP("Phrase", "Measures");
    case SheetPhrase::MeasuresNotSaid:
        return QT_TRANSLATE_NOOP("Phrase", "the record does not say what it measures");
    case SheetPhrase::MeasuresUpTo:
        return QT_TRANSLATE_NOOP("Phrase", "%1, up to %2");
    case SheetPhrase::MeasuresWithin:
        return QT_TRANSLATE_NOOP("Phrase", "%1, %2 to %3");
    case SheetPhrase::What:
        return QT_TRANSLATE_NOOP("Phrase", "What");
    case SheetPhrase::CalibratedUntil:
        return QT_TRANSLATE_NOOP("Phrase", "In calibration until");
    case SheetPhrase::NoCalibration:
        return QT_TRANSLATE_NOOP("Phrase", "no calibration in the record");
    case SheetPhrase::NotCalibrated:
        return QT_TRANSLATE_NOOP("Phrase", "%1, NOT in calibration on that day");
    case SheetPhrase::HeldNote:
        return QT_TRANSLATE_NOOP("Phrase", "≥: this load was held and nothing broke; the strength is at least this.");
    case SheetPhrase::Passes:
        return QT_TRANSLATE_NOOP("Phrase", "passes");
    case SheetPhrase::Fails:
        return QT_TRANSLATE_NOOP("Phrase", "FAILS");
    case SheetPhrase::Undecided:
        return QT_TRANSLATE_NOOP("Phrase", "inconclusive: %1");
    case SheetPhrase::NotComparable:
        return QT_TRANSLATE_NOOP("Phrase", "not comparable: %1");
    case SheetPhrase::NoLimit:
        return QT_TRANSLATE_NOOP("Phrase", "no limit stated");
    case SheetPhrase::Grounding:
        return QT_TRANSLATE_NOOP("Phrase", "danger to flight");
    case SheetPhrase::NotFitted:
        return QT_TRANSLATE_NOOP("Phrase", "not fitted");
    case SheetPhrase::NotAsked:
        return QT_TRANSLATE_NOOP("Phrase", "not asked for by the manual (%1)");
    case SheetPhrase::ApprovalWithdrawn:
        return QT_TRANSLATE_NOOP("Phrase", "The approval of the return to service was withdrawn by %1: %2");
    case SheetPhrase::Withdrawn:
        return QT_TRANSLATE_NOOP("Phrase", "This release was withdrawn by %1: %2");
    case SheetPhrase::ReturnApproved:
        return QT_TRANSLATE_NOOP("Phrase", "The return to service was approved by %1, licence %2. %3");
    case SheetPhrase::ListPending:
        return QT_TRANSLATE_NOOP("Phrase", "The list is pending: until every item on it is rectified and the return to "
                                           "service is approved, it grounds what was inspected.");
    case SheetPhrase::NotSupported:
        return QT_TRANSLATE_NOOP("Phrase", "Signed, and no longer supported by the record:");
    case SheetPhrase::BarsFlight:
        return QT_TRANSLATE_NOOP("Phrase", "grounds the balloon");
    case SheetPhrase::Minor:
        return QT_TRANSLATE_NOOP("Phrase", "minor");
    case SheetPhrase::IsOpen:
        return QT_TRANSLATE_NOOP("Phrase", "open");
    case SheetPhrase::IsDeferred:
        return QT_TRANSLATE_NOOP("Phrase", "deferred: %1");
    case SheetPhrase::AgreedBy:
        return QT_TRANSLATE_NOOP("Phrase", "%1; agreed by %2");
    case SheetPhrase::UntilDay:
        return QT_TRANSLATE_NOOP("Phrase", "%1, until %2");
    case SheetPhrase::UntilClock:
        return QT_TRANSLATE_NOOP("Phrase", "%1, until the clock shows %2 h");
    case SheetPhrase::IsCleared:
        return QT_TRANSLATE_NOOP("Phrase", "rectified: %1 (%2)");
    case SheetPhrase::Map:
        return QT_TRANSLATE_NOOP("Phrase", "Envelope map");
    case SheetPhrase::MapCaption:
        return QT_TRANSLATE_NOOP("Phrase", "Envelope %1: %2");
    case SheetPhrase::MapUnit:
        return QT_TRANSLATE_NOOP("Phrase", "%1, in %2");
    case SheetPhrase::MapUnitAndLimit:
        return QT_TRANSLATE_NOOP("Phrase", "%1, in %2; limit %3");
    case SheetPhrase::MapOrientation:
        return QT_TRANSLATE_NOOP("Phrase", "Mouth at the foot, crown at the head, gores as on the data plate");
    case SheetPhrase::MapSizeUnknown:
        return QT_TRANSLATE_NOOP("Phrase", "The record does not state the number of gores and rows of the type");
    case SheetPhrase::NoReadingAtAPlace:
        return QT_TRANSLATE_NOOP("Phrase", "No reading was taken at a place of the envelope.");
    case SheetPhrase::Entry:
        return QT_TRANSLATE_NOOP("Phrase", "Entry");
    case SheetPhrase::FirstWritten:
        return QT_TRANSLATE_NOOP("Phrase", "First written");
    case SheetPhrase::SaysNow:
        return QT_TRANSLATE_NOOP("Phrase", "Says now");
    case SheetPhrase::Nothing:
        return QT_TRANSLATE_NOOP("Phrase", "nothing");
    case SheetPhrase::GradedDown:
        return QT_TRANSLATE_NOOP("Phrase", "%1; graded down by %2: %3");
    case SheetPhrase::GradedDownBy:
        return QT_TRANSLATE_NOOP("Phrase", "%1; graded down by %2");
    case SheetPhrase::IsVoided:
        return QT_TRANSLATE_NOOP("Phrase", "voided by %1: %2");
    case SheetPhrase::TakenBackThere:
        return QT_TRANSLATE_NOOP("Phrase", "taken back where it was written");
    case SheetPhrase::Voided:
        return QT_TRANSLATE_NOOP("Phrase", "Found and voided since");
    case SheetPhrase::TestAndLimit:
        return QT_TRANSLATE_NOOP("Phrase", "%1; limit %2");
    case SheetPhrase::OtherClauses:
        return QT_TRANSLATE_NOOP("Phrase", "Others");
    case SheetPhrase::CopyOf:
        return QT_TRANSLATE_NOOP("Phrase", "Copy from the record of what was signed on %1 by %2: the statement as "
                                           "signed, the rest as the record has it by now.");
    case SheetPhrase::CopyUnsigned:
        return QT_TRANSLATE_NOOP("Phrase", "Copy from the record; closed by %1, and signed by nobody.");
    case SheetPhrase::NoSeal:
        return QT_TRANSLATE_NOOP("Phrase", "It was signed without a seal.");
    case SheetPhrase::EarlierRelease:
        return QT_TRANSLATE_NOOP("Phrase", "A release after incomplete maintenance was signed by %1, within this "
                                           "limitation: %2. Not completed then: %3.");
    case SheetPhrase::EndedSince:
        return QT_TRANSLATE_NOOP("Phrase",
                                 "The visit was closed on %1; since then its closing stands in place of this release.");
    case SheetPhrase::IncompleteRelease:
        return QT_TRANSLATE_NOOP("Phrase", "Certificate of release to service after incomplete maintenance");
    case SheetPhrase::NoIncompleteRelease:
        return QT_TRANSLATE_NOOP("Phrase", "No release after incomplete maintenance was signed in this visit.");
    case SheetPhrase::ComponentCertificate:
        return QT_TRANSLATE_NOOP("Phrase", "Certificate of release of components");
    case SheetPhrase::ComponentReturn:
        return QT_TRANSLATE_NOOP("Phrase", "Maintenance record entry for components: approval for return to service");
    case SheetPhrase::ComponentsNotReleased:
        return QT_TRANSLATE_NOOP("Phrase", "Work on components: nothing is released");
    case SheetPhrase::NoFormOfAuthority:
        return QT_TRANSLATE_NOOP("Phrase", "This is no EASA Form 1 and no FAA Form 8130-3. Where one of these is "
                                           "required for a component, it is issued beside this paper.");
    case SheetPhrase::LabelSheet:
        return QT_TRANSLATE_NOOP("Phrase", "Labels");
    case SheetPhrase::LabelReleased:
        return QT_TRANSLATE_NOOP("Phrase", "Released");
    case SheetPhrase::LabelDraft:
        return QT_TRANSLATE_NOOP("Phrase", "NOT RELEASED (draft)");
    case SheetPhrase::LabelWithdrawn:
        return QT_TRANSLATE_NOOP("Phrase", "NOT RELEASED (withdrawn)");
    case SheetPhrase::LabelUnsupported:
        return QT_TRANSLATE_NOOP("Phrase", "NOT RELEASED (no longer supported by the record)");
    case SheetPhrase::LabelNotReleased:
        return QT_TRANSLATE_NOOP("Phrase", "NOT RELEASED");
    case SheetPhrase::LabelRecordOnly:
        return QT_TRANSLATE_NOOP("Phrase", "NOT RELEASED (record of work)");
    case SheetPhrase::LabelNote:
        return QT_TRANSLATE_NOOP("Phrase", "No EASA Form 1, no FAA Form 8130-3.");
    case SheetPhrase::WorkInBrief:
        return QT_TRANSLATE_NOOP("Phrase", "Work done");
    case SheetPhrase::Limits:
        return QT_TRANSLATE_NOOP("Phrase", "Limitations");
    case SheetPhrase::SignedBy:
        return QT_TRANSLATE_NOOP("Phrase", "Signed by");
    case SheetPhrase::OrderNumber:
        return QT_TRANSLATE_NOOP("Phrase", "Work order");
    case SheetPhrase::OwnerOf:
        return QT_TRANSLATE_NOOP("Phrase", "Owner");
    case SheetPhrase::OperatorOf:
        return QT_TRANSLATE_NOOP("Phrase", "Operated by");
    case SheetPhrase::WorkPerformed:
        return QT_TRANSLATE_NOOP("Phrase", "Work performed");
    case SheetPhrase::WorkOf:
        return QT_TRANSLATE_NOOP("Phrase", "Work");
    case SheetPhrase::DataUsed:
        return QT_TRANSLATE_NOOP("Phrase", "Data used");
    case SheetPhrase::Data:
        return QT_TRANSLATE_NOOP("Phrase", "Data");
    case SheetPhrase::GradeOf:
        return QT_TRANSLATE_NOOP("Phrase", "Grade");
    case SheetPhrase::Form:
        return QT_TRANSLATE_NOOP("Phrase", "Form or approval");
    case SheetPhrase::PerformedBy:
        return QT_TRANSLATE_NOOP("Phrase", "Performed by");
    case SheetPhrase::Placard:
        return QT_TRANSLATE_NOOP("Phrase", "Placard");
    case SheetPhrase::NoPlacard:
        return QT_TRANSLATE_NOOP("Phrase", "no placard in the record");
    case SheetPhrase::DeferredBy:
        return QT_TRANSLATE_NOOP("Phrase", "Deferred by");
    case SheetPhrase::DeferredItems:
        return QT_TRANSLATE_NOOP("Phrase", "Deferred, with their placards");
    case SheetPhrase::NothingUndeferred:
        return QT_TRANSLATE_NOOP("Phrase", "Nothing is open that is not deferred.");
    case SheetPhrase::Unairworthy:
        return QT_TRANSLATE_NOOP("Phrase", "On the list of discrepancies");
    case SheetPhrase::NotCoveredShort:
        return QT_TRANSLATE_NOOP("Phrase", "Not covered");
    case SheetPhrase::DeferredShort:
        return QT_TRANSLATE_NOOP("Phrase", "Deferred");
    case SheetPhrase::OnAll:
        return QT_TRANSLATE_NOOP("Phrase", "all");
    case SheetPhrase::ReadAtNoPlace:
        return QT_TRANSLATE_NOOP("Phrase", "Other readings");
    case SheetPhrase::ReadBy:
        return QT_TRANSLATE_NOOP("Phrase", "%1; by %2");
    case SheetPhrase::AllBy:
        return QT_TRANSLATE_NOOP("Phrase", "%1; with %2; by %3");
    case SheetPhrase::ByWhom:
        return QT_TRANSLATE_NOOP("Phrase", "By whom and when");
    case SheetPhrase::Clauses:
        return QT_TRANSLATE_NOOP("Phrase", "Clauses");
    case SheetPhrase::ClausesFromMemory:
        return QT_TRANSLATE_NOOP("Phrase", "* from memory; check against the current text");
    }
    return "";
}

}
