// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// One field of a form: what is asked, how it is typed, what was understood, what is wrong with it, what is asked back.

#include "civil/civil_date.h"
#include "exchange/text/written_date.h"
#include "problem/problem.h"
#include "screen/lists/choice_model.h"

#include <nlohmann/json.hpp>

namespace crownring::screen {

struct FormField {
    enum class Kind {
        Text,
        Date,     ///< in the order of the user's language, or YYYY-MM-DD
        Made,     ///< such a date, or a month YYYY-MM
        Time,     ///< HH:MM, UTC
        Duration, ///< in hours: "2", "1.5", "1:35", "1h35", "95 min"
        Count,    ///< a whole number
        Decimal,
        Choice,      ///< one of `choices`
        Several,     ///< some of `choices`
        Check,       ///< "true" or empty
        Lines,       ///< text of several lines
        OneOf,       ///< one of a few choices, each a tap away
        Kit,         ///< what flew; drawn and kept by the form's kit
        Photographs, ///< those chosen by digest, as of `Several`; the detail of a choice is its picture
        Secret,      ///< a text that nobody is shown
    };

    std::string key; ///< of the entry; "clock.minutes" reaches into an object. With a "-" in front it is not written
    QString label;
    QString hint;
    Kind kind = Kind::Text;
    QString value;               ///< of `Several`: the values, each on its line
    std::vector<Choice> choices; ///< of `Text`: what was written there before, a tap away
    bool required = false;
    bool unknownAllowed = false;  ///< left empty, nobody knows: null in the entry, never zero
    bool onlyWhenTouched = false; ///< left out of the entry while it is as it was proposed
    bool touched = false;
    bool shown = true;
    std::optional<CivilDate> notAfter; ///< of days: what has not happened yet is not written
    std::int64_t likely = 0;           ///< of durations, counts and figures: more is asked back; 0: whatever it is
    QString problem;
    QString wayTo;    ///< what the problem speaks of, when it can be gone to: "balloon QE-OVA", "item ENV-1001"
    QString question; ///< asked back, besides what the value itself raises
    QString answered; ///< the question that was answered with "it is so"

    [[nodiscard]] bool sameAs(const FormField& other) const { return key == other.key; }
    bool operator==(const FormField&) const = default;
    [[nodiscard]] bool isWritten() const { return !key.starts_with('-'); }
    /// The value as the entry has it; nothing when the field is empty.
    [[nodiscard]] Result<std::optional<nlohmann::json>> json() const;
    /// The day that is written in it.
    [[nodiscard]] std::optional<CivilDate> day() const;
    /// What the program makes of the text, in full: "1 hour 30 minutes".
    [[nodiscard]] QString understood() const;
    void take(const nlohmann::json& value);
};

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

/// In what order the user's language writes a date.
[[nodiscard]] DateOrder dateOrderHere();

}
