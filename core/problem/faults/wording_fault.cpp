// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/wording_fault.h"

namespace crownring {

FaultRow rowOf(WordingFault fault) {
    switch (fault) {
    case WordingFault::NoSuchText:
        return {"no-such-text", Code::BadValue};
    case WordingFault::NoSuchPlace:
        return {"no-such-place", Code::BadValue};
    case WordingFault::PlaceMissing:
        return {"place-missing", Code::BadValue};
    case WordingFault::OtherWording:
        return {"other-wording", Code::BadValue};
    case WordingFault::NotAdopted:
        return {"not-adopted", Code::NotReleasable};
    case WordingFault::AnotherDigest:
        return {"another-digest", Code::NotReleasable};
    case WordingFault::NoSuchChecklist:
        return {"no-such-checklist", Code::NotReleasable};
    case WordingFault::MayNotConfirm:
        return {"may-not-confirm", Code::NotReleasable};
    case WordingFault::AnotherLicence:
        return {"another-licence", Code::NotReleasable};
    case WordingFault::NotCorrected:
        return {"not-corrected", Code::CannotAmend};
    case WordingFault::TakenBackByNobody:
        return {"taken-back-by-nobody", Code::NotReleasable};
    case WordingFault::NoCapacity:
        return {"no-capacity", Code::BadValue};
    case WordingFault::Hidden:
        return {"hidden", Code::BadValue};
    }
    return {};
}

}
