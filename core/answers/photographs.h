// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Which photographs a defect was found with.

#include "registry/books.h"

namespace crownring {

/// Digests, as the entry that found it says now; none where it says none.
[[nodiscard]] Result<std::vector<std::string>> photographsOf(Books& books, const DefectMark& found);

}
