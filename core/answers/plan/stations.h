// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a plan of visits is made with, as a user writes it down: assets/schema/stations.schema.json says what each key
/// means, pins.schema.json how a visit is held fixed or forbidden.

#include "civil/civil_date.h"
#include "measure/name.h"
#include "record/kinds/item_kind.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace crownring {

/// Both inclusive.
struct DaysBetween {
    CivilDate from;
    CivilDate to;
    [[nodiscard]] bool touches(CivilDate first, CivilDate last) const { return from <= last && first <= to; }
    [[nodiscard]] bool holds(CivilDate first, CivilDate last) const { return from <= first && last <= to; }
};

struct Station {
    std::string name;
    double visit = 0;
    double transport = 0;
    int atOnce = 1;
    std::optional<std::vector<DaysBetween>> open; ///< absent: always
    std::vector<RequirementId> does;              ///< empty: all

    [[nodiscard]] bool isOpen(CivilDate first, CivilDate last) const;
    [[nodiscard]] bool carriesOut(const RequirementId& requirement) const;
};

struct KeptFree {
    DaysBetween days;
    std::vector<Registration> balloons; ///< empty: all
};

struct WorkCost {
    RequirementId requirement;
    std::optional<ItemKind> kind;
    double cost = 0;
};

struct Stations {
    std::vector<Station> stations;
    std::vector<KeptFree> flying;
    int dryingDays = 0;
    std::vector<WorkCost> work;
    double otherWork = 100;

    /// Is a day between the two kept free for flying by this balloon?
    [[nodiscard]] bool isFlying(const Registration& balloon, CivilDate first, CivilDate last) const;
    [[nodiscard]] double costOf(const RequirementId& requirement, ItemKind kind) const;
    [[nodiscard]] std::optional<std::size_t> find(std::string_view name) const;
};
/// BadJson, BadValue or BadUse with the place in the document.
[[nodiscard]] Result<Stations> stationsFrom(std::string_view text);

struct VisitPin {
    Registration balloon;
    CivilDate day;                      ///< any of the week
    std::optional<std::string> station; ///< absent: any
    bool forbids = false;
    std::string place; ///< in the document it was written in; empty where it comes from elsewhere
};
[[nodiscard]] Result<std::vector<VisitPin>> pinsFrom(std::string_view text);

}
