// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Who had confirmed the wording, on papers and for other programs.

#include "bench/confirmed/wording_refusals.h"
#include "paper/document.h"
#include "problem/speech.h"

#include <nlohmann/json_fwd.hpp>

#include <vector>

namespace crownring {

/// What was signed, with its source and who had confirmed the wording, or that the record does not say it: in one
/// piece, which stands with the signature under it.
/// @param texts for their titles
[[nodiscard]] paper::Statement confirmedStatement(paper::Statement statement,
                                                  const std::vector<ConfirmedText>& confirmed,
                                                  const AdoptedTexts& texts, const Speech& in);
/// On a draft, that the wording shown is not confirmed, where it is not.
void addUnconfirmed(paper::Document& document, const BenchFile& file, const Speech& in);

[[nodiscard]] nlohmann::ordered_json confirmedJson(const std::vector<ConfirmedText>& confirmed);
/// What it would be signed by, and whether that is adopted and confirmed.
[[nodiscard]] nlohmann::ordered_json wordingJson(const std::vector<WordingState>& states);

}
