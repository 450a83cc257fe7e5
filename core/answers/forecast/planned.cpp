// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/forecast/planned.h"

#include <algorithm>

namespace crownring {

namespace {

Registration asNow(Registration balloon, const std::vector<Renaming>& renamings) {
    for (const auto& renaming : renamings)
        if (renaming.from == balloon)
            balloon = renaming.to;
    return balloon;
}

class Hearing {
public:
    Hearing(CivilDate from, CivilDate known, const std::vector<Renaming>& renamings)
        : m_from(from), m_known(known), m_renamings(renamings) {}

    void hear(const Entry& entry) {
        std::visit([&](const auto& body) { take(entry, body); }, entry.body);
    }
    Planned planned;

private:
    template <class Said>
    void take(const Entry&, const Said&) {}
    void take(const Entry& entry, UsePlanned plan) {
        if (m_known < entry.on || plan.to.value_or(CivilDate::last()) < m_from)
            return;
        if (auto* balloon = std::get_if<Registration>(&plan.subject))
            *balloon = asNow(*balloon, m_renamings);
        planned.use.push_back({stampOf(entry), std::move(plan)});
    }
    void take(const Entry& entry, FlightPlanned flight) {
        if (entry.on < m_from)
            return;
        flight.balloon = asNow(flight.balloon, m_renamings);
        planned.flights.push_back({stampOf(entry), entry.time.has_value(), std::move(flight), entry.note});
    }
    void take(const Entry& entry, VisitPlanned visit) {
        if (m_known < entry.on || visit.to < m_from)
            return;
        visit.balloon = asNow(visit.balloon, m_renamings);
        planned.visits.push_back({stampOf(entry), std::move(visit), entry.note});
    }

    CivilDate m_from;
    CivilDate m_known;
    const std::vector<Renaming>& m_renamings;
};

}

Result<Planned> plannedFrom(Books& books, CivilDate from, CivilDate known) {
    const auto renamings = books.renamings(known);
    if (!renamings)
        return tl::unexpected(renamings.error());
    Hearing hearing(from, known, *renamings);
    for (const auto& asked : {Told{Subject::Balloon,
                                   {},
                                   {kindName<UsePlanned>(), kindName<FlightPlanned>(), kindName<VisitPlanned>()},
                                   CivilDate::last()},
                              Told{Subject::Item, {}, {kindName<UsePlanned>()}, CivilDate::last()}}) {
        const auto told = books.told(asked);
        if (!told)
            return tl::unexpected(told.error());
        for (const auto& line : *told)
            if (!line.unread)
                hearing.hear(nowOf(line));
    }
    std::ranges::sort(hearing.planned.use, {}, &UseAheadStated::stated);
    std::ranges::sort(hearing.planned.flights, {}, &FlightAhead::at);
    std::ranges::sort(hearing.planned.visits, {},
                      [](const VisitAhead& each) { return std::pair(each.visit.from, each.stated); });
    return std::move(hearing.planned);
}

PlansOfSubjects::PlansOfSubjects(const Planned& planned) {
    for (const auto& [stated, plan] : planned.use) {
        const StatedPlan pace{plan.from, plan.to.value_or(CivilDate::last()), plan.times, plan.flightsAWeek, {}};
        if (const auto* item = itemAhead(plan))
            m_ofItems[*item].paces.push_back(pace);
        else
            m_ofBalloons[*balloonAhead(plan)].paces.push_back(pace);
    }
    for (const auto& ahead : planned.flights) {
        const auto on = ahead.at.at.on();
        if (!ahead.flight.kit)
            m_ofBalloons[ahead.flight.balloon].flown[on] += ahead.flight.use;
        else
            for (const auto& item : *ahead.flight.kit)
                m_ofItems[item].flown[on] += ahead.flight.use;
    }
}

PlansOfSubjects::Key PlansOfSubjects::keyOf(const std::optional<Registration>& balloon,
                                            const std::optional<ItemId>& item) const {
    Key key;
    if (balloon && m_ofBalloons.contains(*balloon))
        key.balloon = balloon;
    if (item && m_ofItems.contains(*item))
        key.item = item;
    return key;
}

std::vector<StatedPlan> PlansOfSubjects::of(const Key& key) const {
    const auto* balloon = key.balloon ? &m_ofBalloons.at(*key.balloon) : nullptr;
    const auto* item = key.item ? &m_ofItems.at(*key.item) : nullptr;
    std::vector<StatedPlan> plans;
    std::map<CivilDate, Usage> flown;
    for (const auto* each : {balloon, item}) {
        if (!each)
            continue;
        plans.insert(plans.end(), each->paces.begin(), each->paces.end());
        for (const auto& [on, use] : each->flown)
            flown[on] += use;
    }
    for (const auto& [on, use] : flown)
        plans.push_back({on, on, {}, {}, use});
    return plans;
}

}
