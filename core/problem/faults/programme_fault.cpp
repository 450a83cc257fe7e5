// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/programme_fault.h"

namespace crownring {

FaultRow rowOf(ProgrammeFault fault) {
    switch (fault) {
    case ProgrammeFault::TooDeep:
        return {"too-deep", Code::BadJson};
    case ProgrammeFault::NotAnObject:
        return {"not-an-object", Code::BadJson};
    case ProgrammeFault::KeyTwice:
        return {"key-twice", Code::BadJson};
    case ProgrammeFault::ValueNotAllowed:
        return {"value-not-allowed", Code::BadProgramme};
    case ProgrammeFault::KeyMissing:
        return {"key-missing", Code::BadProgramme};
    case ProgrammeFault::KeyNotAllowed:
        return {"key-not-allowed", Code::BadProgramme};
    case ProgrammeFault::NotOfThisKind:
        return {"not-of-this-kind", Code::BadProgramme};
    case ProgrammeFault::CannotBeChecked:
        return {"cannot-be-checked", Code::BadProgramme};
    case ProgrammeFault::MethodWithoutMonths:
        return {"method-without-months", Code::BadProgramme};
    case ProgrammeFault::KeptWithoutWindow:
        return {"kept-without-window", Code::BadProgramme};
    case ProgrammeFault::WithItself:
        return {"with-itself", Code::BadProgramme};
    case ProgrammeFault::WithAndLast:
        return {"with-and-last", Code::BadProgramme};
    case ProgrammeFault::NeverDue:
        return {"never-due", Code::BadProgramme};
    case ProgrammeFault::EmptyRange:
        return {"empty-range", Code::BadProgramme};
    case ProgrammeFault::RequirementTwice:
        return {"requirement-twice", Code::BadProgramme};
    case ProgrammeFault::Unknown:
        return {"unknown", Code::UnknownProgramme};
    case ProgrammeFault::NoText:
        return {"no-text", Code::UnknownProgramme};
    case ProgrammeFault::AnotherProgramme:
        return {"another-programme", Code::BadValue};
    case ProgrammeFault::AnotherDigest:
        return {"another-digest", Code::BadValue};
    case ProgrammeFault::EveryBalloon:
        return {"every-balloon", Code::BadValue};
    case ProgrammeFault::TwoRegimes:
        return {"two-regimes", Code::BadValue};
    case ProgrammeFault::DigestNotAmended:
        return {"digest-not-amended", Code::BadValue};
    }
    return {};
}

}
