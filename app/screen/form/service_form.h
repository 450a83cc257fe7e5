// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The forms by which items and balloons go out of service, come back, or take another registration, and what follows
/// of each, in words.

#include "screen/form/form_plan.h"

#include <optional>

namespace crownring::screen {

class FormFields;

class ServiceForm {
    Q_DECLARE_TR_FUNCTIONS(ServiceForm)

public:
    [[nodiscard]] static bool known(std::string_view kind);
    [[nodiscard]] static std::vector<FormField> fields(std::string_view kind, const FormSubject& subject,
                                                       const FleetSheet& sheet);
    [[nodiscard]] static QString title(std::string_view kind);
    [[nodiscard]] static QString verb();
    /// What follows once it is written; empty while the fields do not say it yet.
    [[nodiscard]] static QString follows(std::string_view kind, const FormFields& fields, const FleetSheet& sheet);
    /// The registration that a balloon takes comes into the record first, with what was said of the former one; nothing
    /// where it is there: the balloon had it before, or it was entered and nothing of it was used. What is kept apart
    /// comes off first.
    [[nodiscard]] static std::optional<Entry> entersFirst(const Entry& entry, const FleetSheet& sheet);
    /// Shows the fields that the state asks for.
    static void showAsked(std::string_view kind, FormFields& fields, const FleetSheet& sheet);

private:
    static std::optional<Entry> comesOffFirst(const Entry& entry, const FleetSheet& sheet);
    static QString itemFollows(const ItemFacts& item, ServiceState state, const QString& day, const FleetSheet& sheet);
    static QString balloonFollows(const BalloonCard& card, ServiceState state, const QString& day,
                                  const FleetSheet& sheet);
    static QString renamedFollows(const BalloonCard& card, const QString& to, const FleetSheet& sheet);
    static QString operationsFollow(const BalloonCard& card, const BalloonCard& taken, const FleetSheet& sheet);
    static QString outFollows(const QString& whose, std::size_t rows, ServiceState state, const QString& day);
};

}
