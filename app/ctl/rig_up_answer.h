// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Why a kit may not fly, as a terminal and as JSON.

#include "rules/due/rig_up.h"

#include <nlohmann/json_fwd.hpp>

#include <string>
#include <string_view>

namespace crownring::ctl {

/// "standing", "too-long" …, part of the contract.
[[nodiscard]] std::string_view reasonName(RigUpReason::Kind kind);
[[nodiscard]] std::string reasonText(const RigUpReason& reason);
/// What a kit flies, or comes to fly, in a tolerance.
[[nodiscard]] std::string toleranceText(const ToleranceUse& use);
[[nodiscard]] nlohmann::ordered_json reasonJson(const RigUpReason& reason);

}
