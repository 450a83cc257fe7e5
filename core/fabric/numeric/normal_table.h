// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace crownring {

/// ln Phi(z) as `logNormalBelow` gives it but for 1e-9, many times faster: a random walk asks for it once a test and
/// step.
[[nodiscard]] double logNormalBelowQuickly(double z);

}
