// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/trust_fault.h"
#include "words/fault_sources.h"

#include <QtGlobal>

namespace crownring::words {

Sources sourcesOf(TrustFault fault) {
    switch (fault) {
    case TrustFault::CodeTooShort:
        return {QT_TRANSLATE_NOOP("Problem", "a code has at least %1 characters"),
                QT_TRANSLATE_NOOP("Problem", "choose a longer one: whoever has the record can try short ones")};
    case TrustFault::WrongCode:
        return {QT_TRANSLATE_NOOP("Problem", "this is not the code of %1"),
                QT_TRANSLATE_NOOP("Problem", "write it again; nothing is lost")};
    case TrustFault::NoCodeYet:
        return {QT_TRANSLATE_NOOP("Problem", "the record keeps no code of %1"),
                QT_TRANSLATE_NOOP("Problem", "set one first, or sign without")};
    case TrustFault::CodeSetAlready:
        return {QT_TRANSLATE_NOOP("Problem", "%1 has a code since %2"),
                QT_TRANSLATE_NOOP("Problem", "prove the new one by the code before it; if that is forgotten, somebody "
                                             "else who has a code sets it in his name and says why")};
    case TrustFault::CodeBeforeTheOther:
        return {QT_TRANSLATE_NOOP("Problem", "the code before this one is dated later, %1"),
                QT_TRANSLATE_NOOP("Problem", "write the day, and where that is the same the time, at which it is set")};
    case TrustFault::CodeIsFixed:
        return {QT_TRANSLATE_NOOP("Problem", "a code of %1 is neither corrected nor voided"),
                QT_TRANSLATE_NOOP("Problem", "set another: what was proven with this one stays proven")};
    case TrustFault::SetterHasNoCode:
        return {QT_TRANSLATE_NOOP("Problem", "%1 sets a code in the name of another and has none of his own"),
                QT_TRANSLATE_NOOP("Problem", "have somebody do it who has one")};
    case TrustFault::SetByAnotherUnsaid:
        return {QT_TRANSLATE_NOOP("Problem", "why another sets the code of %1 is not said"),
                QT_TRANSLATE_NOOP("Problem", "say it under 'reason'")};
    case TrustFault::ProofMissing:
        return {QT_TRANSLATE_NOOP("Problem", "%1 has a code since %2, and this is signed without it"),
                QT_TRANSLATE_NOOP("Problem", "sign it with the code; a paper that is older than the code is no "
                                             "exception, for its day is whatever somebody writes")};
    case TrustFault::ProofByAnotherKey:
        return {QT_TRANSLATE_NOOP("Problem", "the proof is by another key than that of %1"),
                QT_TRANSLATE_NOOP("Problem", "sign it again with the code that is in force")};
    case TrustFault::ProofFails:
        return {QT_TRANSLATE_NOOP("Problem", "the proof of %1 does not hold for what is written here"),
                QT_TRANSLATE_NOOP("Problem", "sign this very text again: a proof serves one entry, word for word")};
    case TrustFault::ProofOfNothing:
        return {QT_TRANSLATE_NOOP("Problem", "there is a proof where nobody signs"),
                QT_TRANSLATE_NOOP("Problem", "leave 'proof' out")};
    case TrustFault::ProofOfNoCode:
        return {QT_TRANSLATE_NOOP("Problem", "there is a proof and the record keeps no code of %1"),
                QT_TRANSLATE_NOOP("Problem", "set the code first, or leave 'proof' out")};
    case TrustFault::ProofWithoutSeal:
        return {QT_TRANSLATE_NOOP("Problem", "what is proven does not say what it covers"),
                QT_TRANSLATE_NOOP("Problem", "write 'seal' as the record composes it, and prove that")};
    case TrustFault::NotAKey:
        return {QT_TRANSLATE_NOOP("Problem", "this is no key that a code gives: anybody could sign by it"),
                QT_TRANSLATE_NOOP("Problem", "set the code by the program, or make the key as it does")};
    case TrustFault::LooksLikeAnother:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' cannot be told from '%2' by eye, and the record has that name"),
                QT_TRANSLATE_NOOP("Problem", "write the name as the record has it; of two persons of one name write "
                                             "one with something beside it, as an initial or a number")};
    }
    return {};
}

}
