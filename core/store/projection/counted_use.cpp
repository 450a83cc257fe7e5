// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/projection/counted_use.h"

#include "store/projection/usage_row.h"

namespace crownring {

CountedUse::CountedUse(const Connection& connection, FlightTotals& totals)
    : m_totals(totals),
      m_readStays(connection, "SELECT balloon_no, from_at, from_id, until_at, until_id, in_minutes, in_landings,"
                              " in_inflations, out_minutes, out_landings, out_inflations FROM stay WHERE item_no = ?"
                              " ORDER BY from_at, from_id"),
      m_readKits(connection, "SELECT at, entry_id, minutes, landings, inflations FROM kit_flight"
                             " WHERE item_no = ? AND at >= ? ORDER BY at, entry_id") {}

void CountedUse::load(std::int64_t item, CivilDate entered) {
    m_entered = entered;
    m_stays.clear();
    m_kits.clear();
    m_readStays.run(item);
    while (m_readStays.next()) {
        CountedStay stay;
        stay.balloon = m_readStays.read<std::int64_t>();
        stay.from.at = m_readStays.read<Moment>();
        stay.from.id = m_readStays.read<EntryId>();
        const auto until = m_readStays.read<std::optional<Moment>>();
        const auto untilId = m_readStays.read<EntryId>();
        if (until)
            stay.until = Stamp{*until, untilId};
        stay.in = usageFrom(m_readStays);
        stay.out = usageFrom(m_readStays);
        m_stays.push_back(std::move(stay));
    }
    m_readKits.run(item, Moment::startOf(entered).minutes());
    while (m_readKits.next()) {
        KitFlight flight;
        flight.stamp.at = m_readKits.read<Moment>();
        flight.stamp.id = m_readKits.read<EntryId>();
        flight.use = usageFrom(m_readKits);
        m_kits.push_back(std::move(flight));
    }
}

Usage CountedUse::before(const Stamp& stamp) {
    const auto [use, balloon] = countedBefore(stamp);
    return balloon ? use + m_totals.before(*balloon, stamp) : use;
}

CountedUse::Counted CountedUse::countedBefore(const Stamp& stamp) const {
    Counted counted;
    if (stamp < Stamp::before(Moment::startOf(m_entered)))
        return counted;
    for (const auto& stay : m_stays) {
        if (!(stay.from < stamp))
            break;
        const bool over = stay.until && !(stamp < *stay.until);
        counted.use = counted.use + (over ? stay.out : Usage{}) - stay.in;
        if (!over)
            counted.balloon = stay.balloon;
    }
    for (const auto& kit : m_kits)
        if (kit.stamp < stamp)
            counted.use += kit.use;
    return counted;
}

}
