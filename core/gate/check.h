// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// One check of the gate: asked of the record with a batch in it, after all is written and before anything is durable.

#include "record/journal.h"
#include "registry/books.h"

#include <span>
#include <string_view>
#include <vector>

namespace crownring {

struct Batch {
    Journal& journal;
    Books& books;
    std::span<const NumberedEntry> entries;
};

/// What the check refuses, each at the line of its entry; or why it could not be asked, which refuses too.
using Findings = Result<std::vector<Problem>>;

struct Check {
    std::string_view name; ///< what must hold, in a few words
    Findings (*ask)(const Batch&);
};

}
