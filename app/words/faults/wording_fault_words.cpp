// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/wording_fault.h"
#include "words/fault_sources.h"

#include <QtGlobal>

namespace crownring::words {

Sources sourcesOf(WordingFault fault) {
    switch (fault) {
    case WordingFault::NoSuchText:
        return {QT_TRANSLATE_NOOP("Problem", "there is no text '%1' that is signed"),
                QT_TRANSLATE_NOOP("Problem", "name one of: %2")};
    case WordingFault::NoSuchPlace:
        return {QT_TRANSLATE_NOOP("Problem", "the wording has a place {%1} that the record cannot fill in"),
                QT_TRANSLATE_NOOP("Problem", "use one of these in braces: %2")};
    case WordingFault::PlaceMissing:
        return {QT_TRANSLATE_NOOP("Problem", "the wording of '%1' lacks %2, which its rule wants stated"),
                QT_TRANSLATE_NOOP("Problem", "put it into the wording")};
    case WordingFault::OtherWording:
        return {QT_TRANSLATE_NOOP("Problem", "revision %2 of '%1' is the name of another wording"),
                QT_TRANSLATE_NOOP("Problem", "give yours a revision of its own")};
    case WordingFault::NotAdopted:
        return {
            QT_TRANSLATE_NOOP("Problem", "no organisation has adopted '%1' up to %2, so there is nothing to confirm"),
            QT_TRANSLATE_NOOP("Problem", "adopt it first, as it ships or in your manual's wording")};
    case WordingFault::AnotherDigest:
        return {QT_TRANSLATE_NOOP("Problem", "what is in use of '%1' is revision %2 with the digest %3"),
                QT_TRANSLATE_NOOP("Problem", "read that, and confirm it by its digest")};
    case WordingFault::NoSuchChecklist:
        return {QT_TRANSLATE_NOOP("Problem",
                                  "neither the program nor an inspection of the record has the checklist '%1', "
                                  "revision %2, with that digest"),
                QT_TRANSLATE_NOOP("Problem", "see 'text list' for those that there are")};
    case WordingFault::MayNotConfirm:
        return {QT_TRANSLATE_NOOP("Problem", "%1"),
                QT_TRANSLATE_NOOP("Problem", "have it confirmed by somebody who may sign what it is for")};
    case WordingFault::AnotherLicence:
        return {QT_TRANSLATE_NOOP("Problem", "by the record the licence is '%1'"),
                QT_TRANSLATE_NOOP("Problem", "write that, or leave it to the record")};
    case WordingFault::NotCorrected:
        return {
            QT_TRANSLATE_NOOP("Problem", "what was adopted or confirmed of '%1' is not corrected into something else"),
            QT_TRANSLATE_NOOP("Problem", "take it back with a reason, and write it anew")};
    case WordingFault::TakenBackByNobody:
        return {QT_TRANSLATE_NOOP("Problem", "a confirmation of '%1' is taken back by somebody who may confirm it"),
                QT_TRANSLATE_NOOP("Problem", "say who takes it back in 'by'")};
    case WordingFault::NoCapacity:
        return {QT_TRANSLATE_NOOP("Problem", "nobody confirms anything as '%1'"),
                QT_TRANSLATE_NOOP("Problem", "write under 'capacity' what the person is authorised to sign as, e.g. "
                                             "independent-certifying-staff")};
    case WordingFault::Hidden:
        return {QT_TRANSLATE_NOOP("Problem",
                                  "there is a character that nobody sees, %1, in line %2 at place %3: what is "
                                  "read is not what is signed"),
                QT_TRANSLATE_NOOP("Problem", "take it out and write that line anew")};
    }
    return {};
}

}
