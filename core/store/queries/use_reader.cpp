// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/use_reader.h"

#include <algorithm>

namespace crownring {

namespace {

Usage usageIn(Statement& row) {
    Usage use;
    use.minutes = row.read<Minutes>();
    use.landings = row.read<Landings>();
    use.inflations = row.read<Inflations>();
    return use;
}

void add(UseLog& log, std::int64_t at, const Usage& use) {
    const auto on = Moment(at).on();
    if (log.days.empty() || log.days.back().on != on)
        log.days.push_back({on, 0, {}});
    ++log.days.back().flights;
    log.days.back().use += use;
}

}

UseReader::UseReader(const Connection& connection, Names& names, CivilDate first, CivilDate last)
    : m_names(names), m_first(first), m_last(last), m_from(Moment::startOf(first).minutes()),
      m_until(Moment::endOf(last).minutes()),
      m_all(connection, "SELECT item_no FROM item_entered WHERE stands = 1 AND day <= ? ORDER BY item_no"),
      m_entered(connection, "SELECT day FROM item_entered WHERE item_no = ? AND stands = 1 AND day <= ?"),
      m_stays(connection, "SELECT balloon_no, from_at, until_at FROM stay WHERE item_no = ? AND from_at < ?"
                          " AND (until_at IS NULL OR until_at > ?) ORDER BY from_at, from_id"),
      m_kits(connection, "SELECT at, minutes, landings, inflations FROM kit_flight WHERE item_no = ? AND at >= ?"
                         " AND at < ? ORDER BY at, entry_id"),
      m_flights(connection, "SELECT at, minutes, landings, inflations FROM flight WHERE balloon_no = ? AND at >= ?"
                            " AND at < ? AND counted = 1 ORDER BY at, entry_id") {}

UseLogs UseReader::readAll() {
    m_names.readAll();
    std::vector<std::int64_t> items;
    m_all.run(m_last.dayNumber());
    while (m_all.next())
        items.push_back(m_all.read<std::int64_t>());
    return read(items);
}

UseLogs UseReader::read(std::span<const std::int64_t> items) {
    for (const auto item : items)
        take(item);
    return std::move(m_logs);
}

void UseReader::take(std::int64_t item) {
    const auto entered = enteredOn(item);
    if (!entered)
        return;
    Way way{std::max(*entered, m_first), {}, {}};
    const auto begins = Moment::startOf(way.entered).minutes();
    m_stays.run(item, m_until, begins);
    while (m_stays.next()) {
        OnBalloon stay;
        stay.balloon = m_stays.read<std::int64_t>();
        stay.from = std::max(m_stays.read<Moment>().minutes(), begins);
        const auto until = m_stays.read<std::optional<Moment>>();
        stay.until = until ? std::min(until->minutes(), m_until) : m_until;
        way.stays.push_back(stay);
    }
    m_kits.run(item, begins, m_until);
    while (m_kits.next()) {
        Flight flight;
        flight.at = m_kits.read<Moment>().minutes();
        flight.use = usageIn(m_kits);
        way.kits.push_back(flight);
    }
    const ItemId id(m_names.text(item));
    if (!way.kits.empty()) {
        m_logs.ofItem.emplace(id, m_logs.logs.size());
        m_logs.logs.push_back(logOf(way));
        return;
    }
    const auto [shared, isNew] = m_shared.emplace(std::pair(way.entered, way.stays), m_logs.logs.size());
    if (isNew)
        m_logs.logs.push_back(logOf(way));
    m_logs.ofItem.emplace(id, shared->second);
}

UseLog UseReader::logOf(const Way& way) {
    UseLog log{way.entered, m_last, {}};
    auto kit = way.kits.begin();
    for (const auto& stay : way.stays) {
        const auto& flights = flightsOf(stay.balloon);
        auto flight = std::ranges::lower_bound(flights, stay.from, {}, &Flight::at);
        for (; flight != flights.end() && flight->at < stay.until; ++flight) {
            for (; kit != way.kits.end() && kit->at < flight->at; ++kit)
                add(log, kit->at, kit->use);
            add(log, flight->at, flight->use);
        }
    }
    for (; kit != way.kits.end(); ++kit)
        add(log, kit->at, kit->use);
    return log;
}

const std::vector<UseReader::Flight>& UseReader::flightsOf(std::int64_t balloon) {
    const auto [known, isNew] = m_flown.try_emplace(balloon);
    if (!isNew)
        return known->second;
    m_flights.run(balloon, m_from, m_until);
    while (m_flights.next()) {
        Flight flight;
        flight.at = m_flights.read<Moment>().minutes();
        flight.use = usageIn(m_flights);
        known->second.push_back(flight);
    }
    return known->second;
}

std::optional<CivilDate> UseReader::enteredOn(std::int64_t item) {
    m_entered.run(item, m_last.dayNumber());
    if (!m_entered.next())
        return std::nullopt;
    const auto entered = m_entered.read<CivilDate>();
    m_entered.finish();
    return entered;
}

}
