// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Visits and flights to come, as JSON and as a terminal has them.

#include "answers/forecast/agenda.h"
#include "answers/forecast/visit_outlook.h"

#include <nlohmann/json_fwd.hpp>

#include <string>

namespace crownring::ctl {

/// A row in the keys of `due`, `standing_before` and `supposed`.
[[nodiscard]] nlohmann::ordered_json madeDueJson(const MadeDue& made);
[[nodiscard]] std::string madeDueText(const MadeDue& made);

/// {`entry`, `balloon`, `station`, `from`, `to`, `covers` […], `due_before` […]}
[[nodiscard]] nlohmann::ordered_json visitJson(const VisitAhead& ahead, const VisitOutlook& outlook);

}
