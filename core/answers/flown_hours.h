// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "measure/amount.h"
#include "registry/books.h"

#include <map>
#include <optional>

namespace crownring {

/// Hours of an item at the ends of days; each day is asked for once.
class FlownHours {
public:
    FlownHours(Books& books, ItemId item) : m_books(books), m_item(std::move(item)) {}

    /// Nothing before it was entered: that history is on paper only. MissingKey where its clock is not known.
    Result<std::optional<Hours>> at(CivilDate day);

private:
    Books& m_books;
    ItemId m_item;
    std::map<CivilDate, std::optional<Hours>> m_known;
};

}
