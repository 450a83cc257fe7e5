// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A copy of an SQLite record that is known to be good. The file itself must not be copied while it is open: what was
/// written last stands in a file beside it.

#include "store/schema/migration.h"
#include "writing/target.h"

#include <string>

namespace crownring {

/// Writes a copy, verifies it as a whole (store/verdict.h), and only then gives it its name. With
/// `Replace::Asked` an older copy of this record (store/older_copy.h) gives way.
/// @return FileExists, FileUnwritable @throws StoreError StoreFailed when it does not pass
[[nodiscard]] Result<void> backUp(const Connection& connection, const std::string& file, Replace replace);

/// Brings the schema to the last step; an SQLite record that is not new is first copied to "FILE.before-N-TIME",
/// verified. A shared record is backed up by its server.
/// @param remake see `migrate`
void migrateWithBackup(const Connection& connection, const std::vector<MigrationStep>& steps, const std::string& file,
                       const std::function<void()>& remake = {});

}
