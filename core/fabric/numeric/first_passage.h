// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// When ageing fabric comes to its limit, for a straight line in log strength whose two figures are known but for a
/// normal error: closed forms, which the forecast by draws is tested against.
///
/// Ages are t of `AgeingShape` at the crown, in hundreds of effective hours. The line falls, so it is at or below the
/// limit from its first passage on, and no theory of random paths is needed. For permeability, which rises to its
/// limit, give the negative intercept, the slope and the negative limit.

#include <optional>

namespace crownring {

/// ln strength = alpha - lambda t.
struct AgeingLine {
    double alpha = 0;
    double lambda = 0;
    double alphaVariance = 0; ///< > 0, as is the next
    double lambdaVariance = 0;
    double covariance = 0; ///< of alpha and lambda
};

/// P(limit reached by `age`); `limit` is the logarithm of the least strength.
[[nodiscard]] double reachedBy(const AgeingLine& line, double limit, double age);

/// The same, knowing that it was not reached at `okAge`.
[[nodiscard]] double reachedByGivenOk(const AgeingLine& line, double limit, double age, double okAge);

/// P(lambda <= 0): the limit is never reached, unless it was from the first.
[[nodiscard]] double neverReached(const AgeingLine& line);

/// The age by which a share p of all such lines has reached the limit, 0 where it has at once; nothing where that never
/// comes about.
[[nodiscard]] std::optional<double> ageReached(const AgeingLine& line, double limit, double p);

/// P(at least one of `tests` >= 1 readings at `age` falls below the limit): a test also sees the scatter of readings,
/// whose standard deviation is `sigma` > 0.
[[nodiscard]] double anyTestFails(const AgeingLine& line, double limit, double age, double sigma, int tests);

}
