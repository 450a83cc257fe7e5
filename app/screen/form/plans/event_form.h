// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The forms of what happened: an event in five taps from anywhere, and that one was reported to somebody outside.

#include "record/journal.h"
#include "screen/form/form_plan.h"

namespace crownring::screen {

class FormFields;

class EventForm {
    Q_DECLARE_TR_FUNCTIONS(EventForm)

public:
    [[nodiscard]] static bool known(std::string_view kind);
    [[nodiscard]] static std::vector<FormField> fields(std::string_view kind, const FormSubject& subject,
                                                       const FleetSheet& sheet);
    [[nodiscard]] static QString title(std::string_view kind);
    [[nodiscard]] static QString verb(std::string_view kind);
    /// Asks for what the event wants to be told of: on which item, how hot, for how long.
    static void showAsked(FormFields& fields, const FleetSheet& sheet);
    /// What it makes due at once, on which items and by which source; and by when a report may be owed.
    [[nodiscard]] static QString follows(const FormFields& fields, const FleetSheet& sheet);
    /// An event of one kind of item is of that item, and not of the balloon on which it was.
    static void nameItem(nlohmann::json& entry, const FormFields& fields);
    /// From a flight: its day, when it landed, and the highest altitude of its track.
    static void takeFlight(FormFields& fields, const Entry& flight);
};

}
