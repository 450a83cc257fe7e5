// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is measured.

#include "record/kinds/kind.h"
#include "record/kinds/panels.h"

#include <optional>
#include <string>

namespace crownring {

/// A measured value, or a load that was held.
struct ReadingTaken {
    ItemId item;
    std::string quantity;
    double value = 0;
    bool held = false;           ///< `value` is a load that was survived: a bound, not a value
    std::optional<double> below; ///< of a stepped indicator: at least `value`, below this
    std::string unit;            ///< of `value` and `below`
    PanelPlace place;
    TestConditions conditions;
    TestCircumstances circumstances;
    std::string method;
    std::optional<InspectionId> inspection;
    std::string line; ///< of its checklist
    std::optional<TesterId> tester;
    bool confirmed = false; ///< it looked impossible, was questioned, and a person stands by it
    bool operator==(const ReadingTaken&) const = default;
};

template <>
struct Kind<ReadingTaken> {
    static constexpr std::string_view name = "reading.taken";
    static constexpr std::string_view keys =
        "item quantity unit and one of value, held_at [below gore row zone place direction jaw_mm pressure_pa "
        "area_cm2 hold_s dry side temp_c method tester inspection line confirmed]";
    static constexpr TimeOfDay time{18, 0};
    static constexpr std::tuple mentions{Key{"item", &ReadingTaken::item},
                                         Key{"inspection", &ReadingTaken::inspection}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&ReadingTaken::inspection};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = &ReadingTaken::inspection;
    static ReadingTaken read(ObjectReader& reader);
    static void write(nlohmann::json& into, const ReadingTaken& body);
};

}
