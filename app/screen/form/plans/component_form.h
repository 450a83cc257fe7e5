// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The forms of acts on components: a batch goes to a test house and comes back, one takes the place of another, parts
/// are fitted and taken off, cylinders are filled. What an act writes is decided in `acts`.

#include "acts/components.h"
#include "screen/form/form_plan.h"
#include "store/record_file.h"

#include <functional>
#include <optional>

namespace crownring::screen {

class FormFields;

/// What a form does that is more than an entry, and how it is told once it is done.
struct FormAct {
    std::function<Results<Receipt>(Record&)> run;
    QString said;
};

class ComponentForm {
    Q_DECLARE_TR_FUNCTIONS(ComponentForm)

public:
    static constexpr std::string_view sent = "components.sent";
    static constexpr std::string_view returned = "components.returned";
    static constexpr std::string_view replaced = "component.replaced";
    static constexpr std::string_view fitted = "component.fitted";
    static constexpr std::string_view takenOff = "component.taken-off";

    /// What was done: on each item its own test for transport.
    static constexpr std::string_view ofEach = "-each";
    /// On none anything that is asked of it.
    static constexpr std::string_view ofNone = "-none";

    [[nodiscard]] static bool known(std::string_view kind);
    /// No kind of entries: it writes several.
    [[nodiscard]] static bool isAct(std::string_view kind);
    [[nodiscard]] static std::vector<FormField> fields(std::string_view kind, const FormSubject& subject,
                                                       const FleetSheet& sheet);
    [[nodiscard]] static QString title(std::string_view kind);
    [[nodiscard]] static QString verb(std::string_view kind);
    /// "12 items: CYL-4126, CYL-4053 …"; one with its serial number and where it is.
    [[nodiscard]] static QString named(const QStringList& items, const FleetSheet& sheet);
    static void showAsked(std::string_view kind, FormFields& fields, const FleetSheet& sheet);
    /// @param gathered what the fields say, and `items`, those that it is done with; of what came back `done` as above
    /// What was done on each item that came back: what is chosen, where that is asked of it, or, of `ofEach`, its own
    /// test for transport; those on which nothing was are left out.
    [[nodiscard]] static nlohmann::json doneOnEach(const FormFields& fields, const FleetSheet& sheet);
    /// What a return records as done, and on how many.
    [[nodiscard]] static QString doneText(const Returning& returning, const FleetSheet& sheet);
    /// @param today what is done on it carries the time
    [[nodiscard]] static FormAct act(std::string_view kind, const nlohmann::json& gathered, const FleetSheet& sheet,
                                     CivilDate today);
};

}
