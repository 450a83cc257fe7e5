// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The visits of the months to come: which balloon goes to which station in which week, and what it has done there, so
/// that nothing lapses with more than the chance that the user takes, at least cost.
///
/// The chance is each balloon's, over the whole time: that anything on it is used up before its visit. It is shared out
/// over the times between visits until their sum keeps to it.

#include "answers/plan/stations.h"
#include "registry/books.h"
#include "rules/due/due_list.h"

#include <optional>
#include <stop_token>
#include <string>
#include <vector>

namespace crownring {

/// What a thing that is covered, or could not be kept, is about.
struct PlannedRow {
    ItemId item;
    ItemKind kind = ItemKind::Other;
    RequirementId requirement;
    Argument title;
};

/// Why it sits where it sits.
struct WorkWhy {
    enum class Kind {
        CannotWait, ///< the last week that is open before it is due
        Bundled,    ///< done with what cannot wait
        Pinned,     ///< done with a visit that is pinned
        AtOnce,     ///< past already: as soon as it can be
        Late,       ///< nothing earlier could be had
        Rides,      ///< goes with the inspection
    };
    Kind kind = Kind::CannotWait;
    std::optional<CivilDate> due{};    ///< the last good day by the calendar
    bool byUse = false;                ///< use comes first
    std::optional<CivilDate> before{}; ///< by use: done before this Monday
    std::optional<CivilDate> window{}; ///< from this day on it keeps its date
    bool keeps = false;
    int weeksEarly = 0;
    double thrownAway = 0;            ///< of what it costs
    std::optional<PlannedRow> with{}; ///< what cannot wait, or what it goes with
};

struct PlacedWork {
    PlannedRow row;
    WorkWhy why;
};

struct PlannedStay {
    std::string station;
    CivilDate week; ///< its Monday
    Registration balloon;
    std::vector<PlacedWork> covers;
    double cost = 0;
    bool isPinned = false;
};

struct NotKept {
    enum class Why {
        Lapsed,    ///< it is past by now, or was never shown to be done
        NoStation, ///< no station carries it out
        NoWeek,    ///< none is open, dry and free before it is due
        Full,      ///< the stations are taken, or it is forbidden
        Outrun,    ///< use runs out before the next visit can be
    };
    Registration balloon;
    PlannedRow row;
    Why why = Why::Lapsed;
    Standing standing = Standing::Clear;
    std::optional<CivilDate> due{};    ///< by the calendar
    std::optional<CivilDate> before{}; ///< where use decides: the Monday before which it is done
    std::optional<CivilDate> until{};  ///< the Friday on which it is made good; nothing: not within the time
};

struct LeftOutRow {
    PlannedRow row;
    bool isExempt = false; ///< not compulsory by now; else its item is on no balloon
};

struct FleetVisits {
    std::size_t balloons = 0; ///< that something is kept of
    CivilDate first;          ///< the first Monday
    int weeks = 0;
    std::vector<PlannedStay> visits; ///< by week, then balloon
    double cost = 0;
    double whenDue = 0; ///< each thing done when it is due, each balloon as if it were alone
    double bound = 0;
    double gap = 0;
    double chance = 0; ///< the likeliest lapse of any balloon
    std::vector<NotKept> notKept;
    std::vector<LeftOutRow> leftOut;
};

struct PlanAsked {
    CivilDate from;
    int months = 24;
    CivilDate known;    ///< the last day of which the record is taken to hold what was flown; not after `from`
    double risk = 0.05; ///< above 0 and below 1
    Stations stations;
    std::vector<VisitPin> pins;
};

/// BadUse and UnknownReference where a pin cannot be held; OnlyTried where it was stopped.
[[nodiscard]] Result<FleetVisits> plannedVisits(Books& books, const PlanAsked& asked, const std::stop_token& stop = {});

}
