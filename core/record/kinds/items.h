// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Items and balloons come into the record; items are fitted to balloons or to other items, and removed.

#include "civil/civil_date.h"
#include "measure/usage.h"
#include "record/kinds/item_kind.h"
#include "record/kinds/kind.h"
#include "record/kinds/parts/parts.h"

#include <optional>
#include <string>
#include <vector>

namespace crownring {

/// An item comes into the record, with what was on its clock at 00:00 of that day.
struct ItemEntered {
    ItemId item;
    ItemKind kind = ItemKind::Other;
    std::optional<std::string> serial;
    std::optional<std::string> type;
    std::optional<DayOrMonth> made;
    Figures broughtForward = newFigures; ///< an absent figure is one that nobody knows
    std::string lot{};                   ///< that it is a piece of
    std::optional<PartRelease> release{};
    std::optional<VesselStamped> vessel{};
    bool operator==(const ItemEntered&) const = default;
};

/// What is found under the item, too: where no more is said than the rows of its own tell, nothing.
template <class Said>
[[nodiscard]] const ItemId* pieceOf(const Said& said);
template <>
const ItemId* pieceOf(const ItemEntered& said);

template <>
struct Kind<ItemEntered> {
    static constexpr std::string_view name = "item.entered";
    static constexpr std::string_view keys =
        "item kind [serial type made brought_forward{minutes landings inflations} lot release{form number} "
        "vessel{material specification water_litres tare_kg}]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{};
    static constexpr auto brings = &ItemEntered::item;
    static constexpr std::tuple toldUnder{&pieceOf<ItemEntered>};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = nothing;
    static ItemEntered read(ObjectReader& reader);
    static void write(nlohmann::json& into, const ItemEntered& body);
};

struct BalloonEntered {
    Registration balloon;
    std::string title;
    std::vector<std::string> operations; ///< e.g. "for-hire", "instruction"
    bool operator==(const BalloonEntered&) const = default;
};

template <>
struct Kind<BalloonEntered> {
    static constexpr std::string_view name = "balloon.entered";
    static constexpr std::string_view keys = "balloon [title operations]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{};
    static constexpr auto brings = &BalloonEntered::balloon;
    static constexpr std::tuple toldUnder{};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = nothing;
    static BalloonEntered read(ObjectReader& reader);
    static void write(nlohmann::json& into, const BalloonEntered& body);
};

/// Who owns a balloon from this day on, and who operates it.
struct BalloonOwned {
    Registration balloon;
    std::string owner;      ///< name and address, as on the certificate of registration
    std::string operatedBy; ///< empty: the owner
    bool operator==(const BalloonOwned&) const = default;
};

template <>
struct Kind<BalloonOwned> {
    static constexpr std::string_view name = "balloon.owned";
    static constexpr std::string_view keys = "balloon owner [operator]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{Key{"balloon", &BalloonOwned::balloon}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&BalloonOwned::balloon};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = nothing;
    static BalloonOwned read(ObjectReader& reader);
    static void write(nlohmann::json& into, const BalloonOwned& body);
};

/// To a balloon, or as a part to another item: then it flies when that does, wherever that is.
struct ItemFitted {
    Registration balloon; ///< empty where it is fitted `to` an item
    ItemId item;
    std::string place;
    std::optional<ItemId> to{};
    std::optional<PartRelease> release{};
    std::string lot{}; ///< that it is a piece of
    bool operator==(const ItemFitted&) const = default;
};

template <>
const ItemId* pieceOf(const ItemFitted& said);
/// The balloon that it is fitted to or taken off; null where that is an item.
template <class Fitting>
[[nodiscard]] const Registration* balloonUnder(const Fitting& fitting) {
    return fitting.balloon.text().empty() ? nullptr : &fitting.balloon;
}

template <>
struct Kind<ItemFitted> {
    static constexpr std::string_view name = "item.fitted";
    static constexpr std::string_view keys = "item and one of balloon, to [place release{form number} lot]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{Key{"balloon", balloonUnder<ItemFitted>}, Key{"item", &ItemFitted::item},
                                         Key{"to", &ItemFitted::to}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&pieceOf<ItemFitted>};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = nothing;
    static ItemFitted read(ObjectReader& reader);
    static void write(nlohmann::json& into, const ItemFitted& body);
};

struct ItemRemoved {
    Registration balloon; ///< empty where it is taken `from` an item
    ItemId item;
    std::string place;
    std::optional<ItemId> from{};
    bool operator==(const ItemRemoved&) const = default;
};

template <>
struct Kind<ItemRemoved> {
    static constexpr std::string_view name = "item.removed";
    static constexpr std::string_view keys = "item and one of balloon, from [place]";
    static constexpr TimeOfDay time{23, 59};
    static constexpr std::tuple mentions{Key{"balloon", balloonUnder<ItemRemoved>}, Key{"item", &ItemRemoved::item},
                                         Key{"from", &ItemRemoved::from}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = nothing;
    static ItemRemoved read(ObjectReader& reader);
    static void write(nlohmann::json& into, const ItemRemoved& body);
};

}
