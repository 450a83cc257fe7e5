// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Signing with a code of the signatory's own, and setting one. A code is an argument and nothing else: it is written
/// nowhere. Working the key out takes a tenth of a second.

#include "record/journal.h"
#include "registry/books.h"

#include <optional>
#include <string>
#include <vector>

namespace crownring {

/// What a signatory says to prove who he is.
struct SaidCode {
    std::string code{};     ///< UTF-8; empty: he signs without
    bool setsFirst = false; ///< where the record keeps none of him yet, this becomes it, in the same transaction
};

/// Posts what is signed, with the proof of the entry that is. @param entries one of them a signature, or the void of
/// one WrongCode, NoCodeYet, CodeTooShort; then nothing is written. Without a code the gate decides.
[[nodiscard]] Results<Receipt> postSigned(Journal& journal, Books& books, std::vector<NumberedEntry> entries,
                                          const SaidCode& said);

struct CodeSetting {
    PersonId signatory;
    std::string code;
    std::string before{};            ///< the code that it replaces; empty for the first, and where another sets it
    std::optional<PersonId> other{}; ///< who sets it in the name of the signatory
    std::string codeOfOther{};
    std::string reason{}; ///< why another sets it
    CivilDate on;
    std::optional<TimeOfDay> time{};
};

/// The first code of a person, another in its place, or one that somebody else sets where it is forgotten: that stays
/// an open question of the record until the signatory has set one himself.
[[nodiscard]] Results<Receipt> setCode(Journal& journal, Books& books, const CodeSetting& setting);

}
