// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How each item of a due list will be flown, by its own log; where that is short, by its balloon's and the fleet's.

#include "answers/forecast/planned.h"
#include "forecast/dates.h"
#include "registry/books.h"
#include "rules/due/due_list.h"

#include <map>
#include <optional>
#include <tuple>
#include <unordered_map>
#include <unordered_set>

namespace crownring {

class ItemsAhead {
public:
    enum class Wanted {
        WhereLimited, ///< nothing is read where use limits no row by now
        Always,
    };
    /// The logs of the whole fleet are read wherever use limits a row, so that one balloon is told as in the whole
    /// list. @param due must outlive it
    /// @param known the last day of which the record is taken to hold what was flown
    static Result<ItemsAhead> read(Books& books, const DueList& due, CivilDate known,
                                   Wanted wanted = Wanted::WhereLimited);

    /// From the day after `known` on; null for what is out of service, which is not flown.
    [[nodiscard]] DatesAhead* datesOf(const ItemFacts& item);
    [[nodiscard]] const UseAhead* of(const ItemFacts& item) {
        const auto* dates = datesOf(item);
        return dates ? &dates->use() : nullptr;
    }
    [[nodiscard]] const Utilisation* utilisationOf(const ItemFacts& item);

private:
    ItemsAhead(const DueList& due, CivilDate known) : m_due(&due), m_known(known) {}
    Result<void> readAll(Books& books, Wanted wanted);
    Result<void> readBalloons(Books& books, const std::unordered_set<ItemId>& limited);
    [[nodiscard]] bool isShortOf(const ItemId& item) const;

    const DueList* m_due;
    CivilDate m_known;
    FleetPattern m_pattern;
    UseLogs m_logs;
    std::unordered_map<Registration, double> m_paces;
    PlansOfSubjects m_plans;
    std::map<std::tuple<std::size_t, std::optional<double>, PlansOfSubjects::Key>, std::optional<DatesAhead>> m_ahead;
};

/// The same of every item, read when the first one is asked for.
class ItemsAheadWhenAsked {
public:
    /// @param due must outlive it
    ItemsAheadWhenAsked(Books& books, const DueList& due, CivilDate known)
        : m_books(books), m_due(due), m_known(known) {}
    /// Null as in `ItemsAhead::of`.
    [[nodiscard]] Result<const UseAhead*> of(const ItemFacts& item);

private:
    Books& m_books;
    const DueList& m_due;
    CivilDate m_known;
    std::optional<ItemsAhead> m_items;
};

}
