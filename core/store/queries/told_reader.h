// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Finds the entries that are about something: by what they say themselves, or in the history of an item or a balloon.

#include "registry/books.h"
#include "store/accounts/account.h"

#include <optional>
#include <string_view>
#include <utility>
#include <vector>

namespace crownring {

class ToldReader {
public:
    explicit ToldReader(const Connection& connection) : m_connection(connection) {}

    /// In the order of their stamps. @param number of the name that is asked for, where one is
    [[nodiscard]] std::vector<EntryId> told(const Told& asked, std::optional<std::int64_t> number);
    /// Which entries of a kind another one voids, and by which; whatever became of that.
    [[nodiscard]] std::vector<std::pair<EntryId, EntryId>> voided(std::string_view kind);
    /// Of all that is told of a sort, or of one name, whatever the day.
    [[nodiscard]] Account account(Subject sort, std::optional<std::int64_t> number);
    /// Latest first: an item's own entries, the flights and events of the balloons that it was on while it was, and the
    /// flights that name it.
    [[nodiscard]] std::vector<EntryId> ofItem(std::int64_t item, CivilDate on, int limit);
    /// Latest first.
    [[nodiscard]] std::vector<EntryId> ofBalloon(std::int64_t balloon, CivilDate on, int limit);

private:
    [[nodiscard]] std::vector<EntryId> history(const char* text, int times, std::int64_t number, CivilDate on,
                                               int limit);

    const Connection& m_connection;
};

}
