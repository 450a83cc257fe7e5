// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Whether two names can be told apart by eye.

#include <string>
#include <string_view>

namespace crownring {

/// What names have in common that look alike: letters in small, without accents, of whatever script or width they are
/// written in where another looks the same, and no more than letters and digits. "Аdа Rhоs" in Cyrillic letters,
/// "ADA  RHOS" and "Ada-Rhos" are all "adarhos". A name of which nothing is left is itself.
///
/// Which letters look alike is a small part of Unicode's confusables.txt (UTS #39, from memory): Latin, Greek, Cyrillic
/// and Armenian letters, full width, mathematical letters, digits that are read as letters. Accents are taken off where
/// UTS #39 keeps them: a name is mostly written without them by who cannot type them.
[[nodiscard]] std::string skeleton(std::string_view name);

}
