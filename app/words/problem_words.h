// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Problems of core as sentences.

#include "bench/release/release.h"
#include "problem/problem.h"

#include <QString>

namespace crownring::words {

/// What is wrong, one sentence without a full stop.
[[nodiscard]] QString message(const Problem& problem);
/// What to do about it; may be empty.
[[nodiscard]] QString mend(const Problem& problem);

/// The same of what stands in the way of a release; the rule is not in the mend.
[[nodiscard]] QString message(const Refusal& refusal);
[[nodiscard]] QString mend(const Refusal& refusal);

/// One line for a terminal: "fleet.jsonl:12: key 'minuts': not a key of flight.logged. Mend: …"
[[nodiscard]] QString line(const Problem& problem);

}
