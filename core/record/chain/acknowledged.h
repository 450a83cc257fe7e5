// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a writer was told when its entries had been written: where its chain then ended. Kept outside the record it
/// tells later whether they are still there, which nothing inside the record can: who cuts the end of a chain off can
/// mend what says how long it was.

#include "record/chain/chain.h"

namespace crownring {

struct Acknowledged {
    WriterId writer;
    std::uint64_t sequence = 1; ///< of the last entry, from 1
    Digest hash{};
    bool operator==(const Acknowledged&) const = default;
};

/// "WRITER:SEQUENCE:HASH"; the name of a writer may have colons in it.
[[nodiscard]] std::string acknowledgedText(const Acknowledged& end);
/// Nothing for what is not written so.
[[nodiscard]] std::optional<Acknowledged> acknowledgedFrom(std::string_view text);

}
