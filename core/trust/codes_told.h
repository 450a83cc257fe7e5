// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The codes of signatories that the record keeps.

#include "registry/books.h"
#include "trust/signatory_codes.h"

#include <optional>
#include <string>
#include <vector>

namespace crownring {

/// In the order of arrival.
[[nodiscard]] Result<std::vector<CodeSet>> codesTold(Books& books);

struct CodeState {
    bool isKnown = false; ///< the record knows a person of exactly that name: only such a one can have a code
    std::optional<CodeSet> kept;
};
[[nodiscard]] Result<CodeState> codeStateOf(Books& books, const std::string& person);

}
