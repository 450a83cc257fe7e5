// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/kit_at.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <set>

namespace crownring {

namespace {

/// What changed hands within a day: an item, or all that was on a balloon when it took another registration.
struct Moved {
    Stamp stamp;
    ItemId item;
    Registration balloon;
    bool fitted = true;
    std::optional<Registration> formerly{}; ///< all that was fitted to it
};

std::optional<Moved> movedBy(const Entry& entry) {
    if (const auto* fitted = std::get_if<ItemFitted>(&entry.body))
        return Moved{stampOf(entry), fitted->item, fitted->balloon, true};
    if (const auto* removed = std::get_if<ItemRemoved>(&entry.body))
        return Moved{stampOf(entry), removed->item, removed->balloon, false};
    if (const auto* renamed = std::get_if<BalloonRenamed>(&entry.body))
        return Moved{stampOf(entry), {}, renamed->to, true, renamed->balloon};
    return std::nullopt;
}

/// Parts go with what they are parts of.
std::set<ItemId> idsOf(const std::vector<ItemFacts>& items) {
    std::set<ItemId> ids;
    for (const auto& item : items)
        if (!item.carrier)
            ids.insert(item.id);
    return ids;
}

/// What moved on the day, told under the balloon or one of the items.
class DayOfMoves {
public:
    DayOfMoves(Books& books, CivilDate on) : m_books(books), m_on(on) {}

    Result<void> ask(const std::optional<Registration>& balloon, const std::optional<ItemId>& item) {
        constexpr int mostOfADay = 300;
        const auto lines = m_books.history(balloon, item, m_on, mostOfADay);
        if (!lines)
            return tl::unexpected(lines.error());
        for (const auto& line : *lines) {
            const auto& entry = nowOf(line);
            if (line.voided || line.unread || entry.on != m_on)
                continue;
            if (auto moved = movedBy(entry))
                m_moves.insert_or_assign(moved->stamp.id, std::move(*moved));
        }
        return {};
    }
    [[nodiscard]] std::vector<Moved> inOrder() const {
        std::vector<Moved> moves;
        for (const auto& [id, moved] : m_moves)
            moves.push_back(moved);
        std::ranges::sort(moves, {}, &Moved::stamp);
        return moves;
    }

private:
    Books& m_books;
    CivilDate m_on;
    std::map<EntryId, Moved> m_moves;
};

}

Result<std::vector<ItemId>> kitAt(Books& books, const Registration& balloon, const Stamp& at) {
    const auto on = at.at.on();
    const auto before = books.facts({balloon, {}}, addDays(on, -1));
    if (!before)
        return tl::unexpected(before.error());
    const auto after = books.facts({balloon, {}}, on);
    if (!after)
        return tl::unexpected(after.error());
    auto fitted = idsOf(*before);
    const auto later = idsOf(*after);
    DayOfMoves day(books, on);
    if (const auto asked = day.ask(balloon, std::nullopt); !asked)
        return tl::unexpected(asked.error());
    // Another balloon's fitting takes an item away, and is told under that balloon and the item alone.
    std::set<ItemId> concerned;
    std::ranges::set_symmetric_difference(fitted, later, std::inserter(concerned, concerned.end()));
    for (const auto& moved : day.inOrder())
        if (!moved.formerly)
            concerned.insert(moved.item);
    for (const auto& item : concerned)
        if (const auto asked = day.ask(std::nullopt, item); !asked)
            return tl::unexpected(asked.error());
    for (const auto& moved : day.inOrder()) {
        if (!(moved.stamp < at))
            break;
        if (moved.formerly) {
            if (moved.formerly == balloon) {
                fitted.clear();
                continue;
            }
            const auto over = kitAt(books, *moved.formerly, moved.stamp);
            if (!over)
                return over;
            fitted.insert(over->begin(), over->end());
        } else if (moved.fitted && moved.balloon == balloon) {
            fitted.insert(moved.item);
        } else if (moved.fitted || moved.balloon == balloon) {
            fitted.erase(moved.item);
        }
    }
    return std::vector<ItemId>(fitted.begin(), fitted.end());
}

}
