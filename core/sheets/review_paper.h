// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// An airworthiness review as a paper to file: what was signed, by whom, under which authorisation. It is the record of
/// the certificate and no certificate, and says so.

#include "paper/document.h"
#include "problem/problem.h"
#include "problem/speech.h"
#include "record/entry.h"

#include <nlohmann/json_fwd.hpp>

#include <vector>

namespace crownring {

/// @pre `signing` says `ReviewSigned`
/// @param against what the record, as it is now, would refuse it for; empty: it supports it still
[[nodiscard]] paper::Document reviewPaper(const Entry& signing, const std::vector<Problem>& against, const Speech& in);
/// All of it, for another program; the keys are stable.
[[nodiscard]] nlohmann::ordered_json reviewJson(const Entry& signing);

}
