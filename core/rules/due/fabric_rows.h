// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How the fabric of an envelope stands in the due list: by readings held against the bounds of its type's manual. A
/// reading beyond a bound retires the panel, or the envelope where the manual says so; a forecast retires nothing.

#include "registry/item_facts.h"
#include "rules/programme/requirement.h"
#include "rules/standing/standing.h"

#include <memory_resource>
#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

namespace crownring {

/// How the fabric of an envelope stands by its readings to one bound of its type's manual; forecasts have no say here.
struct FabricMark {
    enum class State {
        Within,    ///< all places that were read last are within the bound
        Near,      ///< so they are, and one is close to it
        Undecided, ///< nothing that was read decides: bounds that reach across the limit, or another test
        Said,      ///< a panel was beyond it, and is said to be put right: nothing tells of a repair or another reading
        Panel,     ///< a panel is beyond it and was not replaced
        Item,      ///< a reading was beyond it, and that retires the envelope
    };
    State state = State::Undecided;
    bool ofFabric = true; ///< else of another quantity, of any item: told only where it is beyond its bound
    std::string quantity; ///< "grab-strength" …
    Argument title;       ///< "grab strength between jaws of 25 mm"
    Argument what;        ///< of the worst place: "98 N, gore 3, row 12; at least 133.4 N"
    std::string source;   ///< of the bound
    Stamp stamp;          ///< of the reading that decides
    double share = 0;     ///< of the worst place to the bound, 1 at it, more is better; 0 where it was only held
    bool operator==(const FabricMark&) const = default;
};
/// One for each bound that something was read for.
using FabricMarks = std::unordered_map<ItemId, std::vector<FabricMark>>;

/// "fabric/…", "reading/…": the name that readings of a quantity have in the due list.
[[nodiscard]] RequirementId fabricRequirementId(const FabricMark& mark);
/// The quantity of such a name of fabric; nothing for another.
[[nodiscard]] std::optional<std::string> quantityOfFabric(const RequirementId& id);
/// That, and what was read, as a requirement of the due list.
[[nodiscard]] Requirement fabricRequirement(const FabricMark& mark);
[[nodiscard]] const Programme& fabricProgramme();

/// Within the bound `Clear`, close to it `Nearing`, undecided `Unproven`, a panel beyond it `Lapsed`, the envelope
/// `Spent`. The share left is what the worst reading has above the bound, of the reading.
[[nodiscard]] Assessment assessFabric(const FabricMark& mark,
                                      std::pmr::memory_resource* memory = std::pmr::get_default_resource());

}
