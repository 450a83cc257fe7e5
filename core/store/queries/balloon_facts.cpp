// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/balloon_facts.h"

#include "store/projection/usage_row.h"
#include "store/queries/scoped.h"

namespace crownring {

BalloonFacts::BalloonFacts(const Connection& connection, Names& names, FlightTotals& totals, bool one)
    : m_names(names), m_totals(totals),
      m_entered(connection,
                scoped(one, "SELECT balloon_no, day, operations, title FROM balloon_entered WHERE stands = 1",
                       "balloon_no", "")
                    .c_str()),
      m_events(connection, scoped(one,
                                  "SELECT subject_no, at, entry_id, event, celsius, lasted FROM occurrence"
                                  " WHERE sort = 2",
                                  "subject_no", " ORDER BY subject_no, at, entry_id")
                               .c_str()),
      m_flown(connection, scoped(one,
                                 "SELECT balloon_no, at, minutes, landings, inflations, flights, logged_minutes, "
                                 "logged_landings, logged_inflations FROM flown WHERE 1 = 1",
                                 "balloon_no", "")
                              .c_str()),
      m_aloft(connection, "SELECT at, entry_id FROM flight WHERE balloon_no = ? AND counted = 1 AND at >= ? AND at < ?"
                          " AND at + minutes >= ?") {}

void BalloonFacts::begin() { m_known.clear(); }

Tally BalloonFacts::read(std::int64_t balloon) {
    m_known.erase(balloon);
    return readRows(balloon);
}

Tally BalloonFacts::readAll() {
    m_known.reserve(m_names.count());
    return readRows();
}

template <class... Of>
Tally BalloonFacts::readRows(const Of&... balloon) {
    Tally tally;
    m_entered.run(balloon...);
    while (m_entered.next()) {
        tally.add(m_entered.digest());
        auto& known = m_known[m_entered.read<std::int64_t>()];
        known.entered = m_entered.read<CivilDate>();
        known.operations = m_entered.read<std::vector<std::string>>();
    }
    m_events.run(balloon...);
    while (m_events.next()) {
        tally.add(m_events.digest());
        m_known[m_events.read<std::int64_t>()].events.push_back(occurrenceFrom(m_events));
    }
    m_flown.run(balloon...);
    while (m_flown.next()) {
        tally.add(m_flown.digest());
        auto& known = m_known[m_flown.read<std::int64_t>()];
        known.lastFlight = m_flown.read<Moment>();
        known.flown = usageFrom(m_flown);
    }
    return tally;
}

std::vector<Usage> BalloonFacts::flownBefore(const std::vector<FlightTotals::Asked>& asked) {
    std::vector<Usage> flown(asked.size());
    std::vector<std::size_t> places;
    std::vector<FlightTotals::Asked> earlier;
    for (std::size_t at = 0; at < asked.size(); ++at) {
        const auto known = m_known.find(asked[at].balloon);
        if (known == m_known.end() || !known->second.lastFlight)
            continue; // it never flew
        if (*known->second.lastFlight < asked[at].before) {
            flown[at] = known->second.flown;
            continue;
        }
        places.push_back(at);
        earlier.push_back(asked[at]);
    }
    const auto before = m_totals.before(earlier);
    for (std::size_t at = 0; at < places.size(); ++at)
        flown[places[at]] = before[at];
    return flown;
}

const std::vector<Occurrence>& BalloonFacts::events(std::int64_t balloon) const {
    static const std::vector<Occurrence> none;
    const auto known = m_known.find(balloon);
    return known == m_known.end() ? none : known->second.events;
}

bool BalloonFacts::flewIn(std::int64_t balloon, CivilDate on, const Stamp& from, const std::optional<Moment>& until,
                          const std::optional<EntryId>& untilId) {
    const auto start = Moment::startOf(on).minutes();
    const auto earliest = start - longestFlight.value();
    if (Moment::endOf(on) <= from.at || (until && until->minutes() < earliest))
        return false;
    m_aloft.run(balloon, earliest, Moment::endOf(on).minutes(), start);
    bool flew = false;
    while (m_aloft.next()) {
        Stamp flight;
        flight.at = m_aloft.read<Moment>();
        flight.id = m_aloft.read<EntryId>();
        flew = flew || (!(flight < from) && (!until || flight < Stamp{*until, untilId.value_or(EntryId())}));
    }
    return flew;
}

const std::vector<std::string>* BalloonFacts::operations(std::int64_t balloon, CivilDate on) const {
    const auto known = m_known.find(balloon);
    const bool entered = known != m_known.end() && known->second.entered && *known->second.entered <= on;
    return entered ? &known->second.operations : nullptr;
}

}
