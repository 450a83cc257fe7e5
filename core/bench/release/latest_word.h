// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a release rests on is stated again and again. Which statement stands for its thing is decided here, for
/// judging and for showing alike.
///
/// Manuals, limits and an organisation's lines: the latest word stands. What people may do and how long a tester is in
/// calibration add up: one that reaches less far takes nothing away, it would have to be voided.

#include "record/kinds/shop.h"

namespace crownring {

[[nodiscard]] bool takesThePlaceOf(const TypeDescribed& later, const TypeDescribed& earlier);
/// A limit that cannot be read (`limitFrom`) takes nothing's place.
[[nodiscard]] bool takesThePlaceOf(const LimitStated& later, const LimitStated& earlier);
[[nodiscard]] bool takesThePlaceOf(const ChecklistAdopted& later, const ChecklistAdopted& earlier);
/// The same person, capacity and balloons, and it reaches at least as far.
[[nodiscard]] bool takesThePlaceOf(const PersonEntitled& later, const PersonEntitled& earlier);
/// The same tester, and it reaches at least as far.
[[nodiscard]] bool takesThePlaceOf(const TesterCalibrated& later, const TesterCalibrated& earlier);

}
