// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A backup that may give way to a newer one: nothing goes with it.

#include "store/connection/connection.h"

#include <optional>
#include <string>

namespace crownring {

/// Whether the record at `file` is an older copy of this one: another file, open in no program, and whatever it holds,
/// the entries of every writer and the photographs, is here too. The chain of a writer is the same up to an entry when
/// that entry's hash is.
/// @return FileUnwritable and why not; nothing when it is @throws StoreError when it cannot be read
[[nodiscard]] std::optional<Problem> whyNoOlderCopy(const Connection& connection, const std::string& file);

}
