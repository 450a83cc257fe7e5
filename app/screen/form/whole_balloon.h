// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A balloon with all that it is made of, and the rules that it flies under, in one form: its entry, those of its
/// items, their fittings, and the adoption.

#include "screen/desk/fleet_sheet.h"
#include "screen/form/form_field.h"

#include <QCoreApplication>

namespace crownring::screen {

class WholeBalloon {
    Q_DECLARE_TR_FUNCTIONS(WholeBalloon)

public:
    /// No kind of an entry: what this form is called among the others.
    static constexpr std::string_view name = "whole-balloon";

    [[nodiscard]] static std::vector<FormField> fields(const FleetSheet& sheet);
    /// What is wrong with the cylinders' lines, as a sentence; empty when nothing.
    [[nodiscard]] static QString wrongLines(const QString& cylinders, bool fresh);
    /// The fields of names that are empty although something is said of the part.
    [[nodiscard]] static std::vector<std::string> nameless(const nlohmann::json& gathered);
    /// In the order in which they are written; each with its day and its author.
    /// @param gathered what the fields say
    [[nodiscard]] static std::vector<nlohmann::json> entries(const nlohmann::json& gathered, bool fresh);
};

}
