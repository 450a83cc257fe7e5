// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Which fields the entries of the bench ask for, and those that a release rests on.

#include "screen/form/form_plan.h"

namespace crownring::screen {

class BenchFormPlan {
    Q_DECLARE_TR_FUNCTIONS(BenchFormPlan)

public:
    /// Empty for a kind that has no form here.
    [[nodiscard]] static std::vector<FormField> fields(std::string_view kind, const FormSubject& subject,
                                                       const FleetSheet& sheet);
    [[nodiscard]] static bool known(std::string_view kind);
    [[nodiscard]] static QString title(std::string_view kind);
};

}
