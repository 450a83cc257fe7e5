// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is asked of a plan of one balloon's visits: where it may go in which week, and what has to be done by when.
///
/// Weeks are plain numbers from 0; whoever asks makes them of dates. What use limits has as its last week the one by
/// which it is used up with no more than the chance that the user takes (`UseAhead`). A tolerance is never planned
/// into: the last week is that of the limit.
///
/// What it costs to do a thing early is the life that is thrown away: of what the work costs as much as the new due
/// date is nearer than a whole interval after the old one. Done on its last day it costs nothing beside the visit (it
/// is done in every plan), done when half of its interval is gone it costs half. What keeps its pattern within a window
/// loses nothing there.
///
///     work 300, lasts 52 weeks, due in week 30: done in week 17 it is due again in week 69, not 82; 13 of 52 weeks are
///     thrown away, 75

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace crownring {

/// A week at a station.
struct Stop {
    int week = 0;
    std::size_t station = 0; ///< below `mostStations`
    double cost = 0;         ///< going there, the visit, coming back; 0 or more
    bool operator==(const Stop&) const = default;
};
inline constexpr std::size_t mostStations = 32;

struct VisitTask {
    struct Due {
        int latest = 0;  ///< the last week in which it may be done; below 0 before any, from the end on not asked
        double life = 0; ///< where that lies, in intervals of the work from any origin
        std::optional<std::size_t> keeps{}; ///< the due date that follows where the pattern is kept
        int keepsFrom = 0;                  ///< by doing it from this week on
    };
    struct After {
        std::size_t due = 0; ///< that follows where it is counted from doing it
        double life = 0;
    };
    std::vector<Due> dues;              ///< the first is the one that runs
    std::vector<After> after;           ///< by the week in which it is done; `latest` of them never falls
    std::vector<bool> shut{};           ///< weeks in which it cannot be done wherever one goes; empty: none
    std::uint32_t stations = ~0U;       ///< that do it, a bit each
    double cost = 0;                    ///< of the work, 0 or more
    std::vector<std::size_t> implies{}; ///< tasks that it counts for: done with it, at no cost of their own

    [[nodiscard]] bool isDoneAt(const Stop& stop) const {
        return (stations >> stop.station & 1U) != 0 && (shut.empty() || !shut[static_cast<std::size_t>(stop.week)]);
    }
    /// The due date that follows: done in `week`, with `due` running.
    [[nodiscard]] std::size_t next(std::size_t due, int week) const;
    /// What part of its life is thrown away by it, from 0 to 1.
    [[nodiscard]] double wasted(std::size_t due, int week) const;
    /// That in money.
    [[nodiscard]] double charge(std::size_t due, int week) const { return cost * wasted(due, week); }
    /// Weeks after its last one.
    [[nodiscard]] int lateness(std::size_t due, int week) const {
        return week > dues[due].latest ? week - dues[due].latest : 0;
    }
};
inline constexpr std::size_t mostVisitTasks = 64;

struct VisitQuestion {
    int weeks = 0;
    std::vector<Stop> stops; ///< by week; none where all are closed, or the week is kept free for flying
    std::vector<VisitTask> tasks;
    /// Of each week in which something is past its last one. Larger than any visit: it is planned only where nothing
    /// else can be.
    double lateWeek = 0;
    std::vector<int> pins; ///< weeks in which a visit takes place, whatever that costs; at one of the week's stops
};

struct PlannedVisit {
    int week = 0;
    std::size_t station = 0;
    std::vector<std::size_t> covers; ///< tasks, in order; not what they imply
    double cost = 0;                 ///< of going there and of the life that is thrown away
    bool operator==(const PlannedVisit&) const = default;
};

struct VisitPlan {
    std::vector<PlannedVisit> visits;
    double cost = 0;
    int late = 0; ///< weeks in which something is past its last one, added up over the tasks
    /// No plan is weighed less. Near what this one is weighed it is a cheapest one; far below, the search was ended.
    double bound = 0;
    /// With what being late counts for.
    [[nodiscard]] double weighed(const VisitQuestion& question) const { return cost + question.lateWeek * late; }
};

}
