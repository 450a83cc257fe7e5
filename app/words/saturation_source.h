// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace crownring::words {

/// By which equations `saturationPressure` computed, as papers are cited; no language translates it.
[[nodiscard]] std::string_view saturationSource(double butane);

}
