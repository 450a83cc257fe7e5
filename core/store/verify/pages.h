// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Is the file itself sound: its pages, the photographs that it keeps?

#include "store/connection/connection.h"

#include <optional>
#include <string>

namespace crownring {

/// What the database finds wrong with its own pages and references; SQLite only, a server looks after its own.
[[nodiscard]] std::optional<Phrase> pageFlaw(const Connection& connection);

/// The digest of the first photograph that is not what its name says.
[[nodiscard]] std::optional<std::string> pictureFlaw(const Connection& connection);

}
