// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A name that stands in the record already, be it in another spelling: "d-oabc" is D-OABC.

#include "record/entry.h"
#include "registry/books.h"

#include <optional>

namespace crownring {

struct TakenName {
    enum class What { Balloon, Item };
    What what = What::Balloon;
    std::string name; ///< as the record has it
    CivilDate since;
};

/// @param entry asked of `balloon.entered` and `item.entered` only; on whatever day the other was entered
[[nodiscard]] Result<std::optional<TakenName>> takenName(Books& books, const Entry& entry);

}
