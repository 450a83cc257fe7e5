// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// From what a file names as having flown to the items of the record. Inside the acts room only.

#include "acts/flight_import.h"

namespace crownring {

/// Gives each flight that names items its kit: what was fitted at its moment, with what is named in the place of what
/// there is of its kind; or the whole kit that is named. A flight that names what the record does not know becomes
/// `UnknownItem`.
[[nodiscard]] Result<void> nameKits(Books& books, std::vector<JudgedProposal>& judged);

}
