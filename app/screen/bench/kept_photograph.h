// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A photograph as the record keeps it.

#include "record/journal.h"

class QUrl;

namespace crownring::screen {

/// JPEG, upright, at most 2,000 pixels wide or high. FileUnreadable for what is no picture.
[[nodiscard]] Result<Picture> photographFrom(const QUrl& file);

}
