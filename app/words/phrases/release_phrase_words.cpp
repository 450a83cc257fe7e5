// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/release_phrase.h"
#include "words/phrase_sources.h"

#include <QtGlobal>

namespace crownring::words {

const char* sourceOf(ReleasePhrase phrase) {
    switch (phrase) {
    case ReleasePhrase::Caution:
        return QT_TRANSLATE_NOOP("Phrase", "Caution");
    case ReleasePhrase::CautionText:
        return QT_TRANSLATE_NOOP(
            "Phrase",
            "Crownring keeps records and computes from stated rules; it never declares a balloon airworthy. The "
            "licensed person, the competent authority and the manufacturer's current instructions decide.");
    case ReleasePhrase::Aircraft:
        return QT_TRANSLATE_NOOP("Phrase", "Aircraft");
    case ReleasePhrase::Registration:
        return QT_TRANSLATE_NOOP("Phrase", "Registration: %1");
    case ReleasePhrase::EnvelopeType:
        return QT_TRANSLATE_NOOP("Phrase", "Envelope type: %1");
    case ReleasePhrase::EnvelopeSerial:
        return QT_TRANSLATE_NOOP("Phrase", "Envelope serial number: %1");
    case ReleasePhrase::Items:
        return QT_TRANSLATE_NOOP("Phrase", "Items");
    case ReleasePhrase::OnNoBalloon:
        return QT_TRANSLATE_NOOP("Phrase", "On no balloon");
    case ReleasePhrase::TimeInService:
        return QT_TRANSLATE_NOOP("Phrase", "Time in service");
    case ReleasePhrase::AircraftTotalTime:
        return QT_TRANSLATE_NOOP("Phrase", "Total time in service (the envelope's clock): %1");
    case ReleasePhrase::TimeOf:
        return QT_TRANSLATE_NOOP("Phrase", "%1: %2");
    case ReleasePhrase::Hours:
        return QT_TRANSLATE_NOOP("Phrase", "%1 h");
    case ReleasePhrase::NotKnown:
        return QT_TRANSLATE_NOOP("Phrase", "not known");
    case ReleasePhrase::HighestTemperature:
        return QT_TRANSLATE_NOOP("Phrase", "Highest temperature of the tell-tale: %1");
    case ReleasePhrase::SignedOn:
        return QT_TRANSLATE_NOOP("Phrase", "Signed on: %1");
    case ReleasePhrase::ByItsLines:
        return QT_TRANSLATE_NOOP("Phrase", "%1 with the checklist '%2', revision %3; done: %4; details in visit %5");
    case ReleasePhrase::CompletedOn:
        return QT_TRANSLATE_NOOP("Phrase", "Completed on: %1");
    case ReleasePhrase::WorkCarriedOut:
        return QT_TRANSLATE_NOOP("Phrase", "Work carried out");
    case ReleasePhrase::ReadingsTaken:
        return QT_TRANSLATE_NOOP("Phrase", "Readings");
    case ReleasePhrase::DataUsed:
        return QT_TRANSLATE_NOOP("Phrase", "Data used");
    case ReleasePhrase::DeferredDefects:
        return QT_TRANSLATE_NOOP("Phrase", "Deferred defects");
    case ReleasePhrase::Discrepancies:
        return QT_TRANSLATE_NOOP("Phrase", "Discrepancies and unairworthy items");
    case ReleasePhrase::ListDated:
        return QT_TRANSLATE_NOOP("Phrase", "List dated: %1");
    case ReleasePhrase::Rectified:
        return QT_TRANSLATE_NOOP("Phrase", "Defect rectified on %1: %2; %3");
    case ReleasePhrase::NotAskedFor:
        return QT_TRANSLATE_NOOP("Phrase", "Not asked for");
    case ReleasePhrase::NotAskedOf:
        return QT_TRANSLATE_NOOP("Phrase",
                                 "%1 has no type in the record, so no manual and no limit: not asked for are %2.");
    case ReleasePhrase::FlownUntil:
        return QT_TRANSLATE_NOOP("Phrase", "flown until %1 at the latest");
    case ReleasePhrase::FlownInAll:
        return QT_TRANSLATE_NOOP("Phrase", "at most %1 aloft in all");
    case ReleasePhrase::FlownAtMost:
        return QT_TRANSLATE_NOOP("Phrase", "flights at most: %1");
    case ReleasePhrase::Limitations:
        return QT_TRANSLATE_NOOP("Phrase", "Limitations");
    case ReleasePhrase::ReleasedBy:
        return QT_TRANSLATE_NOOP("Phrase", "Released by");
    case ReleasePhrase::SignedBy:
        return QT_TRANSLATE_NOOP("Phrase", "Signed by");
    case ReleasePhrase::ActingAs:
        return QT_TRANSLATE_NOOP("Phrase", "Signing as: %1");
    case ReleasePhrase::Licence:
        return QT_TRANSLATE_NOOP("Phrase", "Licence, certificate or approval: %1");
    case ReleasePhrase::Item:
        return QT_TRANSLATE_NOOP("Phrase", "%1 %2");
    case ReleasePhrase::OfType:
        return QT_TRANSLATE_NOOP("Phrase", "%1, type %2");
    case ReleasePhrase::WithSerial:
        return QT_TRANSLATE_NOOP("Phrase", "%1, serial %2");
    case ReleasePhrase::ByChecklist:
        return QT_TRANSLATE_NOOP("Phrase",
                                 "%1 by the checklist '%2', revision %3, carried out on: %4; details in inspection %5");
    case ReleasePhrase::ByOwnLines:
        return QT_TRANSLATE_NOOP("Phrase", "%1 by the shop's own lines: %2; details in inspection %3");
    case ReleasePhrase::Papers:
        return QT_TRANSLATE_NOOP("Phrase", "papers");
    case ReleasePhrase::NoLineDone:
        return QT_TRANSLATE_NOOP("Phrase", "no line done");
    case ReleasePhrase::OfLot:
        return QT_TRANSLATE_NOOP("Phrase", "%1, fabric of lot %2");
    case ReleasePhrase::Readings:
        return QT_TRANSLATE_N_NOOP("Phrase", "%n readings");
    case ReleasePhrase::Repair:
        return QT_TRANSLATE_NOOP("Phrase", "Repair of %1: %2");
    case ReleasePhrase::PartReplaced:
        return QT_TRANSLATE_NOOP("Phrase", "Part replaced on %1: %2, with %3");
    case ReleasePhrase::DefectCleared:
        return QT_TRANSLATE_NOOP("Phrase", "Defect rectified on %1: %2");
    case ReleasePhrase::Defect:
        return QT_TRANSLATE_NOOP("Phrase", "%1: %2");
    case ReleasePhrase::DeferredUntil:
        return QT_TRANSLATE_NOOP("Phrase", "%1; until %2");
    case ReleasePhrase::DeferredUntilClock:
        return QT_TRANSLATE_NOOP("Phrase", "%1; until its clock shows %2 h");
    case ReleasePhrase::DeferredBy:
        return QT_TRANSLATE_NOOP("Phrase", "%1; agreed by %2");
    case ReleasePhrase::Placarded:
        return QT_TRANSLATE_NOOP("Phrase", "%1; placarded: %2");
    case ReleasePhrase::DefectDeferred:
        return QT_TRANSLATE_NOOP("Phrase", "%1; deferred on %3: %2");
    case ReleasePhrase::NotCovered:
        return QT_TRANSLATE_NOOP("Phrase", "Not covered: it stands against flight as the record has it");
    case ReleasePhrase::ExceptedSpent:
        return QT_TRANSLATE_NOOP("Phrase", "%1: %2, life reached");
    case ReleasePhrase::ExceptedLapsed:
        return QT_TRANSLATE_NOOP("Phrase", "%1: %2, lapsed");
    case ReleasePhrase::ExceptedUnproven:
        return QT_TRANSLATE_NOOP("Phrase", "%1: %2, no record of it");
    case ReleasePhrase::NothingReleased:
        return QT_TRANSLATE_NOOP("Phrase", "The visit was abandoned: nothing is released.");
    case ReleasePhrase::DiscrepanciesListed:
        return QT_TRANSLATE_NOOP("Phrase", "Nothing is released: the discrepancies found are listed.");
    case ReleasePhrase::Servicing:
        return QT_TRANSLATE_NOOP("Phrase", "servicing");
    case ReleasePhrase::MinorWork:
        return QT_TRANSLATE_NOOP("Phrase", "minor repair or alteration");
    case ReleasePhrase::MajorWork:
        return QT_TRANSLATE_NOOP("Phrase", "major repair or alteration");
    case ReleasePhrase::MinorChange:
        return QT_TRANSLATE_NOOP("Phrase", "minor repair or modification");
    case ReleasePhrase::MajorChange:
        return QT_TRANSLATE_NOOP("Phrase", "major repair or modification");
    case ReleasePhrase::StandardWork:
        return QT_TRANSLATE_NOOP("Phrase", "standard repair or change (CS-STAN)");
    case ReleasePhrase::WorkTo:
        return QT_TRANSLATE_NOOP("Phrase", "%1; to %2");
    case ReleasePhrase::WorkGraded:
        return QT_TRANSLATE_NOOP("Phrase", "%1; %2");
    case ReleasePhrase::WorkApproved:
        return QT_TRANSLATE_NOOP("Phrase", "%1; form or approval %2");
    case ReleasePhrase::WorkBy:
        return QT_TRANSLATE_NOOP("Phrase", "%1; performed by %2");
    case ReleasePhrase::WorkOn:
        return QT_TRANSLATE_NOOP("Phrase", "%1: %2");
    case ReleasePhrase::WorkOrder:
        return QT_TRANSLATE_NOOP("Phrase", "Work order: %1");
    case ReleasePhrase::NotCompleted:
        return QT_TRANSLATE_NOOP("Phrase", "Maintenance not completed");
    case ReleasePhrase::OutstandingOn:
        return QT_TRANSLATE_NOOP("Phrase", "%2: %1");
    case ReleasePhrase::Owner:
        return QT_TRANSLATE_NOOP("Phrase", "Owner: %1");
    case ReleasePhrase::OperatedBy:
        return QT_TRANSLATE_NOOP("Phrase", "Operated by: %1");
    case ReleasePhrase::Accomplished:
        return QT_TRANSLATE_NOOP("Phrase", "%1 of %2");
    case ReleasePhrase::ReadingsOf:
        return QT_TRANSLATE_NOOP("Phrase", "%1: %2, %3, %4");
    case ReleasePhrase::FromTo:
        return QT_TRANSLATE_NOOP("Phrase", "%1 to %2");
    case ReleasePhrase::WithLimit:
        return QT_TRANSLATE_NOOP("Phrase", "%1 (limit %2)");
    case ReleasePhrase::PartOffAndOn:
        return QT_TRANSLATE_NOOP("Phrase", "%1; serial number off %2, on %3");
    case ReleasePhrase::LoosePartMl:
        return QT_TRANSLATE_NOOP("Phrase", "Record of work on items that are on no balloon (%1). It releases nothing: "
                                           "the statement of Part-ML is for an "
                                           "aircraft, and a component is released on an EASA Form 1, or at the "
                                           "aircraft when it is fitted (ML.A.502, ML.A.802).");
    case ReleasePhrase::LooseUs:
        return QT_TRANSLATE_NOOP(
            "Phrase", "Record of inspection of items that are on no balloon (%1). It returns nothing to service: the "
                      "statement of 14 CFR 43.11(a) is for an aircraft, and an annual or 100-hour inspection is signed "
                      "for the balloon.");
    }
    return "";
}

}
