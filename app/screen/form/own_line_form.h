// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The form of an organisation's own line: its fields, and how they become the document of the entry.

#include "screen/form/form_field.h"

#include <QCoreApplication>

namespace crownring::screen {

class OwnLineForm {
    Q_DECLARE_TR_FUNCTIONS(OwnLineForm)

public:
    [[nodiscard]] static std::vector<FormField> fields();
    /// @param gathered what the fields say, with `on`
    /// @param before the entry that is corrected, else null; what the form does not ask for stays as it is there
    /// @return the entry, its document whole
    [[nodiscard]] static nlohmann::json entry(nlohmann::json gathered, const nlohmann::json& before);
};

}
