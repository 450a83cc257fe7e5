// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/projection/flight_totals.h"

#include "store/projection/usage_row.h"

#include <algorithm>
#include <string>
#include <utility>

namespace crownring {

FlightTotals::FlightTotals(const Connection& connection)
    : m_connection(connection),
      m_insert(connection,
               "INSERT INTO flight (balloon_no, at, entry_id, counted, timed, minutes, landings, inflations,"
               " minutes_to, landings_to, inflations_to) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"),
      m_remove(connection, "DELETE FROM flight WHERE balloon_no = ? AND at = ? AND entry_id = ?"),
      m_before(connection, "SELECT minutes_to, landings_to, inflations_to FROM flight WHERE balloon_no = ?"
                           " AND (at, entry_id) < (?, ?) ORDER BY at DESC, entry_id DESC LIMIT 1"),
      m_last(connection, "SELECT at, entry_id, minutes_to, landings_to, inflations_to FROM flight WHERE balloon_no = ?"
                         " ORDER BY at DESC, entry_id DESC LIMIT 1"),
      m_accumulate(connection,
                   "UPDATE flight SET minutes_to = sums.minutes, landings_to = sums.landings,"
                   " inflations_to = sums.inflations FROM (SELECT at, entry_id,"
                   " CAST(? + SUM(counted * minutes) OVER span AS BIGINT) AS minutes,"
                   " CAST(? + SUM(counted * landings) OVER span AS BIGINT) AS landings,"
                   " CAST(? + SUM(counted * inflations) OVER span AS BIGINT) AS inflations"
                   " FROM flight WHERE balloon_no = ? AND (at, entry_id) >= (?, ?)"
                   " WINDOW span AS (ORDER BY at, entry_id)) AS sums"
                   " WHERE flight.balloon_no = ? AND flight.at = sums.at AND flight.entry_id = sums.entry_id"),
      m_dropFlown(connection, "DELETE FROM flown WHERE balloon_no = ?"),
      m_putFlown(
          connection,
          "INSERT INTO flown (balloon_no, at, entry_id, minutes, landings, inflations, flights, logged_minutes,"
          " logged_landings, logged_inflations) SELECT f.balloon_no, f.at, f.entry_id, f.minutes_to, f.landings_to,"
          " f.inflations_to, logged.flights, logged.minutes, logged.landings, logged.inflations FROM flight f"
          " JOIN (SELECT COUNT(*) AS flights, CAST(SUM(minutes) AS BIGINT) AS minutes,"
          " CAST(SUM(landings) AS BIGINT) AS landings, CAST(SUM(inflations) AS BIGINT) AS inflations FROM flight"
          " WHERE balloon_no = ?) logged ON 1 = 1 WHERE f.balloon_no = ?"
          " ORDER BY f.at DESC, f.entry_id DESC LIMIT 1") {}

FlightTotals::Tail& FlightTotals::tailOf(std::int64_t balloon) {
    if (const auto found = m_tails.find(balloon); found != m_tails.end())
        return found->second;
    Tail tail{Stamp::before(Moment(INT64_MIN / 2)), {}, true};
    m_last.run(balloon);
    if (m_last.next()) {
        tail.last.at = m_last.read<Moment>();
        tail.last.id = m_last.read<EntryId>();
        tail.totals = usageFrom(m_last);
        m_last.finish();
    }
    return m_tails.emplace(balloon, std::move(tail)).first->second;
}

void FlightTotals::changed(std::int64_t balloon, const Stamp& stamp) {
    const auto known = m_changes.find(balloon);
    if (known == m_changes.end())
        m_changes.emplace(balloon, stamp);
    else if (stamp < known->second)
        known->second = stamp;
}

void FlightTotals::add(std::int64_t balloon, const Entry& entry, const FlightLogged& flight) {
    auto& tail = tailOf(balloon);
    const auto stamp = stampOf(entry);
    const bool counted = !flight.kit;
    if (tail.last < stamp) {
        tail.last = stamp;
        if (counted)
            tail.totals += flight.use;
    } else {
        tail.settled = false;
    }
    changed(balloon, stamp);
    m_insert.run(balloon, stamp.at.minutes(), stamp.id, counted, entry.time.has_value(), flight.use.minutes,
                 flight.use.landings, flight.use.inflations, tail.totals.minutes, tail.totals.landings,
                 tail.totals.inflations);
}

void FlightTotals::remove(std::int64_t balloon, const Entry& entry) {
    const auto stamp = stampOf(entry);
    tailOf(balloon).settled = false;
    changed(balloon, stamp);
    m_remove.run(balloon, stamp.at.minutes(), stamp.id);
}

std::vector<FlightTotals::Change> FlightTotals::settle() {
    std::vector<Change> changes;
    for (const auto& [balloon, from] : std::exchange(m_changes, {})) {
        changes.push_back({balloon, from});
        if (!tailOf(balloon).settled) {
            const auto base = before(balloon, from);
            m_accumulate.run(base.minutes, base.landings, base.inflations, balloon, from.at.minutes(), from.id,
                             balloon);
            m_tails.erase(balloon);
        }
        m_dropFlown.run(balloon);
        m_putFlown.run(balloon, balloon);
    }
    return changes;
}

Usage FlightTotals::before(std::int64_t balloon, const Stamp& stamp) {
    m_before.run(balloon, stamp.at.minutes(), stamp.id);
    if (!m_before.next())
        return {};
    const auto use = usageFrom(m_before);
    m_before.finish();
    return use;
}

std::vector<Usage> FlightTotals::before(std::span<const Asked> asked) {
    constexpr std::size_t together = 300;
    std::vector<Usage> use(asked.size());
    for (std::size_t from = 0; from < asked.size(); from += together) {
        const auto part = asked.subspan(from, std::min(together, asked.size() - from));
        std::string text = "WITH asked(number, balloon_no, at) AS (VALUES (CAST(? AS BIGINT), CAST(? AS BIGINT),"
                           " CAST(? AS BIGINT))";
        for (std::size_t i = 1; i < part.size(); ++i)
            text += ", (?, ?, ?)";
        text += ") SELECT a.number, f.minutes_to, f.landings_to, f.inflations_to FROM flight f JOIN asked a"
                " ON f.balloon_no = a.balloon_no AND (f.at, f.entry_id) = (SELECT g.at, g.entry_id FROM flight g"
                " WHERE g.balloon_no = a.balloon_no AND g.at < a.at ORDER BY g.at DESC, g.entry_id DESC LIMIT 1)";
        Statement rows(m_connection, text.c_str());
        for (std::size_t i = 0; i < part.size(); ++i) {
            rows.bind(static_cast<std::int64_t>(from + i));
            rows.bind(part[i].balloon);
            rows.bind(part[i].before.minutes());
        }
        rows.runBound();
        while (rows.next()) {
            auto& of = use[static_cast<std::size_t>(rows.read<std::int64_t>())];
            of = usageFrom(rows);
        }
    }
    return use;
}

void FlightTotals::forget() {
    m_tails.clear();
    m_changes.clear();
}

}
