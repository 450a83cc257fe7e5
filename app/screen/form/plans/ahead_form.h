// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The forms of what is planned: a flight, a visit, how something will be flown.

#include "screen/form/form_plan.h"

namespace crownring::screen {

class FormFields;

class AheadForm {
    Q_DECLARE_TR_FUNCTIONS(AheadForm)

public:
    [[nodiscard]] static bool known(std::string_view kind);
    [[nodiscard]] static std::vector<FormField> fields(std::string_view kind, const FormSubject& subject,
                                                       const FleetSheet& sheet);
    [[nodiscard]] static QString title(std::string_view kind);
    [[nodiscard]] static QString verb(std::string_view kind);
    /// A flight is planned for the coming Saturday until somebody says otherwise, and for any day to come.
    static void propose(std::string_view kind, std::vector<FormField>& fields, CivilDate day);
    /// What a visit of that balloon may cover, what comes first before all; a value names item and requirement.
    [[nodiscard]] static std::vector<Choice> works(const FleetSheet& sheet, const std::string& balloon);
    /// As the entry has it.
    [[nodiscard]] static nlohmann::json entry(std::string_view kind, nlohmann::json gathered);
    /// What stands under a key of an entry, as its field asks for it.
    [[nodiscard]] static nlohmann::json asAsked(const std::string& key, const nlohmann::json& value);
};

}
