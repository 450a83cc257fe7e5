// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The schema and its numbered, forward steps. An applied step is never edited; a change is a new one.

#include "store/connection/connection.h"

#include <functional>
#include <string>
#include <vector>

namespace crownring {

struct MigrationStep {
    int version = 1;
    std::string text; ///< statements parted by lines of four dashes
};

/// "CRNG": how an SQLite file is recognised as a record.
inline constexpr std::int64_t applicationId = 0x43524E47;

/// The steps that this program knows, in order.
[[nodiscard]] std::vector<MigrationStep> migrationSteps(Dialect dialect);

/// All that the steps run, one after the other, with the table that notes them.
[[nodiscard]] std::vector<QString> statementsOfAll(Dialect dialect);

/// The number that an SQLite file bears: of the last step, where nobody changed it.
[[nodiscard]] int sqliteMark(const Connection& connection);

/// By the last step that is noted, or the number that the file bears, whichever is later; 0 for an empty database.
/// @throws StoreError StoreForeign when it is not empty and not a record
[[nodiscard]] int schemaVersion(const Connection& connection);

/// Brings the schema to the last step, each step in a transaction of its own.
/// @param remake makes the projections anew, as today's program has them; a record that is not new is never without: it
///        is called inside the transaction of the last step
void migrate(const Connection& connection, const std::vector<MigrationStep>& steps,
             const std::function<void()>& remake = {});

}
