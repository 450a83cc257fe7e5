// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// One answer to a directive for many items at once: an entry each, all of them or none.

#include "record/journal.h"
#include "registry/books.h"

#include <string>
#include <vector>

namespace crownring {

struct AnsweringMany {
    std::vector<ItemId> items;
    DirectiveAnswered answer; ///< its item is put in
    std::string note;
    CivilDate day;
    std::string by;
};
/// Writes nothing where no item is named.
[[nodiscard]] Results<Receipt> answerForMany(Journal& journal, Books& books, const AnsweringMany& answering);

}
