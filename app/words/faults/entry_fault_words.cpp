// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/entry_fault.h"
#include "words/fault_sources.h"

#include <QtGlobal>

namespace crownring::words {

Sources sourcesOf(EntryFault fault) {
    switch (fault) {
    case EntryFault::NotJson:
        return {QT_TRANSLATE_NOOP("Problem", "this is not JSON"),
                QT_TRANSLATE_NOOP("Problem", "write one whole JSON object a line, in UTF-8")};
    case EntryFault::NestedTooDeep:
        return {QT_TRANSLATE_NOOP("Problem", "objects or lists stand in one another too deep"),
                QT_TRANSLATE_N_NOOP("Problem", "nest at most %n levels")};
    case EntryFault::KeyTwice:
        return {QT_TRANSLATE_NOOP("Problem", "the key '%1' stands twice in one object"),
                QT_TRANSLATE_NOOP("Problem", "write each key once")};
    case EntryFault::NotAnEntry:
        return {QT_TRANSLATE_NOOP("Problem", "an entry is one JSON object"),
                QT_TRANSLATE_NOOP("Problem", "write { \"entry\": …, \"on\": …, … } on one line")};
    case EntryFault::UnknownKind:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is no kind of entry"),
                QT_TRANSLATE_NOOP("Problem", "see crownringctl post --help for the kinds")};
    case EntryFault::UnknownKey:
        return {QT_TRANSLATE_NOOP("Problem", "not a key of %1"),
                QT_TRANSLATE_NOOP("Problem", "leave it out or mend its spelling")};
    case EntryFault::KeyMissing:
        return {QT_TRANSLATE_NOOP("Problem", "this key is missing"), QT_TRANSLATE_NOOP("Problem", "add it")};
    case EntryFault::NotAText:
        return {QT_TRANSLATE_NOOP("Problem", "not a text"), QT_TRANSLATE_NOOP("Problem", "write it in quotes")};
    case EntryFault::NullCharacter:
        return {QT_TRANSLATE_NOOP("Problem", "a text with a null character"),
                QT_TRANSLATE_NOOP("Problem", "leave the character U+0000 out")};
    case EntryFault::Blank:
        return {QT_TRANSLATE_NOOP("Problem", "this must not be blank"),
                QT_TRANSLATE_NOOP("Problem", "write what it is")};
    case EntryFault::TooLong:
        return {QT_TRANSLATE_NOOP("Problem", "too long"), QT_TRANSLATE_N_NOOP("Problem", "at most %n characters")};
    case EntryFault::NotABoolean:
        return {QT_TRANSLATE_NOOP("Problem", "neither true nor false"),
                QT_TRANSLATE_NOOP("Problem", "write true or false without quotes")};
    case EntryFault::NotANumber:
        return {QT_TRANSLATE_NOOP("Problem", "not a number that this can be"),
                QT_TRANSLATE_NOOP("Problem", "write a number, without quotes")};
    case EntryFault::NotAWholeNumber:
        return {QT_TRANSLATE_NOOP("Problem", "not a whole number from %1 to %2"),
                QT_TRANSLATE_NOOP("Problem", "write a whole number, without quotes")};
    case EntryFault::NotAnObject:
        return {QT_TRANSLATE_NOOP("Problem", "not a JSON object"), QT_TRANSLATE_NOOP("Problem", "write { … }")};
    case EntryFault::NotAListOfObjects:
        return {QT_TRANSLATE_NOOP("Problem", "not a list of objects"),
                QT_TRANSLATE_NOOP("Problem", "write [ { … }, … ], or leave the key out")};
    case EntryFault::NotAList:
        return {QT_TRANSLATE_NOOP("Problem", "not a list"), QT_TRANSLATE_NOOP("Problem", "write [ … ]")};
    case EntryFault::EmptyList:
        return {QT_TRANSLATE_NOOP("Problem", "an empty list"),
                QT_TRANSLATE_NOOP("Problem", "name at least one, or leave the key out")};
    case EntryFault::NamedTwice:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is named twice"),
                QT_TRANSLATE_NOOP("Problem", "name each one once")};
    case EntryFault::NotAName:
        return {QT_TRANSLATE_NOOP("Problem", "not a usable name"),
                QT_TRANSLATE_N_NOOP("Problem", "1 to %n characters without control characters")};
    case EntryFault::NotLegible:
        return {QT_TRANSLATE_NOOP("Problem", "by eye the name '%1' cannot be told from another"),
                QT_TRANSLATE_NOOP("Problem", "name it without spaces at the ends and without anything that is not "
                                             "seen, or that turns the direction of reading")};
    case EntryFault::NearlyATypeKnown:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is nearly '%2', a type that is known"),
                QT_TRANSLATE_NOOP("Problem", "write it as that, or confirm that it is another type")};
    case EntryFault::NearlyAnEventKnown:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is nearly '%2', an event that is known; nothing waits for this one"),
                QT_TRANSLATE_NOOP("Problem", "write it as '%2'")};
    case EntryFault::NotASlug:
        return {QT_TRANSLATE_NOOP("Problem", "not one word of lower case letters, digits and hyphens"),
                QT_TRANSLATE_NOOP("Problem", "write it as hard-landing is written")};
    case EntryFault::NoWordForThis:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is not a word for this"), QT_TRANSLATE_NOOP("Problem", "one of %2")};
    case EntryFault::NoKindOfItem:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is no kind of item"), QT_TRANSLATE_NOOP("Problem", "one of %2")};
    case EntryFault::ClockWithoutFigure:
        return {QT_TRANSLATE_NOOP("Problem", "a clock without a figure"),
                QT_TRANSLATE_NOOP("Problem", "state one, or leave the key out")};
    case EntryFault::OnlyTrue:
        return {QT_TRANSLATE_NOOP("Problem", "only true says something here"),
                QT_TRANSLATE_NOOP("Problem", "leave the key out")};
    case EntryFault::BoundNotOnce:
        return {
            QT_TRANSLATE_NOOP("Problem", "whom the programme binds is not said exactly once"),
            QT_TRANSLATE_NOOP("Problem", "give one of balloons [registration, …], items [id, …] or everything true")};
    case EntryFault::NoDigestOfADocument:
        return {QT_TRANSLATE_NOOP("Problem", "not a digest"),
                QT_TRANSLATE_NOOP("Problem", "leave it out, it is computed from the document")};
    case EntryFault::NotHexDigits:
        return {QT_TRANSLATE_NOOP("Problem", "this is not %1 hexadecimal digits"),
                QT_TRANSLATE_NOOP("Problem", "write 0 to 9 and a to f, as the program does")};
    case EntryFault::NotADigest:
        return {QT_TRANSLATE_NOOP("Problem", "not a SHA-256 digest"),
                QT_TRANSLATE_NOOP("Problem", "64 hexadecimal digits in lower case")};
    case EntryFault::EventOfNothing:
        return {QT_TRANSLATE_NOOP("Problem", "an event concerns either a balloon or an item"),
                QT_TRANSLATE_NOOP("Problem", "give one of balloon and item")};
    case EntryFault::EventOfAnItem:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' happens to an item (%2), and not to a balloon as a whole"),
                QT_TRANSLATE_NOOP("Problem", "name the item that it happened to")};
    case EntryFault::NotTheEvent:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' tells of no event of this balloon or item"),
                QT_TRANSLATE_NOOP("Problem", "name the entry with which the event was reported")};
    case EntryFault::ChangesNothing:
        return {QT_TRANSLATE_NOOP("Problem", "a correction that changes nothing"),
                QT_TRANSLATE_NOOP("Problem", "name the keys to change")};
    case EntryFault::NotACorrection:
        return {QT_TRANSLATE_NOOP("Problem", "a correction is a JSON object"),
                QT_TRANSLATE_NOOP("Problem", "name the keys to change")};
    case EntryFault::KeyIsFixed:
        return {QT_TRANSLATE_NOOP("Problem", "this key of an entry cannot change"),
                QT_TRANSLATE_NOOP("Problem", "void the entry and write a new one")};
    case EntryFault::NotATimeWithoutZone:
        return {QT_TRANSLATE_NOOP("Problem", "not a time of day without a zone"),
                QT_TRANSLATE_NOOP("Problem", "write it as the log has it, HH:MM")};
    case EntryFault::NoDirection:
        return {QT_TRANSLATE_NOOP("Problem", "no direction of a fabric"),
                QT_TRANSLATE_NOOP("Problem", "one of warp, weft")};
    case EntryFault::NeitherReadNorHeld:
        return {QT_TRANSLATE_NOOP("Problem", "a reading has either a value or a load that was held"),
                QT_TRANSLATE_NOOP("Problem", "give one of value and held_at")};
    case EntryFault::OnTwoItems:
        return {QT_TRANSLATE_NOOP("Problem", "it is a place on a basket, and one on an envelope is stated too"),
                QT_TRANSLATE_NOOP("Problem", "state the one that was looked at")};
    case EntryFault::StepNotAbove:
        return {QT_TRANSLATE_NOOP("Problem", "not above the value that it goes with"),
                QT_TRANSLATE_NOOP("Problem", "a stepped indicator shows at least value and below the next step")};
    case EntryFault::DeferredWithoutEnd:
        return {QT_TRANSLATE_NOOP("Problem", "neither until nor until_minutes"),
                QT_TRANSLATE_NOOP("Problem", "a deferral ends: give a date, a figure of the item's clock, or both")};
    case EntryFault::LimitWithoutBound:
        return {QT_TRANSLATE_NOOP("Problem", "neither least nor most"),
                QT_TRANSLATE_NOOP("Problem", "a limit bounds a reading: give the least, the most, or a proof load")};
    case EntryFault::LeastAboveMost:
        return {QT_TRANSLATE_NOOP("Problem", "more than the most"), QT_TRANSLATE_NOOP("Problem", "exchange the two")};
    case EntryFault::FirstAfterLast:
        return {QT_TRANSLATE_NOOP("Problem", "after the last"), QT_TRANSLATE_NOOP("Problem", "exchange the two")};
    case EntryFault::SealOverNothing:
        return {QT_TRANSLATE_NOOP("Problem", "a seal over nothing"),
                QT_TRANSLATE_NOOP("Problem", "name what the signature covers")};
    case EntryFault::NothingInspected:
        return {QT_TRANSLATE_NOOP("Problem", "what is inspected is not said"),
                QT_TRANSLATE_NOOP("Problem", "name at least one item")};
    case EntryFault::NobodySigns:
        return {QT_TRANSLATE_NOOP("Problem", "who signs is not said"),
                QT_TRANSLATE_NOOP("Problem", "name the person who signs")};
    case EntryFault::WhyOfWhatApplies:
        return {QT_TRANSLATE_NOOP("Problem", "it says why the line does not apply, and that it does"),
                QT_TRANSLATE_NOOP("Problem", "leave 'why' out, or settle the line as not-applicable")};
    case EntryFault::PageOfNotAsked:
        return {QT_TRANSLATE_NOOP("Problem", "the page of the manual belongs to a line that it does not ask for"),
                QT_TRANSLATE_NOOP("Problem", "with why not-asked name the manual and its page, else leave it out")};
    case EntryFault::OtherInWords:
        return {QT_TRANSLATE_NOOP("Problem", "why the line does not apply is not said"),
                QT_TRANSLATE_NOOP("Problem", "say it in the finding, in words")};
    case EntryFault::MajorWithoutApproval:
        return {QT_TRANSLATE_NOOP("Problem", "a major repair or alteration names the form or approval that it has"),
                QT_TRANSLATE_NOOP("Problem", "give its reference in 'approval', or another grade")};
    case EntryFault::NothingOutstanding:
        return {QT_TRANSLATE_NOOP("Problem", "nothing is outstanding: that is a release, and no incomplete one"),
                QT_TRANSLATE_NOOP("Problem", "name each line that was not done in 'outstanding', or close the visit")};
    case EntryFault::RecommendedUntil:
        return {QT_TRANSLATE_NOOP("Problem", "a recommendation is no certificate: it does not expire"),
                QT_TRANSLATE_NOOP("Problem", "leave 'expires' out, or say which act it was")};
    case EntryFault::ExpiresOnNoPaper:
        return {QT_TRANSLATE_NOOP("Problem", "an expiry is printed on a certificate, and none is named"),
                QT_TRANSLATE_NOOP("Problem", "give its number in 'ref', with 'signatory' and 'licence'")};
    case EntryFault::BuyerWithoutSale:
        return {QT_TRANSLATE_NOOP("Problem", "to whom it went, but it is not sold"),
                QT_TRANSLATE_NOOP("Problem", "leave the key out, or write \"state\": \"sold\"")};
    case EntryFault::TextOrChecklist:
        return {QT_TRANSLATE_NOOP("Problem", "it is of one text or of one checklist"),
                QT_TRANSLATE_NOOP("Problem", "name one of them, in 'text' or in 'checklist'")};
    case EntryFault::SameRegistration:
        return {QT_TRANSLATE_NOOP("Problem", "the registration that it has already"),
                QT_TRANSLATE_NOOP("Problem", "name the new registration")};
    case EntryFault::OnBalloonOrItem:
        return {QT_TRANSLATE_NOOP("Problem", "it is not said on what: one balloon, or one item that it is a part of"),
                QT_TRANSLATE_NOOP("Problem", "name one of them, and not both")};
    case EntryFault::ReleasedIntoNoService:
        return {QT_TRANSLATE_NOOP("Problem", "a release stands beside a state that nothing is released into"),
                QT_TRANSLATE_NOOP("Problem", "leave it out, or say in-service")};
    case EntryFault::PlannedForNothing:
        return {QT_TRANSLATE_NOOP("Problem", "use is planned either for a balloon or for an item"),
                QT_TRANSLATE_NOOP("Problem", "give one of balloon and item")};
    case EntryFault::PaceNotOnce:
        return {QT_TRANSLATE_NOOP("Problem", "how much will be flown is not said exactly once"),
                QT_TRANSLATE_NOOP("Problem", "give one of times (of the usual pace, 0 for none) and flights_a_week")};
    case EntryFault::NotUtf8:
        return {QT_TRANSLATE_NOOP("Problem", "a text of this entry is not UTF-8"),
                QT_TRANSLATE_NOOP("Problem", "write it again, in UTF-8")};
    case EntryFault::NotReadAgain:
        return {QT_TRANSLATE_NOOP("Problem", "this entry would not be read again as it is"),
                QT_TRANSLATE_NOOP("Problem", "write it as JSON and post that")};
    }
    return {};
}

}
