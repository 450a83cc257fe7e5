// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/entry_fault.h"

namespace crownring {

FaultRow rowOf(EntryFault fault) {
    switch (fault) {
    case EntryFault::NotJson:
        return {"not-json", Code::BadJson};
    case EntryFault::NestedTooDeep:
        return {"nested-too-deep", Code::BadJson};
    case EntryFault::KeyTwice:
        return {"key-twice", Code::BadJson};
    case EntryFault::NotAnEntry:
        return {"not-an-entry", Code::BadJson};
    case EntryFault::UnknownKind:
        return {"unknown-kind", Code::UnknownKind};
    case EntryFault::UnknownKey:
        return {"unknown-key", Code::UnknownKey};
    case EntryFault::KeyMissing:
        return {"key-missing", Code::MissingKey};
    case EntryFault::NotAText:
        return {"not-a-text", Code::BadValue};
    case EntryFault::NullCharacter:
        return {"null-character", Code::BadValue};
    case EntryFault::Blank:
        return {"blank", Code::BadValue};
    case EntryFault::TooLong:
        return {"too-long", Code::BadValue};
    case EntryFault::NotABoolean:
        return {"not-a-boolean", Code::BadValue};
    case EntryFault::NotANumber:
        return {"not-a-number", Code::BadQuantity};
    case EntryFault::NotAWholeNumber:
        return {"not-a-whole-number", Code::BadQuantity};
    case EntryFault::NotAnObject:
        return {"not-an-object", Code::BadValue};
    case EntryFault::NotAListOfObjects:
        return {"not-a-list-of-objects", Code::BadValue};
    case EntryFault::NotAList:
        return {"not-a-list", Code::BadValue};
    case EntryFault::EmptyList:
        return {"empty-list", Code::BadValue};
    case EntryFault::NamedTwice:
        return {"named-twice", Code::BadValue};
    case EntryFault::NotAName:
        return {"not-a-name", Code::BadValue};
    case EntryFault::NotLegible:
        return {"not-legible", Code::BadValue};
    case EntryFault::NearlyATypeKnown:
        return {"nearly-a-type-known", Code::BadValue};
    case EntryFault::NearlyAnEventKnown:
        return {"nearly-an-event-known", Code::BadValue};
    case EntryFault::NotASlug:
        return {"not-a-slug", Code::BadValue};
    case EntryFault::NoWordForThis:
        return {"no-word-for-this", Code::BadValue};
    case EntryFault::NoKindOfItem:
        return {"no-kind-of-item", Code::BadValue};
    case EntryFault::ClockWithoutFigure:
        return {"clock-without-figure", Code::BadValue};
    case EntryFault::OnlyTrue:
        return {"only-true", Code::BadValue};
    case EntryFault::BoundNotOnce:
        return {"bound-not-once", Code::MissingKey};
    case EntryFault::NoDigestOfADocument:
        return {"no-digest-of-a-document", Code::BadValue};
    case EntryFault::NotHexDigits:
        return {"not-hex-digits", Code::BadValue};
    case EntryFault::NotADigest:
        return {"not-a-digest", Code::BadValue};
    case EntryFault::EventOfNothing:
        return {"event-of-nothing", Code::MissingKey};
    case EntryFault::EventOfAnItem:
        return {"event-of-an-item", Code::BadValue};
    case EntryFault::NotTheEvent:
        return {"not-the-event", Code::UnknownReference};
    case EntryFault::ChangesNothing:
        return {"changes-nothing", Code::BadValue};
    case EntryFault::NotACorrection:
        return {"not-a-correction", Code::BadValue};
    case EntryFault::KeyIsFixed:
        return {"key-is-fixed", Code::CannotAmend};
    case EntryFault::NotATimeWithoutZone:
        return {"not-a-time-without-zone", Code::BadDate};
    case EntryFault::NoDirection:
        return {"no-direction", Code::BadValue};
    case EntryFault::NeitherReadNorHeld:
        return {"neither-read-nor-held", Code::MissingKey};
    case EntryFault::OnTwoItems:
        return {"on-two-items", Code::BadValue};
    case EntryFault::StepNotAbove:
        return {"step-not-above", Code::BadValue};
    case EntryFault::DeferredWithoutEnd:
        return {"deferred-without-end", Code::MissingKey};
    case EntryFault::LimitWithoutBound:
        return {"limit-without-bound", Code::MissingKey};
    case EntryFault::LeastAboveMost:
        return {"least-above-most", Code::BadValue};
    case EntryFault::FirstAfterLast:
        return {"first-after-last", Code::BadValue};
    case EntryFault::SealOverNothing:
        return {"seal-over-nothing", Code::MissingKey};
    case EntryFault::NothingInspected:
        return {"nothing-inspected", Code::MissingKey};
    case EntryFault::NobodySigns:
        return {"nobody-signs", Code::MissingKey};
    case EntryFault::WhyOfWhatApplies:
        return {"why-of-what-applies", Code::BadValue};
    case EntryFault::PageOfNotAsked:
        return {"page-of-not-asked", Code::BadValue};
    case EntryFault::OtherInWords:
        return {"other-in-words", Code::BadValue};
    case EntryFault::MajorWithoutApproval:
        return {"major-without-approval", Code::MissingKey};
    case EntryFault::NothingOutstanding:
        return {"nothing-outstanding", Code::MissingKey};
    case EntryFault::RecommendedUntil:
        return {"recommended-until", Code::BadValue};
    case EntryFault::ExpiresOnNoPaper:
        return {"expires-on-no-paper", Code::MissingKey};
    case EntryFault::BuyerWithoutSale:
        return {"buyer-without-sale", Code::BadValue};
    case EntryFault::TextOrChecklist:
        return {"text-or-checklist", Code::BadValue};
    case EntryFault::SameRegistration:
        return {"same-registration", Code::BadValue};
    case EntryFault::OnBalloonOrItem:
        return {"on-balloon-or-item", Code::MissingKey};
    case EntryFault::ReleasedIntoNoService:
        return {"released-into-no-service", Code::BadValue};
    case EntryFault::PlannedForNothing:
        return {"planned-for-nothing", Code::MissingKey};
    case EntryFault::PaceNotOnce:
        return {"pace-not-once", Code::MissingKey};
    case EntryFault::NotUtf8:
        return {"not-utf8", Code::BadValue};
    case EntryFault::NotReadAgain:
        return {"not-read-again", Code::BadValue};
    }
    return {};
}

}
