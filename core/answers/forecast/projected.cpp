// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/forecast/projected.h"

#include "answers/forecast/fleet_use.h"
#include "answers/forecast/planned.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <unordered_map>
#include <unordered_set>

namespace crownring {

namespace {

class Projecting {
public:
    Projecting(Books& books, const DueList& due, CivilDate known) : m_books(books), m_due(due), m_known(known) {}

    Result<void> read() {
        std::unordered_set<ItemId> limited;
        for (const auto& row : m_due.rows)
            if (hangsOnUse(row.state) && !row.item->out)
                limited.insert(row.item->id);
        if (limited.empty())
            return {};
        auto logs = everyLog(m_books, m_known);
        if (!logs)
            return tl::unexpected(logs.error());
        m_logs = std::move(*logs);
        m_pattern = patternOf(m_logs, m_known);
        const auto planned = plannedFrom(m_books, addDays(m_known, 1), m_known);
        if (!planned)
            return tl::unexpected(planned.error());
        m_plans = PlansOfSubjects(*planned);
        return readBalloons(limited);
    }

    std::vector<std::optional<DateBand>> bands() {
        std::vector<std::optional<DateBand>> bands;
        bands.reserve(m_due.rows.size());
        for (const auto& row : m_due.rows) {
            auto* ahead = hangsOnUse(row.state) ? aheadOf(*row.item) : nullptr;
            bands.push_back(fallsDue(row.state, row.requirement->whichever, ahead, m_due.on));
            if (bands.back())
                notBefore(*bands.back(), m_due.on);
        }
        return bands;
    }

private:
    /// The paces of the balloons that items with short logs are on.
    Result<void> readBalloons(const std::unordered_set<ItemId>& limited) {
        std::unordered_set<Registration> wanted;
        for (const auto& item : m_due.items)
            if (item.balloon && limited.contains(item.id) && isShortOf(item.id))
                wanted.insert(*item.balloon);
        if (wanted.empty())
            return {};
        const auto cards = m_books.balloons(m_known);
        if (!cards)
            return tl::unexpected(cards.error());
        for (const auto& card : *cards) {
            if (!wanted.contains(card.balloon))
                continue;
            const auto log = logOf(m_books, card, m_known);
            if (!log)
                return tl::unexpected(log.error());
            if (const auto pace = flownPaceOf(*log, m_pattern))
                m_paces.emplace(card.balloon, *pace);
        }
        return {};
    }

    [[nodiscard]] bool isShortOf(const ItemId& item) const {
        const auto place = m_logs.ofItem.find(item);
        return place != m_logs.ofItem.end() && isShort(m_logs.logs[place->second]);
    }

    DatesAhead* aheadOf(const ItemFacts& item) {
        const auto place = m_logs.ofItem.find(item.id);
        if (item.out || place == m_logs.ofItem.end())
            return nullptr;
        std::optional<double> pace;
        if (item.balloon && isShortOf(item.id))
            if (const auto known = m_paces.find(*item.balloon); known != m_paces.end())
                pace = known->second;
        const auto planned = m_plans.keyOf(item.balloon, item.id);
        auto& ahead = m_ahead[{place->second, pace, planned}];
        if (!ahead)
            ahead.emplace(UseAhead(utilisationOf(inMonths(m_logs.logs[place->second]), m_pattern, pace),
                                   addDays(m_known, 1), m_plans.of(planned)));
        return &*ahead;
    }

    /// Of a day that is still to come nothing is known of the days before it: it is not due before it was asked for.
    static void notBefore(DateBand& band, CivilDate day) {
        for (auto* place : {&band.p10, &band.p50, &band.p90})
            if (*place)
                **place = std::max(**place, day);
    }

    Books& m_books;
    const DueList& m_due;
    CivilDate m_known;
    FleetPattern m_pattern;
    UseLogs m_logs;
    std::unordered_map<Registration, double> m_paces;
    PlansOfSubjects m_plans;
    std::map<std::tuple<std::size_t, std::optional<double>, PlansOfSubjects::Key>, std::optional<DatesAhead>> m_ahead;
};

}

Result<std::vector<std::optional<DateBand>>> projected(Books& books, const DueList& due, CivilDate known) {
    Projecting projecting(books, due, known);
    if (const auto read = projecting.read(); !read)
        return tl::unexpected(read.error());
    return projecting.bands();
}

}
