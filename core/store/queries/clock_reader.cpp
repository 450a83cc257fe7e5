// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/clock_reader.h"

namespace crownring {

ClockReader::ClockReader(const Connection& connection, FlightTotals& totals)
    : m_totals(totals), m_use(connection, totals),
      m_entered(connection, "SELECT day, minutes, landings, inflations FROM item_entered WHERE item_no = ?"
                            " AND stands = 1"),
      m_done(connection, "SELECT at, entry_id, stated_minutes, stated_landings, stated_inflations, ref FROM done"
                         " WHERE item_no = ? ORDER BY at, entry_id"),
      m_releases(connection, true) {}

std::vector<std::optional<Figures>> ClockReader::read(std::span<const Asked> asked) {
    m_releases.begin();
    m_clocks.assign(asked.size(), std::nullopt);
    m_waiting.clear();
    m_flown.clear();
    std::map<std::int64_t, Places> items;
    for (std::size_t place = 0; place < asked.size(); ++place)
        items[asked[place].item].push_back(place);
    for (const auto& [item, places] : items)
        readItem(item, places, asked);
    const auto flown = m_totals.before(m_flown);
    for (std::size_t i = 0; i < m_waiting.size(); ++i) {
        auto& clock = m_clocks[m_waiting[i].place];
        clock = *clock + (m_waiting[i].counted + flown[i]);
    }
    return std::move(m_clocks);
}

void ClockReader::readItem(std::int64_t item, const Places& places, std::span<const Asked> asked) {
    const auto origin = originOf(item);
    if (!origin)
        return;
    m_use.load(item, origin->entered);
    const auto& forward = origin->broughtForward;
    const bool known = forward.minutes && forward.landings && forward.inflations;
    for (const auto place : places) {
        const auto day = asked[place].day;
        const auto end = Stamp::before(Moment::endOf(day));
        if (day < origin->entered)
            continue;
        if (!known) {
            m_clocks[place] = clockBefore(end, *origin, doneOn(item, end.at),
                                          [&](const Stamp& stamp) { return m_use.before(stamp); });
            continue;
        }
        const auto [use, balloon] = m_use.countedBefore(end);
        m_clocks[place] = forward;
        if (balloon) {
            m_waiting.push_back({place, use});
            m_flown.push_back({*balloon, end.at});
        } else {
            m_clocks[place] = forward + use;
        }
    }
}

std::optional<ClockOrigin> ClockReader::originOf(std::int64_t item) {
    m_entered.run(item);
    if (!m_entered.next())
        return std::nullopt;
    ClockOrigin origin;
    origin.entered = m_entered.read<CivilDate>();
    origin.broughtForward.minutes = m_entered.read<std::optional<Minutes>>();
    origin.broughtForward.landings = m_entered.read<std::optional<Landings>>();
    origin.broughtForward.inflations = m_entered.read<std::optional<Inflations>>();
    m_entered.finish();
    return origin;
}

std::vector<Accomplishment> ClockReader::doneOn(std::int64_t item, Moment end) {
    std::vector<Accomplishment> done;
    m_done.run(item);
    while (m_done.next()) {
        Accomplishment each;
        each.stamp.at = m_done.read<Moment>();
        each.stamp.id = m_done.read<EntryId>();
        each.stated.minutes = m_done.read<std::optional<Minutes>>();
        each.stated.landings = m_done.read<std::optional<Landings>>();
        each.stated.inflations = m_done.read<std::optional<Inflations>>();
        const auto ref = m_done.read<std::optional<std::string>>();
        if (!ref || !m_releases.of(*ref).isWithheld(end))
            done.push_back(std::move(each));
    }
    return done;
}

}
