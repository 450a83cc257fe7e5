// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/due/reckoned.h"

namespace crownring {

Reckoned reckonedAs(const Assessment& state) {
    if (!isRequired(state))
        return Reckoned::NotRequired;
    if (state.because == Because::Deferred && state.standing == Standing::Clear)
        return Reckoned::Deferred;
    return reckonedAs(state.standing);
}

std::string_view reckonedText(Reckoned reckoned) {
    switch (reckoned) {
    case Reckoned::Deferred:
        return "deferred";
    case Reckoned::NotRequired:
        return "not-required";
    default:
        return standingText(static_cast<Standing>(reckoned));
    }
}

}
