// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Which code of whose is in force: a fold over what was said of codes, in the order in which the record got it. The
/// day on a paper decides nothing here, since whoever writes one may write any day: else a signature dated before the
/// code would need none.

#include "record/journal.h"

#include <cstdint>
#include <limits>
#include <span>
#include <string_view>
#include <vector>

namespace crownring {

struct CodeSet {
    EntryId entry;
    std::int64_t number = 0; ///< of its line in the journal
    Stamp stamp;
    std::string by;
    SignatoryCode said;

    /// Somebody else set it, in the signatory's name.
    [[nodiscard]] bool isByAnother() const;
};

/// Two spellings of one person's name, or two names that cannot be told apart by eye (`text/skeleton.h`): nobody signs
/// as another who is only written otherwise.
[[nodiscard]] bool isSamePerson(std::string_view one, std::string_view other);

/// In the order of arrival. @param told entries `signatory.code`; others are passed over
[[nodiscard]] std::vector<CodeSet> codesFrom(std::span<const JournalLine> told);

/// Of that person, of the lines before `number`; null where there is none.
[[nodiscard]] const CodeSet* inForce(std::span<const CodeSet> codes, std::string_view person,
                                     std::int64_t number = std::numeric_limits<std::int64_t>::max());

/// Those set by another that the signatory has not replaced by one of his own since, by stamp: the order of arrival
/// decides nothing here.
[[nodiscard]] std::vector<CodeSet> setByOthers(std::span<const CodeSet> codes);

}
