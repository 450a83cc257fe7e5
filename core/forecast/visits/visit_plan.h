// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The visits of one balloon: in which weeks it goes to which station, and what each visit covers, at least cost, so
/// that nothing is done later than the last week that it may be done in. Exact, unless the search comes to so many
/// states that it is ended: then the best plan that was met, with the bound that was proven (`VisitPlan::bound`).
///
///     annual by week 9, a strength test by week 30 of 26 weeks, a visit 400, its work 130
///     two visits 800, or one in week 9 that does both: 400 and 21 of 26 weeks of the test, 105: one visit
///
/// Best-first search over states (the week, and the due date of each task that runs) with a bound that never
/// overestimates (A*: Hart, Nilsson and Raphael, IEEE Trans. Syst. Sci. Cybern. 4 (1968) 100-107, from memory): what it
/// costs to go to a stop is split among the tasks, each task's cheapest visits as if it were alone at those costs are a
/// table (`Alone`), and their sum is the bound. The split is moved, by subgradients, to where the sum is high
/// (Lagrangean decomposition: Guignard and Kim, Math. Programming 39 (1987) 215-228, from memory). What is covered is
/// not any set: a task that neither keeps a pattern nor counts for another is done at the last visit that serves, since
/// life that is bought later lasts as long at least, and once more costs more than it could win. So of tasks that can
/// be done at the same stops those are covered whose last weeks come first. `tests/forecast/visits` holds that against
/// all sets.
///
/// Where nothing can be kept the plan is late by the fewest weeks, and says so. At the end of the time nothing is asked
/// of what is not due within it.

#include "forecast/visits/alone.h"

#include <limits>
#include <span>

namespace crownring {

[[nodiscard]] std::optional<VisitPlan> cheapestPlan(const VisitQuestion& question);

/// A plan that is near it and soon found; the same where nothing counts for anything else.
[[nodiscard]] std::optional<VisitPlan> goodPlan(const VisitQuestion& question);

/// What people do without a plan: each thing in the last open week in which it may be done, at the cheapest station
/// that does it, with whatever else is due in that very week. Pins are not looked at, and two stations may be gone to
/// in one week.
[[nodiscard]] VisitPlan planWhenDue(const VisitQuestion& question);

/// One question, for many costs of going to its stops.
class VisitSearch {
public:
    /// @param question must outlive it
    explicit VisitSearch(const VisitQuestion& question);

    enum class Effort {
        Exact,
        Rough, ///< `NextVisits`; exact where nothing counts for anything else
    };

    /// What was found, and what no plan at these costs is weighed less than.
    struct Found {
        std::optional<VisitPlan> plan;
        double bound = 0;
    };
    /// No plan where none is weighed below `below`, or a pin is in a week without a stop. Of its visits and of the
    /// whole plan the costs are those of the question.
    /// @param stopCosts of each stop instead of its own, none below 0; empty: its own
    [[nodiscard]] Found cheapest(std::span<const double> stopCosts = {},
                                 double below = std::numeric_limits<double>::infinity(), Effort effort = Effort::Exact);

private:
    [[nodiscard]] double weighedAt(const VisitPlan& plan, std::span<const double> stopCosts) const;
    friend class NextVisits;
    friend class NextVisitsTelling;
    friend class VisitSearching;
    /// Tables of a split whose sum is high; the split is kept for the next time.
    [[nodiscard]] std::vector<Alone::Least> split(std::span<const double> stopCosts, double below);
    void layAlone();
    /// How many of those alone a stop serves.
    [[nodiscard]] int servedAt(std::size_t stop) const;
    [[nodiscard]] const VisitTask& taskOf(std::size_t group) const {
        return m_question.tasks[m_groups[group].tasks.front()];
    }

    const VisitQuestion& m_question;
    std::vector<TaskGroup> m_groups;
    std::vector<std::uint64_t> m_doneAt;       ///< by stop: groups that can be done there, a bit each
    bool m_isTangled = false;                  ///< several groups count for others: then the bound is worth more work
    std::vector<Alone> m_alone;                ///< groups, and pairs of them: each group once
    std::vector<Alone::Least> m_work;          ///< of each, where going there costs nothing
    bool m_isSplit = false;                    ///< by an earlier search
    std::vector<std::uint64_t> m_served;       ///< by stop: with those that something done there counts for
    std::vector<std::vector<double>> m_shares; ///< of each alone by stop: its part of what going there costs
    std::optional<VisitPlan> m_whenDue;        ///< no cheapest plan costs more; nothing where it is none
};

}
