// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the record does not take from anybody, screen, crownringctl or a shop's own system. All meet one table of
/// checks, and what cannot be asked is refused: no check is passed because something could not be read.

#include "gate/check.h"

namespace crownring {

[[nodiscard]] std::span<const Check> allChecks();

/// Everything that stands against the batch; empty when it may become durable.
[[nodiscard]] std::vector<Problem> refusalsOf(const Batch& batch, std::span<const Check> checks = allChecks());

}
