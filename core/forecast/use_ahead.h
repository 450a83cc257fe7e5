// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What will be flown from a day on: flights, and from them each clock of use, as a distribution for any days ahead.
///
///     flights of some days   mean   level x season x days
///                            scatter of flights   dispersion x mean
///                            what is not known of the level, which may drift further each month that is ahead
///                            what is not known of the season: of a year's flights the share p of these days varies by
///                            p (1 - p) / (1 + its worth), as a Dirichlet law has it
///
/// All is computed, nothing drawn: the same log gives the same answer on every machine. A year's whole use of one
/// balloon is told apart from another's; weather that all share makes sums over a fleet vary more than its parts say,
/// so a fleet is foretold from one log of all its flights.
///
/// A **plan** that somebody states overrides what the log says for its days: a share of the usual pace (0: a pause, 2:
/// a festival), so many flights a week, or flights of which each is stated: those are flown for certain, each day of
/// the plan, and nothing else is.

#include "forecast/utilisation.h"

#include <optional>
#include <span>
#include <vector>

namespace crownring {

struct StatedPlan {
    CivilDate first;
    CivilDate last;                     ///< inclusive
    std::optional<double> times;        ///< the usual pace
    std::optional<double> flightsAWeek; ///< instead of it; without any of the three nothing is flown
    std::optional<Usage> flown{};       ///< on each of the days, instead of both
    bool operator==(const StatedPlan&) const = default;
};

class UseAhead {
public:
    /// Nobody asks for a day further away.
    static constexpr int horizonYears = 20;

    /// @param from the first day ahead @param plans the later one holds where two overlap
    UseAhead(const Utilisation& use, CivilDate from, std::span<const StatedPlan> plans = {});

    /// By which it is told.
    [[nodiscard]] const Utilisation& utilisation() const { return m_use; }
    /// From the first day ahead to `day`, inclusive; nothing before.
    [[nodiscard]] UseDistribution upTo(CivilDate day, UseClock clock) const;
    /// Both inclusive. @pre from the first day ahead on
    [[nodiscard]] UseDistribution between(CivilDate first, CivilDate last, UseClock clock) const;
    /// The first day on whose evening at least `left` was put on the clock with probability `share`; nothing where that
    /// is not within the horizon.
    [[nodiscard]] std::optional<CivilDate> reached(UseClock clock, double left, double share) const;
    /// The chance that it was by the evening of a day.
    [[nodiscard]] double chanceOf(UseClock clock, double left, CivilDate by) const;

private:
    /// What days of one pace are expected to bring; sums over them.
    struct Stretch {
        SpanAhead span;
        double usual = 0;  ///< days at a season of 1
        double stated = 0; ///< flights that a plan states
        ByClock<double> certain{};
    };
    struct Sum {
        std::int32_t until = 0; ///< day number of the first day after it
        UseMoments flights;     ///< without their dispersion
        ByClock<double> certain{};
    };
    class Adding;

    void lay(CivilDate from, std::span<const StatedPlan> plans);
    [[nodiscard]] Sum sumAt(CivilDate day) const;
    [[nodiscard]] UseDistribution distributionOf(const Sum& sum, double days, UseClock clock) const;

    Utilisation m_use;
    CivilDate m_from;
    std::vector<Stretch> m_stretches;
    std::vector<Sum> m_sums; ///< at the end of each stretch
};

}
