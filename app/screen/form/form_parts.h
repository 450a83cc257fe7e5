// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The pieces that plans of forms are made of.

#include "screen/form/form_field.h"

namespace crownring::screen {

/// So many choices are chosen from with one tap.
inline constexpr std::size_t mostAtOneLook = 24;

[[nodiscard]] inline FormField plannedField(std::string key, const QString& label, FormField::Kind kind,
                                            bool required = false, const QString& hint = {}) {
    FormField made;
    made.key = std::move(key);
    made.label = label;
    made.hint = hint;
    made.kind = kind;
    made.required = required;
    return made;
}

[[nodiscard]] inline Choice plainChoice(const QString& value, const QString& label) {
    return {value, label, {}, -1, -1, false};
}

}
