// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a release is signed by, as rows: who has confirmed it.

#include "bench/confirmed/wording_refusals.h"
#include "screen/lists/choice_model.h"

#include <vector>

namespace crownring::screen {

/// value: its key at the wording desk; label: which; detail: who confirmed it, or that nobody did; chosen: somebody did
[[nodiscard]] std::vector<Choice> draftedWording(const std::vector<WordingState>& states);
/// As it was signed.
[[nodiscard]] std::vector<Choice> signedWording(const std::vector<ConfirmedText>& confirmed, const WordingBook& book);

}
