// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Is a record built as this version builds it? Whoever has the file can plant a trigger, and what is written after
/// goes where that leads it.

#include "store/connection/connection.h"

#include <optional>
#include <string>

namespace crownring {

/// The first table, index or trigger that is not as this version makes it: "trigger entry_is_never_changed". Of SQLite
/// what this version makes is asked once a process; a server is asked each time, on a connection of its own.
/// @throws StoreError `RightsMissing` where a server does not let us
[[nodiscard]] std::optional<std::string> schemaFlaw(const Connection& connection);

/// The number of the first step that the record notes otherwise than this version takes it; of a file that bears
/// another number than its last step, that number.
[[nodiscard]] std::optional<int> stepFlaw(const Connection& connection);

/// It bears another number than the last step known here, and is not built as here. What bears another number alone is
/// accounted for as here.
[[nodiscard]] bool isOfAnotherSchema(const Connection& connection);

}
