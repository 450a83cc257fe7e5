// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Which fields each act asks for. A plan is plain data; the form checks and posts it, QML draws it.

#include "screen/desk/fleet.h"
#include "screen/form/form_field.h"

#include <QCoreApplication>

#include <map>

namespace crownring::screen {

/// What the form is about, where the user came from.
struct FormSubject {
    std::string balloon;
    std::string item;
    std::string requirement;
    std::string programme;
    std::vector<std::string> items{};        ///< of what is written for many at once
    std::map<ItemId, Registration> lastOn{}; ///< of these, where one was before it went away
};

class FormPlan {
    Q_DECLARE_TR_FUNCTIONS(FormPlan)

public:
    /// @param kind an entry kind, "flight.logged" …
    [[nodiscard]] static std::vector<FormField> fields(std::string_view kind, const FormSubject& subject,
                                                       const FleetSheet& sheet);
    [[nodiscard]] static QString title(std::string_view kind);
    /// What the button says: "Log the flight".
    [[nodiscard]] static QString verb(std::string_view kind);
    /// Has this kind a form at all?
    [[nodiscard]] static bool known(std::string_view kind);

    [[nodiscard]] static std::vector<Choice> balloons(const FleetSheet& sheet);
    /// Fitted to the balloon; all items when it is empty.
    [[nodiscard]] static std::vector<Choice> items(const FleetSheet& sheet, const std::string& balloon);
    [[nodiscard]] static std::vector<Choice> itemsNotOn(const FleetSheet& sheet, const std::string& balloon);
    [[nodiscard]] static std::vector<Choice> requirements(const FleetSheet& sheet, const std::string& item);
    /// Other items that the requirement binds, those beside the item first.
    [[nodiscard]] static std::vector<Choice> alsoBound(const FleetSheet& sheet, const std::string& item,
                                                       const std::string& requirement);
    /// Others of the pool of the same kind; none of an envelope.
    [[nodiscard]] static std::vector<Choice> poolLike(const FleetSheet& sheet, const std::string& item);
    [[nodiscard]] static std::vector<Choice> methods(const FleetSheet& sheet, const std::string& requirement);
};

}
