// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Programmes are adopted, and what they require is done.

#include "civil/civil_date.h"
#include "measure/usage.h"
#include "record/kinds/kind.h"

#include <string>
#include <variant>
#include <vector>

namespace crownring {

/// Whom a programme binds from its adoption on.
struct BoundBalloons {
    std::vector<Registration> balloons;
    bool operator==(const BoundBalloons&) const = default;
};
struct BoundItems {
    std::vector<ItemId> items;
    bool operator==(const BoundItems&) const = default;
};
struct BoundEverything {
    bool operator==(const BoundEverything&) const = default;
};
using Bound = std::variant<BoundBalloons, BoundItems, BoundEverything>;

struct ProgrammeAdopted {
    ProgrammeId programme;
    Bound bound;
    std::string document; ///< the programme's whole text as canonical JSON; empty only before `post` has filled it in
    std::string digest;   ///< SHA-256 of `document`, 64 hex digits
    bool operator==(const ProgrammeAdopted&) const = default;
};

/// Whom it binds by name; null where it does not.
[[nodiscard]] const std::vector<Registration>* boundBalloons(const ProgrammeAdopted& adopted);
[[nodiscard]] const std::vector<ItemId>* boundItems(const ProgrammeAdopted& adopted);

template <>
struct Kind<ProgrammeAdopted> {
    static constexpr std::string_view name = "programme.adopted";
    static constexpr std::string_view keys = "programme and one of balloons, items, everything [document digest]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{Key{"balloons", boundBalloons}, Key{"items", boundItems}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = nothing;
    static ProgrammeAdopted read(ObjectReader& reader);
    static void write(nlohmann::json& into, const ProgrammeAdopted& body);
};

struct RequirementDone {
    ItemId item;
    RequirementId requirement;
    Figures clock; ///< what the paper states; an absent figure is computed
    std::string method;
    std::string ref;                     ///< the inspection that accomplished it, or the paper
    std::optional<PersonId> signatory{}; ///< of that paper
    std::string licence{};               ///< of who signed it
    std::optional<CivilDate> expires{};  ///< the last good day as that paper prints it: then it is the due date
    bool operator==(const RequirementDone&) const = default;
};

template <>
struct Kind<RequirementDone> {
    static constexpr std::string_view name = "requirement.done";
    static constexpr std::string_view keys =
        "item requirement [clock{minutes landings inflations} method ref signatory licence expires]";
    static constexpr TimeOfDay time{18, 0};
    static constexpr std::tuple mentions{Key{"item", &RequirementDone::item}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = nothing;
    static RequirementDone read(ObjectReader& reader);
    static void write(nlohmann::json& into, const RequirementDone& body);
};

}
