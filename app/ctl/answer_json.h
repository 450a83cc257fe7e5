// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Answers as JSON, in the keys of the headless contract.

#include "forecast/dates.h"
#include "registry/books.h"
#include "rules/due/due_list.h"

#include <nlohmann/json_fwd.hpp>

#include <optional>

namespace crownring::ctl {

template <class What>
[[nodiscard]] std::optional<std::int64_t> count(const std::optional<Count<What>>& figure) {
    return figure ? std::optional(figure->value()) : std::nullopt;
}

/// `minutes`, `landings`, `inflations`; null where unknown.
void addFigures(nlohmann::ordered_json& object, const Figures& figures);

/// What is left of a limit, days or a count; null when unproven, or where there is none.
[[nodiscard]] nlohmann::ordered_json leftJson(const LimitState* limit);
/// `due` and `left` of a limit, in the keys and forms of a row's limits; null where there is none.
void addDueAndLeft(nlohmann::ordered_json& object, const std::optional<LimitState>& limit);

/// One row: `last` and `due` are dates or whole numbers, `left` days or whole numbers, null when unproven. Beyond the
/// contract: `programme`, `required`, `force`, `blocks`, `because`, `tolerance_for`, and `trigger` where an event made
/// it due.
[[nodiscard]] nlohmann::ordered_json rowJson(const DueRow& row);
/// {`p10`, `p50`, `p90`}, each a day, or null where it lies beyond what is foretold; null where nothing is.
[[nodiscard]] nlohmann::ordered_json projectedJson(const std::optional<DateBand>& band);
/// Releases that are signed and that the record no longer supports: their names.
[[nodiscard]] nlohmann::ordered_json unsupportedJson(const std::vector<InspectionId>& unsupported);
/// The same of reviews: their certificates, or the ids of their entries.
[[nodiscard]] nlohmann::ordered_json unsupportedJson(const std::vector<Entry>& reviews);
[[nodiscard]] std::string unsupportedText(const Entry& review);
/// "V 12 is signed, and no longer supported by the record".
[[nodiscard]] std::string unsupportedText(const InspectionId& inspection);
[[nodiscard]] nlohmann::ordered_json questionJson(const Question& question);
/// `unread`: the entries that cannot be read and of which nobody knows whether they are about what was asked; not there
/// when there is none. @return why nobody can say
[[nodiscard]] Result<void> addUnread(nlohmann::ordered_json& answer, Books& books);
[[nodiscard]] std::string_view becauseText(Because because);

}
