// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/plan/already_planned.h"

#include "answers/due.h"
#include "answers/plan/plan_weeks.h"

#include <algorithm>
#include <map>
#include <utility>

namespace crownring {

namespace {

using Why = LooseVisit::Why;

class Sorting {
public:
    Sorting(Books& books, const PlanAsked& asked, std::span<const EntryId> letGo)
        : m_books(books), m_asked(asked), m_letGo(letGo), m_weeks(PlanWeeks::from(asked.from, asked.months)) {
        for (const auto& pin : asked.pins)
            if (!pin.forbids && pin.station)
                ++m_taken[{*pin.station, m_weeks.weekOf(pin.day)}];
    }

    Result<AlreadyPlanned> sort() {
        const auto planned = plannedFrom(m_books, m_asked.from, m_asked.known);
        if (!planned)
            return tl::unexpected(planned.error());
        AlreadyPlanned already;
        for (const auto& ahead : planned->visits) {
            StandingVisit standing{ahead.stated.id, ahead.visit};
            const auto why = whyNot(standing);
            if (!why)
                return tl::unexpected(why.error());
            if (*why)
                already.loose.push_back({std::move(standing), **why});
            else
                already.held.push_back(std::move(standing));
        }
        return already;
    }

private:
    /// Why it is not held; nothing where it is, and it is held from then on.
    Result<std::optional<Why>> whyNot(const StandingVisit& standing) {
        const auto& visit = standing.visit;
        const int week = m_weeks.weekOf(visit.to);
        if (week < 0)
            return Why::Begun;
        if (week >= m_weeks.count)
            return Why::Beyond;
        if (std::ranges::find(m_letGo, standing.entry) != m_letGo.end() || isPinnedOtherwise(visit, week))
            return Why::LetGo;
        const auto station = m_asked.stations.find(visit.station);
        if (!station)
            return Why::NoStation;
        const auto& its = m_asked.stations.stations[*station];
        const auto first = m_weeks.monday(week);
        const auto last = m_weeks.signedOn(week);
        if (!its.isOpen(first, last) || m_asked.stations.isFlying(visit.balloon, first, last))
            return Why::Closed;
        const auto bound = isBound(visit.balloon);
        if (!bound)
            return tl::unexpected(bound.error());
        if (!*bound)
            return Why::NotBound;
        const auto [held, isNew] = m_heldAt.try_emplace({visit.balloon, week}, visit.station);
        if (!isNew)
            return held->second == visit.station ? std::nullopt : std::optional(Why::Elsewhere);
        if (isPinnedHere(visit, week))
            return std::nullopt;
        auto& taken = m_taken[{visit.station, week}];
        if (taken >= its.atOnce) {
            m_heldAt.erase(held);
            return Why::Full;
        }
        ++taken;
        return std::nullopt;
    }

    [[nodiscard]] bool isOfWeek(const VisitPin& pin, const VisitPlanned& visit, int week) const {
        return pin.balloon == visit.balloon && m_weeks.weekOf(pin.day) == week;
    }
    [[nodiscard]] bool isPinnedOtherwise(const VisitPlanned& visit, int week) const {
        return std::ranges::any_of(m_asked.pins, [&](const VisitPin& pin) {
            return isOfWeek(pin, visit, week) && pin.forbids == (!pin.station || *pin.station == visit.station);
        });
    }
    [[nodiscard]] bool isPinnedHere(const VisitPlanned& visit, int week) const {
        return std::ranges::any_of(m_asked.pins, [&](const VisitPin& pin) {
            return isOfWeek(pin, visit, week) && !pin.forbids && pin.station;
        });
    }
    /// Is anything on it that a row of the due list is about?
    Result<bool> isBound(const Registration& balloon) {
        const auto known = m_bound.find(balloon);
        if (known != m_bound.end())
            return known->second;
        const auto list = due(m_books, {balloon, {}}, m_asked.known);
        if (!list)
            return tl::unexpected(list.error());
        return m_bound[balloon] = std::ranges::any_of(
                   list->rows, [&](const DueRow& row) { return row.item->balloon == balloon && !row.item->out; });
    }

    Books& m_books;
    const PlanAsked& m_asked;
    std::span<const EntryId> m_letGo;
    PlanWeeks m_weeks;
    std::map<std::pair<std::string, int>, int> m_taken;
    std::map<std::pair<Registration, int>, std::string> m_heldAt;
    std::map<Registration, bool> m_bound;
};

}

Result<AlreadyPlanned> alreadyPlanned(Books& books, const PlanAsked& asked, std::span<const EntryId> letGo) {
    return Sorting(books, asked, letGo).sort();
}

PlanAsked holding(PlanAsked asked, const AlreadyPlanned& already) {
    const auto weeks = PlanWeeks::from(asked.from, asked.months);
    for (const auto& [entry, visit] : already.held) {
        const auto isPinned = [&, &visit = visit](const VisitPin& pin) {
            return pin.balloon == visit.balloon && !pin.forbids && weeks.weekOf(pin.day) == weeks.weekOf(visit.to);
        };
        const auto pin = std::ranges::find_if(asked.pins, isPinned);
        if (pin == asked.pins.end())
            asked.pins.push_back({visit.balloon, visit.to, visit.station, false, {}});
        else
            pin->station = visit.station; // where it goes to any, it goes there
    }
    return asked;
}

}
