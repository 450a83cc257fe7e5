// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The codes of signatories that the record keeps.

#include "registry/books.h"
#include "trust/signatory_codes.h"

#include <vector>

namespace crownring {

/// In the order of arrival.
[[nodiscard]] Result<std::vector<CodeSet>> codesTold(Books& books);

}
