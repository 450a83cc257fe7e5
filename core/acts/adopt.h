// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Adopting a programme: its text goes into the record with its digest, so that the record can be read without the
/// file.

#include "record/journal.h"
#include "registry/books.h"

#include <string>
#include <string_view>

namespace crownring {

/// @param document the programme's JSON; BadProgramme with the path inside it when it breaks its schema;
/// BadValue when `bound` names somebody twice.
[[nodiscard]] Results<Receipt> adopt(Journal& journal, Books& books, std::string_view document, const std::string& file,
                                     Bound bound, CivilDate on, const std::string& by);

}
