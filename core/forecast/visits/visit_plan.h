// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The visits of one balloon: in which weeks it goes to a station, and what each visit covers, at least cost, so that
/// nothing is done later than the last week that it may be done in. Exact.
///
///     annual by week 9, a strength test by week 30, a visit 400, a week of life thrown away 5
///     two visits 800, or one in week 9 that does both: 400 and 21 weeks of the test, 105: one visit
///
/// Weeks are plain numbers from 0; whoever asks makes them of dates. What use limits has as its last week the one by
/// which it is used up with no more than the chance that the user takes (`UseAhead::reached`). A tolerance is never
/// planned into: the last week is that of the limit.
///
/// Best-first search over states (the week, and the last week of each task) with a bound that never overestimates: some
/// task's own visits and work as if it were alone, and the work alone of the others (A*: Hart, Nilsson and Raphael,
/// IEEE Trans. Syst. Sci. Cybern. 4 (1968) 100-107, from memory). What is taken from the queue first and is finished is
/// the cheapest plan; of plans that cost the same the one with earlier states in their order is told, always the same
/// one. At the end of the time nothing is asked of what is not due within it.

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace crownring {

struct VisitTask {
    int latest = 0;         ///< the last week in which it may be done next
    std::vector<int> lasts; ///< by the week in which it is done: how many weeks later it is due again, at least 1
    int window = 0;         ///< done so many weeks or fewer before its last week the next counts from that week
    double cost = 0;        ///< each time that it is done, 0 or more
    double weekWasted = 0;  ///< for each week before its last one: life thrown away
};

struct VisitQuestion {
    /// By week what going to the station costs, of the cheapest that is open; nothing where there is no visit: closed,
    /// or kept free for flying.
    std::vector<std::optional<double>> weeks;
    std::vector<VisitTask> tasks; ///< at most `mostVisitTasks`
    struct Pin {
        std::size_t task = 0;
        int week = 0; ///< in which it is done, whatever that costs
    };
    std::vector<Pin> pins;
};
inline constexpr std::size_t mostVisitTasks = 16;

struct PlannedVisit {
    int week = 0;
    std::vector<std::size_t> covers; ///< tasks, in order
    double cost = 0;                 ///< of going there, of the work and of what it throws away
    bool operator==(const PlannedVisit&) const = default;
};

struct VisitPlan {
    std::vector<PlannedVisit> visits;
    double cost = 0;
};

/// When it is due again, done in `week`.
[[nodiscard]] int latestAfter(const VisitTask& task, int week, int latest);
/// What doing it then costs, without going there.
[[nodiscard]] double costOfDoing(const VisitTask& task, int week, int latest);

/// Nothing where no plan keeps all: something is due before any week that is open.
/// @pre each `lasts` has as many figures as there are weeks, none below 1; costs are 0 or more; pins are within both
[[nodiscard]] std::optional<VisitPlan> cheapestPlan(const VisitQuestion& question);

/// What people do without a plan: each thing in the last open week in which it may be done, with whatever else is due
/// in that very week. Pins are not looked at.
[[nodiscard]] std::optional<VisitPlan> planWhenDue(const VisitQuestion& question);

}
