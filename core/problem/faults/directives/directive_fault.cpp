// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/directives/directive_fault.h"

namespace crownring {

FaultRow rowOf(DirectiveFault fault) {
    switch (fault) {
    case DirectiveFault::NoDeadline:
        return {"no-deadline", Code::BadValue};
    case DirectiveFault::OfItemOrBalloon:
        return {"of-item-or-balloon", Code::BadValue};
    case DirectiveFault::SaidOfTheOther:
        return {"said-of-the-other", Code::BadValue};
    case DirectiveFault::ClockOfBalloon:
        return {"clock-of-balloon", Code::BadValue};
    case DirectiveFault::PartsTooDeep:
        return {"parts-too-deep", Code::BadValue};
    case DirectiveFault::PartTwice:
        return {"part-twice", Code::BadValue};
    case DirectiveFault::OtherIssuer:
        return {"other-issuer", Code::BadValue};
    case DirectiveFault::IssuedTwice:
        return {"issued-twice", Code::BadValue};
    case DirectiveFault::RangeReversed:
        return {"range-reversed", Code::BadValue};
    case DirectiveFault::DueBeforeEffective:
        return {"due-before-effective", Code::BadValue};
    case DirectiveFault::NoSuchRevision:
        return {"no-such-revision", Code::UnknownReference};
    case DirectiveFault::RecordSaysBound:
        return {"record-says-bound", Code::NotReleasable};
    case DirectiveFault::NoTerminatingAction:
        return {"no-terminating-action", Code::BadValue};
    case DirectiveFault::ByNobody:
        return {"by-nobody", Code::MissingKey};
    case DirectiveFault::MayNotComply:
        return {"may-not-comply", Code::NotReleasable};
    case DirectiveFault::NothingShows:
        return {"nothing-shows", Code::NotReleasable};
    case DirectiveFault::NotOfTheVisit:
        return {"not-of-the-visit", Code::BadValue};
    case DirectiveFault::NotByRequirement:
        return {"not-by-requirement", Code::BadValue};
    case DirectiveFault::BindsNothing:
        return {"binds-nothing", Code::BadValue};
    case DirectiveFault::SupersedesInARing:
        return {"supersedes-in-a-ring", Code::BadValue};
    case DirectiveFault::SupersedesAnothers:
        return {"supersedes-anothers", Code::BadValue};
    case DirectiveFault::SupersedesMandatory:
        return {"supersedes-mandatory", Code::BadValue};
    case DirectiveFault::AnswerUnsaid:
        return {"answer-unsaid", Code::NotReleasable};
    case DirectiveFault::ExcusedBeforeIssue:
        return {"excused-before-issue", Code::BadValue};
    case DirectiveFault::NotHisLicence:
        return {"not-his-licence", Code::NotReleasable};
    case DirectiveFault::BeforeItWasMade:
        return {"before-it-was-made", Code::BadValue};
    }
    return {};
}

}
