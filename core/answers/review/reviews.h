// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Airworthiness reviews: what the record says of those that were signed, and all that the signing of one is judged by.

#include "bench/review/review_refusals.h"
#include "record/entry.h"
#include "registry/books.h"

#include <optional>
#include <vector>

namespace crownring {

/// @param signing an entry of `ReviewSigned`; it is left out where it is in the record by now, as is what is dated
///        after it
[[nodiscard]] Result<ReviewFile> reviewFile(Books& books, const Entry& signing);

/// Live reviews up to a day, the latest first; each as it stands now.
/// @param balloon only its own; nothing: all
[[nodiscard]] Result<std::vector<Entry>> signedReviews(Books& books, const std::optional<Registration>& balloon,
                                                       CivilDate on);

/// The envelope that a balloon has at the end of that day; nothing where it has none.
[[nodiscard]] Result<std::optional<ItemId>> envelopeOf(Books& books, const Registration& balloon, CivilDate on);

/// The latest day that a certificate issued on `on` can print, whatever went before it, as the programme in force asks;
/// nothing where none does.
[[nodiscard]] Result<std::optional<CivilDate>> latestExpiry(Books& books, const ItemId& item, CivilDate on);

}
