// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/directives/directive_fault.h"
#include "words/fault_sources.h"

#include <QtGlobal>

namespace crownring::words {

Sources sourcesOf(DirectiveFault fault) {
    switch (fault) {
    case DirectiveFault::NoDeadline:
        return {QT_TRANSLATE_NOOP("Problem", "a mandatory directive does not say by when it is to be complied with"),
                QT_TRANSLATE_NOOP("Problem", "state under 'first' before_flight, by, minutes, landings, inflations, "
                                             "days or months, as the directive does")};
    case DirectiveFault::OfItemOrBalloon:
        return {QT_TRANSLATE_NOOP("Problem", "a directive is answered for one item or for one balloon"),
                QT_TRANSLATE_NOOP("Problem", "write either 'item' or 'balloon'")};
    case DirectiveFault::SaidOfTheOther:
        return {QT_TRANSLATE_NOOP("Problem", "this key goes with the other answer"),
                QT_TRANSLATE_NOOP("Problem", "'method', 'clock', 'amoc' and 'terminating' go with done, 'why' with "
                                             "not-applicable")};
    case DirectiveFault::ClockOfBalloon:
        return {QT_TRANSLATE_NOOP("Problem", "a clock is of one item, and this answer is for a balloon"),
                QT_TRANSLATE_NOOP("Problem", "answer for the item, or leave 'clock' out: it is computed for each")};
    case DirectiveFault::PartsTooDeep:
        return {QT_TRANSLATE_NOOP("Problem", "parts are listed at most %1 deep"),
                QT_TRANSLATE_NOOP("Problem", "list the part under what it is in, without what lies between")};
    case DirectiveFault::PartTwice:
        return {QT_TRANSLATE_NOOP("Problem", "the part %1 with serial number %2 is listed twice"),
                QT_TRANSLATE_NOOP("Problem", "list it once, where it is")};
    case DirectiveFault::OtherIssuer:
        return {QT_TRANSLATE_NOOP("Problem", "%1 is a directive of %2 in this record"),
                QT_TRANSLATE_NOOP("Problem", "write the issuer in front of the number of one that another issued")};
    case DirectiveFault::IssuedTwice:
        return {QT_TRANSLATE_NOOP("Problem", "revision %2 of %1 is in the record already"),
                QT_TRANSLATE_NOOP("Problem", "correct that entry, or state the revision that is new")};
    case DirectiveFault::RangeReversed:
        return {QT_TRANSLATE_NOOP("Problem", "a range of serial numbers ends before it begins"),
                QT_TRANSLATE_NOOP("Problem", "write the lower one under 'from'")};
    case DirectiveFault::DueBeforeEffective:
        return {QT_TRANSLATE_NOOP("Problem", "it would be due on %1, before it is effective on %2"),
                QT_TRANSLATE_NOOP("Problem", "copy both days from the directive; one that binds at once is to be done "
                                             "before the next flight")};
    case DirectiveFault::NoSuchRevision:
        return {QT_TRANSLATE_NOOP("Problem", "the record has no revision %2 of %1"),
                QT_TRANSLATE_NOOP("Problem", "state the revision as its entry does, or enter that revision first")};
    case DirectiveFault::RecordSaysBound:
        return {QT_TRANSLATE_NOOP("Problem", "%1 binds %2 by its type, serial number and parts as recorded"),
                QT_TRANSLATE_NOOP("Problem", "correct what is recorded of the item, if that is wrong; an answer does "
                                             "not take it out")};
    case DirectiveFault::NoTerminatingAction:
        return {QT_TRANSLATE_NOOP("Problem", "%1 names no action that ends it"),
                QT_TRANSLATE_NOOP("Problem", "leave 'terminating' out, or state that action in its entry")};
    case DirectiveFault::ByNobody:
        return {QT_TRANSLATE_NOOP("Problem", "nobody is named who answers the directive"),
                QT_TRANSLATE_NOOP("Problem", "write who under 'by'")};
    case DirectiveFault::MayNotComply:
        return {QT_TRANSLATE_NOOP("Problem", "compliance is signed by who may not: %1"),
                QT_TRANSLATE_NOOP("Problem", "have it signed by who is authorised to, signing as that")};
    case DirectiveFault::NothingShows:
        return {QT_TRANSLATE_NOOP("Problem", "nothing shows that the directive was complied with"),
                QT_TRANSLATE_NOOP("Problem",
                                  "name the visit under 'inspection', or the 'capacity' in which 'by' signs, "
                                  "or 'licence' and 'ref' of the paper")};
    case DirectiveFault::NotOfTheVisit:
        return {QT_TRANSLATE_NOOP("Problem", "%1 is not in visit %2"),
                QT_TRANSLATE_NOOP("Problem", "name the visit in which it was done")};
    case DirectiveFault::NotByRequirement:
        return {QT_TRANSLATE_NOOP("Problem", "a directive is not answered as a requirement"),
                QT_TRANSLATE_NOOP("Problem", "write an entry directive.answered")};
    case DirectiveFault::BindsNothing:
        return {QT_TRANSLATE_NOOP("Problem", "%1 is of no kind of item that is on %2 on that day"),
                QT_TRANSLATE_NOOP("Problem", "answer for the item, or for the balloon that it was on")};
    case DirectiveFault::SupersedesInARing:
        return {QT_TRANSLATE_NOOP("Problem", "%1 would supersede %2, which supersedes it in turn"),
                QT_TRANSLATE_NOOP("Problem", "leave out of 'supersedes' whichever the directive does not name; a later "
                                             "revision takes the place of an earlier one by itself")};
    case DirectiveFault::SupersedesAnothers:
        return {QT_TRANSLATE_NOOP("Problem", "%1 was issued by %2, and nobody else supersedes it"),
                QT_TRANSLATE_NOOP("Problem", "leave it out of 'supersedes', or correct 'issuer', 'issued_by' or "
                                             "'state', where that is wrong")};
    case DirectiveFault::SupersedesMandatory:
        return {QT_TRANSLATE_NOOP("Problem", "%1 is mandatory, and what is recommended supersedes nothing mandatory"),
                QT_TRANSLATE_NOOP("Problem", "leave it out of 'supersedes'; only who made it mandatory cancels it")};
    case DirectiveFault::AnswerUnsaid:
        return {QT_TRANSLATE_NOOP("Problem", "who changes what was answered to %1, and why, is not said"),
                QT_TRANSLATE_NOOP("Problem", "say who decided it in 'by', and why in the note of the correction or the "
                                             "reason of the void")};
    case DirectiveFault::ExcusedBeforeIssue:
        return {QT_TRANSLATE_NOOP("Problem", "nobody could say that %1 is not applicable before it was issued, on %2"),
                QT_TRANSLATE_NOOP("Problem", "state the day on which that was found")};
    case DirectiveFault::NotHisLicence:
        return {QT_TRANSLATE_NOOP("Problem", "%1 is no licence that %2 holds on that day for what it is signed as"),
                QT_TRANSLATE_NOOP("Problem", "leave 'licence' out, or state the one that the record has")};
    case DirectiveFault::BeforeItWasMade:
        return {QT_TRANSLATE_NOOP("Problem", "%1 was made in %2, after the day of the answer"),
                QT_TRANSLATE_NOOP("Problem", "correct the day, or the date of manufacture, where that is wrong")};
    }
    return {};
}

}
