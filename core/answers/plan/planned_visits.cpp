// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/plan/planned_visits.h"

#include "answers/due.h"
#include "answers/plan/balloon_tasks.h"
#include "answers/plan/told_visits.h"
#include "forecast/visits/fleet_plan.h"
#include "forecast/visits/visit_plan.h"
#include "problem/faults/use_fault.h"

#include <algorithm>
#include <limits>
#include <map>
#include <set>

namespace crownring {

namespace {

/// How often the chance of each time is made smaller until their sum keeps to what is asked: of a balloon alone, and of
/// all with what the stations leave open.
constexpr int mostShares = 12;
constexpr int mostRounds = 3;
constexpr int mostInVain = 3; ///< shares that made the chance no less: what runs out does so whatever is planned

class Planning {
public:
    Planning(const PlanAsked& asked, const DueList& due, ItemsAhead& items, const std::stop_token& stop)
        : m_asked(asked), m_due(due), m_items(items), m_stop(stop),
          m_weeks(PlanWeeks::from(asked.from, asked.months)), m_ground{asked.stations, m_weeks, asked.pins} {
        for (const auto& row : due.rows)
            if (row.item->balloon && !row.item->out)
                m_rows[*row.item->balloon].push_back(&row);
    }

    Result<FleetVisits> plan() {
        const auto last = addDays(m_weeks.monday(m_weeks.count), -1);
        if (last > addMonths(m_asked.known, 12 * UseAhead::horizonYears, DayRule::Same))
            return problem(UseFault::DaysNotAhead, {m_asked.from, last, UseAhead::horizonYears});
        if (const auto pins = checkPins(); !pins)
            return tl::unexpected(pins.error());
        std::map<Registration, double> shares;
        for (const auto& [balloon, rows] : m_rows)
            shares[balloon] = shareOf(balloon, rows);
        std::optional<FleetVisits> before;
        int late = 0;
        for (int round = 0;; ++round) {
            auto works = worksBy(shares);
            const auto question = fleetOf(works);
            auto plan = cheapestPlans(question, m_stop);
            if (m_stop.stop_requested())
                return problem(UseFault::OnlyTried);
            if (!plan)
                return problem(UseFault::PinWhereClosed, {m_weeks.first});
            // A smaller chance that something runs out is not bought with what is certain to be late.
            if (before && plan->late > late)
                return *std::move(before);
            late = plan->late;
            // What the stations left open may be longer between visits than each balloon alone would have it.
            bool isKept = true;
            double chance = 0;
            for (std::size_t balloon = 0; balloon < works.size(); ++balloon) {
                const double its = chanceOfLapse(works[balloon], plan->plans[balloon], m_weeks);
                if (its > m_asked.risk && round < mostRounds) {
                    shares[works[balloon].balloon] *= 0.8 * m_asked.risk / its;
                    isKept = isKept && isHopeless(works[balloon].balloon);
                }
                chance = std::max(chance, its);
            }
            before = told(works, *plan, chance);
            if (isKept)
                return *std::move(before);
        }
    }

private:
    Result<void> checkPins() {
        std::map<std::pair<std::size_t, int>, int> taken;
        for (const auto& pin : m_asked.pins) {
            const auto at = [&](const char* key) { return atKey(pin.place.empty() ? "" : pin.place + key); };
            if (!m_rows.contains(pin.balloon))
                return problem(UseFault::PinOfNoBalloon, {pin.balloon}, at("/balloon"));
            const auto station = pin.station ? m_asked.stations.find(*pin.station) : std::nullopt;
            if (pin.station && !station)
                return problem(UseFault::NoStationOfThatName, {*pin.station}, at("/station"));
            const int week = m_weeks.weekOf(pin.day);
            if (week < 0 || week >= m_weeks.count)
                return problem(UseFault::PinOutsidePlan, {m_weeks.first, m_weeks.monday(m_weeks.count - 1)},
                               at("/week"));
            if (pin.forbids)
                continue;
            for (const auto& other : m_asked.pins)
                if (&other < &pin && !other.forbids && other.balloon == pin.balloon && other.station && pin.station &&
                    *other.station != *pin.station && m_weeks.weekOf(other.day) == week)
                    return problem(UseFault::PinTwice, {pin.balloon, m_weeks.monday(week)}, at("/week"));
            const auto stops = stopsOf(pin.balloon, week);
            if (stops.empty())
                return problem(UseFault::PinWhereClosed, {m_weeks.monday(week)}, at("/week"));
            const auto atOnce = m_asked.stations.stations[stops.front()].atOnce;
            if (stops.size() == 1 && ++taken[{stops.front(), week}] > atOnce)
                return problem(UseFault::PinsTooMany,
                               {m_asked.stations.stations[stops.front()].name, m_weeks.monday(week), atOnce},
                               at("/week"));
        }
        return {};
    }
    [[nodiscard]] std::vector<std::size_t> stopsOf(const Registration& balloon, int week) {
        const auto work = workOf(balloon, {}, m_items, m_ground, m_asked.risk);
        std::vector<std::size_t> stations;
        for (const auto& stop : work.question.stops)
            if (stop.week == week)
                stations.push_back(stop.station);
        return stations;
    }

    /// Of the chance what may be taken between two visits, so that all of its cheapest plan keep to it.
    double shareOf(const Registration& balloon, const std::vector<const DueRow*>& rows) {
        double share = m_asked.risk;
        double least = std::numeric_limits<double>::infinity();
        int inVain = 0;
        for (int times = 0; times < mostShares && !m_stop.stop_requested(); ++times) {
            const auto work = workOf(balloon, rows, m_items, m_ground, share);
            const auto plan = goodPlan(work.question);
            const double chance = plan ? chanceOfLapse(work, *plan, m_weeks) : 0;
            if (chance <= m_asked.risk)
                return share;
            inVain = chance < least ? 0 : inVain + 1;
            least = std::min(least, chance);
            if (inVain == mostInVain)
                break;
            share *= std::min(0.9 * m_asked.risk / chance, 0.9);
        }
        m_hopeless.insert(balloon);
        return share;
    }
    /// Even alone it is not kept to the chance.
    [[nodiscard]] bool isHopeless(const Registration& balloon) const { return m_hopeless.contains(balloon); }

    std::vector<BalloonWork> worksBy(const std::map<Registration, double>& shares) {
        std::vector<BalloonWork> works;
        double late = 0;
        for (const auto& [balloon, rows] : m_rows) {
            works.push_back(workOf(balloon, rows, m_items, m_ground, shares.at(balloon)));
            late = std::max(late, works.back().question.lateWeek);
        }
        for (auto& work : works)
            work.question.lateWeek = late;
        return works;
    }

    FleetQuestion fleetOf(const std::vector<BalloonWork>& works) const {
        FleetQuestion question;
        for (const auto& work : works)
            question.balloons.push_back(work.question);
        for (const auto& station : m_asked.stations.stations)
            question.atOnce.emplace_back(static_cast<std::size_t>(m_weeks.count), station.atOnce);
        return question;
    }

    FleetVisits told(const std::vector<BalloonWork>& works, const FleetPlan& plan, double chance) const {
        FleetVisits visits;
        visits.balloons = works.size();
        visits.first = m_weeks.first;
        visits.weeks = m_weeks.count;
        visits.cost = plan.cost;
        visits.bound = plan.bound;
        visits.gap = plan.gap;
        visits.chance = std::min(chance, 1.0); // a sum of chances
        for (std::size_t balloon = 0; balloon < works.size(); ++balloon) {
            visits.whenDue += planWhenDue(works[balloon].question).cost;
            tell(works[balloon], plan.plans[balloon], m_ground, visits);
        }
        std::ranges::sort(visits.visits, {}, [](const PlannedStay& stay) { return std::tie(stay.week, stay.balloon); });
        for (const auto& row : m_due.rows)
            if (isPlannedFor(row) && !row.item->out &&
                (!row.item->balloon || (row.state.because == Because::Exempt && !rides(row))))
                visits.leftOut.push_back({plannedRowOf(row), row.item->balloon.has_value()});
        return visits;
    }

    const PlanAsked& m_asked;
    const DueList& m_due;
    ItemsAhead& m_items;
    const std::stop_token& m_stop;
    PlanWeeks m_weeks;
    PlanGround m_ground;
    std::map<Registration, std::vector<const DueRow*>> m_rows;
    std::set<Registration> m_hopeless;
};

}

Result<FleetVisits> plannedVisits(Books& books, const PlanAsked& asked, const std::stop_token& stop) {
    const auto list = due(books, {}, asked.known);
    if (!list)
        return tl::unexpected(list.error());
    auto items = ItemsAhead::read(books, *list, asked.known, ItemsAhead::Wanted::Always);
    if (!items)
        return tl::unexpected(items.error());
    return Planning(asked, *list, *items, stop).plan();
}

}
