// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "measure/name.h"

namespace crownring {

/// A fresh id for an entry that came without one: a random UUID (RFC 9562, version 4).
[[nodiscard]] EntryId newEntryId();

}
