// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Reviews that were signed and that the record, as it is now, would refuse: the authorisation withdrawn since, a
/// defect written down later and dated before. They count until they are voided.

#include "record/entry.h"
#include "registry/books.h"
#include "rules/due/due_list.h"

#include <vector>

namespace crownring {

/// The reviews that rows count from and that lost their ground, each as it stands now; the rows are marked
/// (`Assessment::unsupported`). Each asks for a due list of its balloon on its day, so this is for a balloon or a kit.
[[nodiscard]] Result<std::vector<Entry>> markUnsupportedReviews(Books& books, std::vector<DueRow>& rows, CivilDate on);

}
