// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/use_reader.h"

#include "store/projection/usage_row.h"
#include "store/queries/scoped.h"

#include <algorithm>

namespace crownring {

namespace {

void addFlight(UseLog& log, std::int64_t at, const Usage& use) {
    const auto on = Moment(at).on();
    if (log.days.empty() || log.days.back().on != on)
        log.days.push_back({on, 0, {}});
    ++log.days.back().flights;
    log.days.back().use += use;
}

std::string enteredText(bool one) {
    return crownring::scoped(one, "SELECT item_no, day FROM item_entered WHERE stands = 1 AND day <= ?", "item_no",
                             " ORDER BY item_no");
}
std::string staysText(bool one) {
    return crownring::scoped(
        one,
        "SELECT item_no, balloon_no, from_at, from_id, until_at, until_id FROM stay WHERE from_at < ?"
        " AND (until_at IS NULL OR until_at >= ?)",
        "item_no", " ORDER BY item_no, from_at, from_id");
}
std::string kitsText(bool one) {
    return crownring::scoped(
        one, "SELECT item_no, at, minutes, landings, inflations FROM kit_flight WHERE at >= ? AND at < ?", "item_no",
        " ORDER BY item_no, at, entry_id");
}

}

UseReader::UseReader(const Connection& connection, Names& names, CivilDate first, CivilDate last)
    : m_names(names), m_first(first), m_last(last), m_from(Moment::startOf(first)), m_until(Moment::endOf(last)),
      m_allEntered(connection, enteredText(false).c_str()), m_entered(connection, enteredText(true).c_str()),
      m_allStays(connection, staysText(false).c_str()), m_stays(connection, staysText(true).c_str()),
      m_allKits(connection, kitsText(false).c_str()), m_kits(connection, kitsText(true).c_str()),
      m_flights(connection, "SELECT at, minutes, landings, inflations FROM flight WHERE balloon_no = ? AND at >= ?"
                            " AND at < ? AND counted = 1 ORDER BY at, entry_id"),
      m_before(connection, "SELECT COUNT(*) FROM flight WHERE balloon_no = ? AND at = ? AND entry_id < ?"
                           " AND counted = 1") {}

UseLogs UseReader::readAll() {
    m_names.readAll();
    m_allStays.run(m_until.minutes(), m_from.minutes());
    readStays(m_allStays);
    m_allKits.run(m_from.minutes(), m_until.minutes());
    readKits(m_allKits);
    std::vector<std::pair<std::int64_t, CivilDate>> entered;
    m_allEntered.run(m_last.dayNumber());
    while (m_allEntered.next()) {
        const auto item = m_allEntered.read<std::int64_t>();
        entered.emplace_back(item, m_allEntered.read<CivilDate>());
    }
    for (const auto& [item, day] : entered)
        take(item, day);
    return std::move(m_logs);
}

UseLogs UseReader::read(std::span<const std::int64_t> items) {
    for (const auto item : items) {
        m_entered.run(m_last.dayNumber(), item);
        if (!m_entered.next())
            continue;
        m_entered.skip();
        const auto entered = m_entered.read<CivilDate>();
        m_entered.finish();
        m_stays.run(m_until.minutes(), m_from.minutes(), item);
        readStays(m_stays);
        m_kits.run(m_from.minutes(), m_until.minutes(), item);
        readKits(m_kits);
        take(item, entered);
    }
    return std::move(m_logs);
}

void UseReader::readStays(Statement& rows) {
    while (rows.next()) {
        auto& stays = m_ways[rows.read<std::int64_t>()].stays;
        Stay stay;
        stay.balloon = rows.read<std::int64_t>();
        stay.from.at = rows.read<Moment>();
        stay.from.id = rows.read<EntryId>();
        const auto until = rows.read<std::optional<Moment>>();
        const auto untilId = rows.read<EntryId>();
        stay.until = until ? Stamp{*until, untilId} : Stamp::before(m_until);
        stays.push_back(std::move(stay));
    }
}

void UseReader::readKits(Statement& rows) {
    while (rows.next()) {
        auto& kits = m_ways[rows.read<std::int64_t>()].kits;
        Flight flight;
        flight.at = rows.read<Moment>().minutes();
        flight.use = usageFrom(rows);
        kits.push_back(flight);
    }
}

void UseReader::take(std::int64_t item, CivilDate entered) {
    const auto first = std::max(entered, m_first);
    const auto begins = Stamp::before(Moment::startOf(first));
    auto& way = m_ways[item];
    std::erase_if(way.kits, [&](const Flight& kit) { return kit.at < begins.at.minutes(); });
    std::vector<Run> runs;
    for (const auto& stay : way.stays) {
        const Run run{stay.balloon, placeOf(stay.balloon, std::max(stay.from, begins)),
                      placeOf(stay.balloon, std::min(stay.until, Stamp::before(m_until)))};
        if (run.from < run.until)
            runs.push_back(run);
    }
    const ItemId id(m_names.text(item));
    auto place = m_logs.logs.size();
    if (!way.kits.empty()) {
        m_logs.logs.push_back(logOf(first, runs, way.kits));
    } else {
        const auto [shared, isNew] = m_shared.emplace(std::tuple(first, runs), place);
        if (isNew)
            m_logs.logs.push_back(logOf(first, runs, {}));
        place = shared->second;
    }
    m_logs.ofItem.emplace(id, place);
    way = {};
}

UseLog UseReader::logOf(CivilDate first, const std::vector<Run>& runs, const Flights& kits) {
    UseLog log{first, m_last, {}};
    auto kit = kits.begin();
    const auto addKitsBefore = [&](std::int64_t at) {
        for (; kit != kits.end() && kit->at < at; ++kit)
            addFlight(log, kit->at, kit->use);
    };
    for (const auto& run : runs) {
        const auto& flights = flightsOf(run.balloon);
        for (auto flight = run.from; flight < run.until; ++flight) {
            addKitsBefore(flights[flight].at);
            addFlight(log, flights[flight].at, flights[flight].use);
        }
    }
    addKitsBefore(m_until.minutes());
    return log;
}

const UseReader::Flights& UseReader::flightsOf(std::int64_t balloon) {
    const auto [known, isNew] = m_flown.try_emplace(balloon);
    if (!isNew)
        return known->second;
    m_flights.run(balloon, m_from.minutes(), m_until.minutes());
    while (m_flights.next()) {
        Flight flight;
        flight.at = m_flights.read<Moment>().minutes();
        flight.use = usageFrom(m_flights);
        known->second.push_back(flight);
    }
    return known->second;
}

std::size_t UseReader::placeOf(std::int64_t balloon, const Stamp& stamp) {
    const auto& flights = flightsOf(balloon);
    const auto at = stamp.at.minutes();
    const auto found = std::ranges::lower_bound(flights, at, {}, &Flight::at);
    auto place = static_cast<std::size_t>(found - flights.begin());
    if (found == flights.end() || found->at != at || stamp.id.empty())
        return place;
    // Of flights of that very minute the ids decide.
    m_before.run(balloon, at, stamp.id);
    m_before.next();
    place += static_cast<std::size_t>(m_before.read<std::int64_t>());
    m_before.finish();
    return place;
}

}
