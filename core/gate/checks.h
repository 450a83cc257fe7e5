// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The checks of the gate, one a file; `allChecks` is their table.

#include "gate/check.h"

namespace crownring {

/// NotReleasable for a closing that is no abandoning, and for a deferral, while the record holds an entry that cannot
/// be read and is not voided: it may be what stands against them.
[[nodiscard]] Findings askUnreadEntries(const Batch& batch);

/// BadValue for a visit that is none, and for a checklist that breaks its schema.
[[nodiscard]] Findings askOpenings(const Batch& batch);

/// NotReleasable for a word on an inspection, and for the void of one, that arrives after its closing; the void of the
/// closing itself opens it again.
[[nodiscard]] Findings askClosedInspections(const Batch& batch);

/// NotReleasable, with every reason, for each closing that the rules refuse.
[[nodiscard]] Findings askClosings(const Batch& batch);

/// NotReleasable for a deferral, as written or as corrected, that is agreed to by somebody who may not.
[[nodiscard]] Findings askDeferrals(const Batch& batch);

/// NotReleasable for a clearing that is dated before all findings of its defect.
[[nodiscard]] Findings askClearings(const Batch& batch);

/// CannotAmend where a correction changes what a signature covers.
[[nodiscard]] Findings askSignedWords(const Batch& batch);

}
