// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How the parts of an item wear: for each quantity that follows the hours flown, and each place where it was read, the
/// trend and when the manual's limit is met. A forecast plans work; what grounds is a reading beyond the limit
/// (`answers/fabric_marks.h`).

#include "bench/reading/verdict.h"
#include "parts/wear.h"
#include "registry/books.h"

#include <optional>
#include <string>
#include <vector>

namespace crownring {

struct WearSeries {
    std::string quantity;
    PanelPlace place;
    Figure latest;                           ///< in the quantity's own unit
    std::size_t readings = 0;                ///< that the trend rests on
    std::size_t leftOut = 0;                 ///< those of which nobody knows at how many hours they were taken
    std::optional<WearTrend> trend{};        ///< in that unit, over the hours of the item's clock
    std::optional<Figure> limit{};           ///< the bound that wear goes to
    std::string source{};                    ///< of the limit
    std::optional<Between<Hours>> toLimit{}; ///< from the clock on the day asked; negative where the line met it before
    std::optional<NoForecast> why{};         ///< no time is told
    Wears way = Wears::Down;                 ///< towards the limit
    std::optional<Hours> now{};              ///< on the item's clock; nothing where it is unknown
    /// The days on which those hours are flown at the pace of the last two years; the day asked where that is before
    /// it. Nothing where nothing was flown, or one of them lies more than twenty years ahead.
    std::optional<Between<CivilDate>> metOn{};
};

/// Of one item up to a day, by quantity and place. A repair at the place of the readings, or of the defect that one of
/// them found, or a part that was replaced for that, begins a series anew: what was read before is of another piece.
[[nodiscard]] Result<std::vector<WearSeries>> wearOf(Books& books, const ItemId& item, CivilDate on);

/// As scripts know it: "long-side-1", "gore-12"; empty where no place was stated.
[[nodiscard]] std::string placeSlug(const PanelPlace& place);

}
