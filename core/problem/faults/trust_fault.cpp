// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/trust_fault.h"

namespace crownring {

FaultRow rowOf(TrustFault fault) {
    switch (fault) {
    case TrustFault::CodeTooShort:
        return {"code-too-short", Code::BadValue};
    case TrustFault::WrongCode:
        return {"wrong-code", Code::NotReleasable};
    case TrustFault::NoCodeYet:
        return {"no-code-yet", Code::NotReleasable};
    case TrustFault::CodeSetAlready:
        return {"code-set-already", Code::NotReleasable};
    case TrustFault::CodeBeforeTheOther:
        return {"code-before-the-other", Code::NotReleasable};
    case TrustFault::CodeIsFixed:
        return {"code-is-fixed", Code::CannotAmend};
    case TrustFault::SetterHasNoCode:
        return {"setter-has-no-code", Code::NotReleasable};
    case TrustFault::SetByAnotherUnsaid:
        return {"set-by-another-unsaid", Code::NotReleasable};
    case TrustFault::ProofMissing:
        return {"proof-missing", Code::NotReleasable};
    case TrustFault::ProofByAnotherKey:
        return {"proof-by-another-key", Code::NotReleasable};
    case TrustFault::ProofFails:
        return {"proof-fails", Code::NotReleasable};
    case TrustFault::ProofOfNothing:
        return {"proof-of-nothing", Code::NotReleasable};
    case TrustFault::ProofOfNoCode:
        return {"proof-of-no-code", Code::NotReleasable};
    case TrustFault::ProofWithoutSeal:
        return {"proof-without-seal", Code::NotReleasable};
    case TrustFault::NotAKey:
        return {"not-a-key", Code::BadValue};
    case TrustFault::LooksLikeAnother:
        return {"looks-like-another", Code::NotReleasable};
    }
    return {};
}

}
