// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/balloon_reader.h"

#include "store/projection/usage_row.h"

#include <algorithm>
#include <unordered_map>

namespace crownring {

namespace {

/// What each was called before and is called since; one that took its former registration back has it again.
void noteNames(std::vector<BalloonCard>& cards, const std::vector<Renaming>& renamings) {
    const auto cardOf = [&](const Registration& balloon) -> BalloonCard* {
        const auto at = std::ranges::lower_bound(cards, balloon, {}, &BalloonCard::balloon);
        return at == cards.end() || at->balloon != balloon ? nullptr : &*at;
    };
    for (const auto& renaming : renamings) {
        if (auto* former = cardOf(renaming.from))
            former->renamed = renaming;
        if (auto* taken = cardOf(renaming.to)) {
            taken->before = renaming;
            taken->renamed.reset();
        }
    }
}

}

BalloonReader::BalloonReader(const Connection& connection, Names& names)
    : m_names(names),
      m_entered(connection,
                "SELECT balloon_no, day, title, operations FROM balloon_entered WHERE stands = 1 AND day <= ?"),
      m_fittings(connection, "SELECT balloon_no, COUNT(*) FROM stay WHERE from_at < ?"
                             " AND (until_at IS NULL OR until_at >= ?) GROUP BY balloon_no"),
      // Flights are added up only where some came after the day.
      m_flown(
          connection,
          "SELECT balloon_no, flights, logged_minutes, logged_landings, logged_inflations, at FROM flown WHERE at < ?"
          " UNION ALL SELECT f.balloon_no, COUNT(*), CAST(SUM(f.minutes) AS BIGINT),"
          " CAST(SUM(f.landings) AS BIGINT), CAST(SUM(f.inflations) AS BIGINT), MAX(f.at) FROM flight f"
          " JOIN flown w ON w.balloon_no = f.balloon_no AND w.at >= ? WHERE f.at < ? GROUP BY f.balloon_no"),
      m_fitted(connection, "SELECT item_no FROM stay WHERE balloon_no = ? AND from_at < ?"
                           " AND (until_at IS NULL OR until_at >= ?) ORDER BY item_no"),
      m_flights(connection, "SELECT at, entry_id, timed, minutes, landings, inflations FROM flight"
                            " WHERE balloon_no = ? AND at >= ? AND at < ? ORDER BY at, entry_id"),
      m_fittedRows(connection), m_service(connection) {}

std::vector<BalloonCard> BalloonReader::cards(CivilDate on) {
    const auto end = Moment::endOf(on).minutes();
    m_names.readAll();
    std::vector<std::pair<std::int64_t, BalloonCard>> entered;
    m_entered.run(on.dayNumber());
    while (m_entered.next()) {
        auto& [number, card] = entered.emplace_back();
        number = m_entered.read<std::int64_t>();
        card.balloon = Registration(m_names.text(number));
        card.entered = m_entered.read<CivilDate>();
        card.title = m_entered.read<std::string>();
        card.operations = m_entered.read<std::vector<std::string>>();
    }
    std::ranges::sort(entered, {}, [](const auto& each) -> const Registration& { return each.second.balloon; });
    std::vector<BalloonCard> cards;
    std::unordered_map<std::int64_t, std::size_t> places;
    for (auto& [number, card] : entered) {
        places.emplace(number, cards.size());
        cards.push_back(std::move(card));
    }
    const auto cardOf = [&](std::int64_t balloon) -> BalloonCard* {
        const auto place = places.find(balloon);
        return place == places.end() ? nullptr : &cards[place->second];
    };
    m_fittings.run(end, end);
    while (m_fittings.next())
        if (auto* card = cardOf(m_fittings.read<std::int64_t>()))
            card->items = m_fittings.read<std::int64_t>();
    m_flown.run(end, end, end);
    while (m_flown.next())
        if (auto* card = cardOf(m_flown.read<std::int64_t>())) {
            card->flights = m_flown.read<std::int64_t>();
            card->flown = usageFrom(m_flown);
            card->lastFlight = m_flown.read<Moment>().on();
        }
    for (auto& [number, out] : m_service.allOut(Subject::Balloon, Moment::endOf(on)))
        if (auto* card = cardOf(number))
            card->out = std::move(out);
    noteNames(cards, m_service.renamings(Moment::endOf(on)));
    return cards;
}

std::vector<std::int64_t> BalloonReader::fittedTo(std::int64_t balloon, CivilDate on) {
    const auto end = Moment::endOf(on).minutes();
    std::vector<std::int64_t> items;
    m_fitted.run(balloon, end, end);
    while (m_fitted.next())
        items.push_back(m_fitted.read<std::int64_t>());
    return items;
}

std::vector<LoggedFlight> BalloonReader::flights(const Registration& registration, std::int64_t balloon,
                                                 CivilDate first, CivilDate last) {
    std::vector<LoggedFlight> flights;
    m_flights.run(balloon, Moment::startOf(first).minutes(), Moment::endOf(last).minutes());
    while (m_flights.next()) {
        LoggedFlight flight;
        flight.balloon = registration;
        flight.stamp.at = m_flights.read<Moment>();
        flight.stamp.id = m_flights.read<EntryId>();
        flight.timed = m_flights.read<bool>();
        flight.use = usageFrom(m_flights);
        flights.push_back(std::move(flight));
    }
    return flights;
}

}
