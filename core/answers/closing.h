// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a signature consists of, composed from the record: who signs adds nothing of it by hand, and what a shop's own
/// system posts is held against it.

#include "bench/release/release.h"
#include "record/journal.h"
#include "registry/books.h"

#include <span>
#include <string>

namespace crownring {

/// Statement, licence, clocks, exceptions, who confirmed the wording, and the seal over all that was said of the
/// inspection up to its closing.
/// @param closing left out of what is sealed, where it is in the record by now
[[nodiscard]] Result<InspectionClosed> composedClosing(Journal& journal, Books& books, const BenchFile& file,
                                                       const Signing& signing, const EntryId& closing = {});

/// A digest over the entries as they were written: SHA-256 of the hashes of their lines in the journal, in the order
/// given. EntryMissing where one is not in the journal.
/// The same of a release after incomplete maintenance.
[[nodiscard]] Result<ReleaseIncomplete> composedIncomplete(Journal& journal, Books& books, const BenchFile& file,
                                                           const Signing& signing, const EntryId& release = {});

[[nodiscard]] Result<std::string> sealDigest(Journal& journal, std::span<const EntryId> entries);

}
