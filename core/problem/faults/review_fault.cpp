// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/review_fault.h"

namespace crownring {

FaultRow rowOf(ReviewFault fault) {
    switch (fault) {
    case ReviewFault::NotItsEnvelope:
        return {"not-its-envelope", Code::NotReleasable};
    case ReviewFault::NoProgramme:
        return {"no-programme", Code::NotReleasable};
    case ReviewFault::MayNotReview:
        return {"may-not-review", Code::NotReleasable};
    case ReviewFault::PrintedDiffers:
        return {"printed-differs", Code::NotReleasable};
    case ReviewFault::NothingToExtend:
        return {"nothing-to-extend", Code::NotReleasable};
    case ReviewFault::ExpiredBefore:
        return {"expired-before", Code::NotReleasable};
    case ReviewFault::ExtendedTooOften:
        return {"extended-too-often", Code::NotReleasable};
    case ReviewFault::LineNotDone:
        return {"line-not-done", Code::NotReleasable};
    case ReviewFault::NoLineForReview:
        return {"no-line-for-review", Code::NotReleasable};
    case ReviewFault::StandsAgainst:
        return {"stands-against", Code::NotReleasable};
    case ReviewFault::AuthorisationDiffers:
        return {"authorisation-differs", Code::NotReleasable};
    case ReviewFault::StatedByNobody:
        return {"stated-by-nobody", Code::NotReleasable};
    case ReviewFault::ExpiresOfNoCertificate:
        return {"expires-of-no-certificate", Code::BadValue};
    case ReviewFault::ExpiresTooLate:
        return {"expires-too-late", Code::NotReleasable};
    case ReviewFault::CertificateIsFixed:
        return {"certificate-is-fixed", Code::CannotAmend};
    case ReviewFault::VoidUnsaid:
        return {"void-unsaid", Code::CannotAmend};
    case ReviewFault::NoReview:
        return {"no-review", Code::UnknownReference};
    }
    return {};
}

}
