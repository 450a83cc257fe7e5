// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "registry/books.h"

#include <map>
#include <optional>
#include <utility>

namespace crownring {

/// Hours of items at the ends of days, asked of the record all together.
class FlownHours {
public:
    void want(const ItemId& item, CivilDate day) { m_clocks.emplace(std::pair(item, day), std::nullopt); }
    Result<void> read(Books& books);

    /// Nothing before it was entered: that history is on paper only. MissingKey where its clock is not known.
    /// @pre it was wanted and read
    [[nodiscard]] Result<std::optional<Hours>> at(const ItemId& item, CivilDate day) const;

private:
    std::map<std::pair<ItemId, CivilDate>, std::optional<Figures>> m_clocks;
};

}
