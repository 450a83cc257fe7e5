// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The standard normal distribution where plain formulas lose all digits: far out, and between two close bounds.
/// Relative error below 1e-12 for |z| up to 40; nothing here fails, infinities are answered as limits.

namespace crownring {

/// ln Phi(z), the logarithm of the probability to lie below z.
[[nodiscard]] double logNormalBelow(double z);

/// phi(z) / Phi(-z): the density at z over the probability to lie above it, the inverse of Mills' ratio; near z far
/// out.
[[nodiscard]] double normalHazard(double z);

/// ln[Phi(high) - Phi(low)] for low < high.
[[nodiscard]] double logNormalBetween(double low, double high);

/// ln phi(z).
[[nodiscard]] double logNormalDensity(double z);

}
