// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the manuals of types state, as the record holds it up to a day.

#include "bench/reading/verdict.h"
#include "record/kinds/shop.h"
#include "registry/books.h"

#include <vector>

namespace crownring {

struct TypeBook {
    std::vector<TypeDescribed> types;
    std::vector<StatedLimit> limits; ///< the latest of each sort
};
[[nodiscard]] Result<TypeBook> typeBook(Books& books, CivilDate on);

}
