// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The form of a reading outside an inspection: what was read, by the trade's words, and its figure.

#include "screen/form/form_plan.h"

namespace crownring::screen {

class FormFields;

class ReadingForm {
    Q_DECLARE_TR_FUNCTIONS(ReadingForm)

public:
    [[nodiscard]] static std::vector<FormField> fields(const FormSubject& subject, const FleetSheet& sheet);
    /// After `key` was changed: the quantities that are read of the item, the units of the quantity, the load that may
    /// be held.
    static void follow(std::string_view key, FormFields& fields, const FleetSheet& sheet);
    /// What is read is known and the figure is not: then the form begins with the figure.
    [[nodiscard]] static bool wantsFigure(const std::vector<FormField>& fields);
};

}
