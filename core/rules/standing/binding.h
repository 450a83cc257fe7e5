// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Which items a requirement binds: its kinds, types and serial numbers, all of which must hold. See `binds` and
/// `compareSerials` in rules/programme/serial_order.h.

#include "rules/standing/standing.h"

#include <optional>

namespace crownring {

/// What the record would have to say of the item before the requirement is known to bind it: `Because::TypeMissing` or
/// `Because::SerialMissing`; empty when all is known.
[[nodiscard]] std::optional<Because> missingFact(const Requirement& requirement, const ItemFacts& item);

/// Does a balloon flown so call for the requirement?
[[nodiscard]] bool calledForBy(const Requirement& requirement, const std::vector<std::string>& operations);

}
