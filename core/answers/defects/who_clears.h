// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Who may say that a defect is put right: in a visit of the record anybody, since that is signed, but of what its
/// finder called a danger to flight; else whoever may release work that puts it right. ML.A.403(a), ML.A.801(a), (b);
/// 14 CFR 43.3, 43.7, 91.405; our reading.

#include "bench/release/entitlement.h"
#include "registry/books.h"

#include <optional>
#include <vector>

namespace crownring {

/// What a clearing takes away.
enum class Takes {
    Nothing,
    Deferrable,
    Failed, ///< what a reading found, and a released one alone lifts (`answers/visit/retest`)
    Grounding,
};
/// By the worst finding on its item; a clearing that comes before its finding may take away anything.
[[nodiscard]] Result<Takes> takenBy(Books& books, const DefectCleared& cleared);

/// Nothing where that person may say on that day that it is put right.
[[nodiscard]] Result<std::optional<Barred>> barToClear(Books& books, const PersonId& person, CivilDate on,
                                                       const DefectCleared& cleared, Takes taken);

/// Sets `DefectMark::bar` on clearings of defects that were made graver than they were written first, where whoever
/// said that they are put right could not have said so of that grade: what anybody lifts as minor grounds once it is
/// known to be more.
[[nodiscard]] Result<void> barClearings(Books& books, std::vector<ItemFacts>& facts);

}
