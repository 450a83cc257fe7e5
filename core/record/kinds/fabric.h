// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Of what an envelope is made.

#include "record/kinds/kind.h"

#include <optional>
#include <string>

namespace crownring {

/// Of which lot the panels are that an envelope came with. Bounds that are not given reach to the end.
struct FabricStated {
    ItemId item;
    std::string lot;
    std::string fabric; ///< the cloth, as its maker names it; may be empty
    std::optional<int> firstGore;
    std::optional<int> lastGore;
    std::optional<int> firstRow;
    std::optional<int> lastRow;
    bool operator==(const FabricStated&) const = default;
};

template <>
struct Kind<FabricStated> {
    static constexpr std::string_view name = "fabric.stated";
    static constexpr std::string_view keys = "item lot [fabric first_gore last_gore first_row last_row]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{Key{"item", &FabricStated::item}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&FabricStated::item};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = nothing;
    static FabricStated read(ObjectReader& reader);
    static void write(nlohmann::json& into, const FabricStated& body);
};

}
