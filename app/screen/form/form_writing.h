// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the fields of a form say, as the JSON of an entry.

#include "screen/form/form_fields.h"

namespace crownring::screen {

struct FormWriting {
    std::string kind;
    nlohmann::json given = nlohmann::json::object(); ///< keys that no field asks for
    nlohmann::json before{};                         ///< what a corrected entry says now; null for a new one

    /// The entry; problems are put beside the fields, and then there is none.
    [[nodiscard]] std::optional<nlohmann::json> gathered(FormFields& fields) const;
    /// What the fields change in the entry that is corrected; empty when nothing.
    [[nodiscard]] nlohmann::json changes(const FormFields& fields, const nlohmann::json& gathered) const;
};

/// What an entry says and no field asks for: the name of a defect, its inspection.
[[nodiscard]] nlohmann::json unasked(nlohmann::json entry, const std::vector<FormField>& fields);
/// "clock.minutes" as a JSON pointer.
[[nodiscard]] nlohmann::json::json_pointer pointerTo(std::string key);
[[nodiscard]] std::string topKey(const std::string& key);

}
