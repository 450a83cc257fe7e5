// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Writing to the record: the one gate. A programme that is adopted without its text gets it here, from the record or
/// from the shelf, and is checked before anything is written.

#include "record/journal.h"
#include "registry/books.h"

#include <string>
#include <string_view>
#include <vector>

namespace crownring {

/// Fills in what is left to the record: the text of a programme, and what a review is signed under. What is proven is
/// proven as a whole, so whoever proves it calls this first.
[[nodiscard]] Results<void> complete(std::vector<NumberedEntry>& entries, Books& books, const std::string& file);

/// @param file named in problems; may be empty for entries that a person made on the screen.
/// @param also asked beside the gate, inside the transaction
[[nodiscard]] Results<Receipt> post(Journal& journal, Books& books, std::vector<NumberedEntry> entries,
                                    const std::string& file, const Journal::Judge& also = {});
/// Entries as text, one JSON object a line.
[[nodiscard]] Results<Receipt> postText(Journal& journal, Books& books, std::string_view text, const std::string& file);
/// One entry made on the screen.
[[nodiscard]] Results<Receipt> postOne(Journal& journal, Books& books, Entry entry);

}
