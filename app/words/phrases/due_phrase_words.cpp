// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/due/due_phrase.h"
#include "words/phrase_sources.h"

#include <QtGlobal>

namespace crownring::words {

const char* sourceOf(DuePhrase phrase) {
    switch (phrase) {
    case DuePhrase::Defect:
        return QT_TRANSLATE_NOOP("Phrase", "Defect: %1");
    case DuePhrase::FoundOn:
        return QT_TRANSLATE_NOOP("Phrase", "Found on %1");
    case DuePhrase::Deferred:
        return QT_TRANSLATE_NOOP("Phrase", "Deferred: %1");
    case DuePhrase::DefectNote:
        return QT_TRANSLATE_NOOP(
            "Phrase",
            "An open defect of the record. It goes when it is rectified on the bench (ML.A.403; 14 CFR 91.405).");
    case DuePhrase::DefectsFound:
        return QT_TRANSLATE_NOOP("Phrase", "Defects found");
    case DuePhrase::TheRecordItself:
        return QT_TRANSLATE_NOOP("Phrase", "The record itself");
    case DuePhrase::DefectsAreNoProgramme:
        return QT_TRANSLATE_NOOP("Phrase", "Open defects; they are no programme.");
    case DuePhrase::Fabric:
        return QT_TRANSLATE_NOOP("Phrase", "Fabric: %1");
    case DuePhrase::FabricSaid:
        return QT_TRANSLATE_NOOP("Phrase",
                                 "%1, on %2. Its defect is rectified in words: nothing tells of a repair, a new "
                                 "part or another reading there. Enter which it was.");
    case DuePhrase::FabricNote:
        return QT_TRANSLATE_NOOP(
            "Phrase", "%1, on %2. By readings only: a forecast retires no fabric, and takes the place of no test.");
    case DuePhrase::Reading:
        return QT_TRANSLATE_NOOP("Phrase", "Beyond its limit: %1");
    case DuePhrase::ReadingNote:
        return QT_TRANSLATE_NOOP("Phrase",
                                 "%1, on %2. It counts until it is read again, or a repair or a new part puts "
                                 "its defect right.");
    case DuePhrase::ReadingsOfFabric:
        return QT_TRANSLATE_NOOP("Phrase", "Readings against limits");
    case DuePhrase::ReadingsAreNoProgramme:
        return QT_TRANSLATE_NOOP("Phrase", "Readings against limits; no programme.");
    case DuePhrase::DirectivesIssued:
        return QT_TRANSLATE_NOOP("Phrase", "Directives and bulletins");
    case DuePhrase::DirectivesAreNoProgramme:
        return QT_TRANSLATE_NOOP("Phrase", "Directives and bulletins; they are no programme.");
    case DuePhrase::DirectiveEndedBy:
        return QT_TRANSLATE_NOOP("Phrase", "Ended by: %1");
    case DuePhrase::BoundAll:
        return QT_TRANSLATE_NOOP("Phrase", "it is all that the directive asks");
    case DuePhrase::BoundOtherKind:
        return QT_TRANSLATE_NOOP("Phrase", "another kind of item");
    case DuePhrase::BoundOtherType:
        return QT_TRANSLATE_NOOP("Phrase", "another type (%1)");
    case DuePhrase::BoundOtherSerial:
        return QT_TRANSLATE_NOOP("Phrase", "outside the serial numbers (%1)");
    case DuePhrase::BoundNothingFitted:
        return QT_TRANSLATE_NOOP("Phrase", "no such part is fitted (%1)");
    case DuePhrase::BoundTypeMissing:
        return QT_TRANSLATE_NOOP("Phrase", "its type is not in the record (%1)");
    case DuePhrase::BoundSerialMissing:
        return QT_TRANSLATE_NOOP("Phrase", "its serial number is not in the record (%1)");
    case DuePhrase::BoundSerialShape:
        return QT_TRANSLATE_NOOP("Phrase", "its serial number is written otherwise than the directive's (%1)");
    case DuePhrase::BoundPartsUnlisted:
        return QT_TRANSLATE_NOOP("Phrase", "not all that is fitted is in the record (%1)");
    case DuePhrase::BoundNearly:
        return QT_TRANSLATE_NOOP("Phrase", "its name or type is nearly, not quite, what the directive names (%1)");
    case DuePhrase::BoundEntriesDiffer:
        return QT_TRANSLATE_NOOP("Phrase", "it was entered more than once, and the entries contradict each other (%1)");
    case DuePhrase::BoundAnswered:
        return QT_TRANSLATE_NOOP("Phrase", "not applicable: %1 (%2, %3)");
    case DuePhrase::ListOfInspection:
        return QT_TRANSLATE_NOOP("Phrase", "Discrepancies of inspection %1");
    case DuePhrase::ListStands:
        return QT_TRANSLATE_NOOP("Phrase", "%1: of %2 on the list, %3");
    case DuePhrase::StillStand:
        return QT_TRANSLATE_N_NOOP("Phrase", "%n still stand");
    case DuePhrase::ListAnswered:
        return QT_TRANSLATE_NOOP("Phrase", "%1: all answered, the return to service is not approved");
    case DuePhrase::ListSignedOn:
        return QT_TRANSLATE_NOOP("Phrase", "Signed on %1");
    case DuePhrase::ListNote:
        return QT_TRANSLATE_NOOP(
            "Phrase",
            "The inspection was closed with a list of discrepancies. It grounds what was inspected until each "
            "item on it is rectified and a rated person approves the return to service (14 CFR 43.11(a)(5), "
            "(b); ML.A.403).");
    case DuePhrase::ListsSigned:
        return QT_TRANSLATE_NOOP("Phrase", "Lists of discrepancies");
    case DuePhrase::IncompleteIn:
        return QT_TRANSLATE_NOOP("Phrase", "Closing release of %1 (its maintenance is incomplete)");
    case DuePhrase::IncompleteSignedOn:
        return QT_TRANSLATE_NOOP("Phrase", "released after incomplete maintenance on %1");
    case DuePhrase::IncompleteNote:
        return QT_TRANSLATE_NOOP("Phrase", "Until the closing release it flies within the limitation of that release "
                                           "alone, a check flight for instance (ML.A.801(f), from memory).");
    case DuePhrase::IncompleteReleases:
        return QT_TRANSLATE_NOOP("Phrase", "Releases after incomplete maintenance");
    case DuePhrase::IncompleteAreNoProgramme:
        return QT_TRANSLATE_NOOP("Phrase", "Maintenance that was released incomplete; they are no programme.");
    case DuePhrase::DeferralBarred:
        return QT_TRANSLATE_NOOP("Phrase", "Deferred: %1; that does not hold here: %2");
    case DuePhrase::ClearedUnsigned:
        return QT_TRANSLATE_NOOP("Phrase", "Rectified: %1; that counts once a release of visit %2 stands");
    case DuePhrase::ClearingBarred:
        return QT_TRANSLATE_NOOP("Phrase", "Rectified: %1; that does not hold: %2");
    case DuePhrase::CheckFlightUntil:
        return QT_TRANSLATE_NOOP("Phrase", "the release of %1 lets it fly until %2");
    case DuePhrase::CheckFlightAloft:
        return QT_TRANSLATE_NOOP("Phrase", "the release of %1 lets it fly %2 in all; %3 were flown since, and this "
                                           "flight would go beyond");
    case DuePhrase::CheckFlightMoreLeft:
        return QT_TRANSLATE_NOOP("Phrase", "no check flight rests on the release of %1: besides the flight it leaves "
                                           "open %2");
    case DuePhrase::CheckFlightUnsupported:
        return QT_TRANSLATE_NOOP("Phrase", "no check flight rests on the release of %1: the record no longer supports "
                                           "it");
    case DuePhrase::CheckFlightOther:
        return QT_TRANSLATE_NOOP("Phrase", "no check flight rests on the release of %1: it is of another kit");
    case DuePhrase::WorkAbandoned:
        return QT_TRANSLATE_NOOP("Phrase",
                                 "was worked on in visit %1, which was abandoned: nobody has released that work");
    case DuePhrase::WorkUnreleased:
        return QT_TRANSLATE_NOOP("Phrase", "was worked on in visit %1, which is open: nobody has released that work");
    case DuePhrase::CheckFlightsFlown:
        return QT_TRANSLATE_NOOP("Phrase", "flights that the release of %1 allows: %2; flown since: %3");
    case DuePhrase::ListsAreNoProgramme:
        return QT_TRANSLATE_NOOP("Phrase", "Lists that were signed and not answered; they are no programme.");
    }
    return "";
}

}
