// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// An organisation adopts wording that is signed, and somebody confirms it.

#include "bench/release/entitlement.h"
#include "bench/wording/named_text.h"
#include "record/journal.h"
#include "registry/books.h"

#include <string>
#include <vector>

namespace crownring {

/// As it ships.
[[nodiscard]] TextAdopted asShipped(StatementText text, const std::string& organisation);

/// All of them or none.
[[nodiscard]] Results<Receipt> adoptTexts(Journal& journal, Books& books, std::vector<TextAdopted> texts, CivilDate on,
                                          const std::string& by);

struct Confirming {
    std::string against; ///< which rule, as amended when
    PersonId person;
    Capacity capacity = Capacity::IndependentCertifyingStaff;
    CivilDate on;
};
/// All of them or none; the licence is what the record entitles the person by.
[[nodiscard]] Results<Receipt> confirmTexts(Journal& journal, Books& books, const std::vector<NamedText>& texts,
                                            const Confirming& confirming);

}
