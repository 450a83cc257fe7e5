// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The due list as a table that a person reads in a terminal.

#include "rules/due/due_list.h"

#include <ostream>

namespace crownring::ctl {

/// "31 days left", "9:24 h past"; empty when unproven.
[[nodiscard]] std::string leftText(const LimitState& limit);
/// The governing limit's due date or figure.
[[nodiscard]] std::string dueText(const DueRow& row);
void printTable(std::ostream& out, const DueList& list, std::size_t most);

}
