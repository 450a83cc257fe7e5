// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the readings of a fleet say of one envelope to come. Reading the record (`aheadOf`, `fabricRecord`) and fitting
/// (`fitOf`) are apart, so that a fit can run on another thread than that of the record.
///
/// A forecast plans tests. It takes the place of none, and no standing comes from it.

#include "answers/fabric/fit.h"
#include "fabric/outlook/best_next_reading.h"
#include "fabric/outlook/told.h"

namespace crownring {

/// Readings beyond a bound of the manual, which stand in the due list.
struct FailedPlace {
    std::string quantity;
    Argument what; ///< of the worst place, with its bound and day
};

/// When the envelope is tested next, and what it will have flown by then.
struct Ahead {
    CivilDate on;
    YearlyPace pace{};
    std::optional<CivilDate> day;      ///< the earliest inspection or test that is due; nothing where none is
    Hours hours = nextTestAfter;       ///< flown from now until then
    std::vector<FailedPlace> failed{}; ///< what grounds it whatever is forecast of the rest

    /// The day on which this many hours more are flown; nothing where that is not within a hundred years.
    [[nodiscard]] std::optional<CivilDate> dayAfter(Hours more) const;
};

/// By the due list of the envelope: the earliest date of a test or a periodic inspection, or earlier where a limit by
/// hours comes first at its pace; `nextTestAfter` hours where nothing is due.
[[nodiscard]] Result<Ahead> aheadOf(Books& books, const ItemId& envelope, CivilDate on);

struct SetForecast {
    std::size_t set = 0;
    ToldOutlook outlook; ///< in the quantity's own unit
    std::size_t readings = 0;
    std::size_t held = 0;      ///< of them, only bounds
    double effectiveDraws = 0; ///< independent draws that the early end of its life (5 %) rests on
};

/// A pull that might be made at the weakest place.
struct PullChoice {
    PlannedPull pull;
    WorthOfPull worth;
};

struct EnvelopeForecast {
    std::vector<SetForecast> sets; ///< of the envelope
    std::size_t weakest = 0;       ///< into `sets`: the one of which the early end of life is nearest
    /// At the weakest place: the load of today, more of it, and until it breaks. None where its life is not told by
    /// readings: what a pull would narrow is then what was assumed.
    std::vector<PullChoice> pulls;
};

[[nodiscard]] EnvelopeForecast forecastOf(const FabricFit& fit, std::size_t envelope, const Ahead& ahead);

/// What a panel of a set is expected to read when so many more hours are flown.
struct PanelForecast {
    Band value;       ///< in the quantity's own unit
    double below = 0; ///< chance that it is beyond its limit then
};
[[nodiscard]] PanelForecast panelForecast(const FabricFit& fit, std::size_t set, std::optional<int> row, Hours more);

}
