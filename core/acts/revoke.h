// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Withdrawing a release, or the approval of a return to service.

#include "acts/own_code.h"

namespace crownring {

struct Revoking {
    InspectionId inspection;
    std::string reason;
    PersonId by;
    CivilDate on;
    std::optional<TimeOfDay> time{}; ///< UTC
};

/// NotReleasable for what is neither, or withdrawn already; then nothing is written.
[[nodiscard]] Results<Receipt> revoke(Journal& journal, Books& books, const Revoking& revoking,
                                      const SaidCode& said = {});

}
