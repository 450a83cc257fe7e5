// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A question about a reading that looks impossible, with the slip that is most likely behind it. It never refuses: a
/// person who looked again may stand by the figure (`ReadingTaken::confirmed`).
///
///     1334 N of fabric   "grab strength: 1334 N is outside 50 to 1200 N. Is it 133.4 N?"
///     30 N of fabric     "grab strength: 30 N is outside 50 to 1200 N. Is it 30 daN, 30 kgf or 30 lbf?"

#include "bench/reading/verdict.h"
#include "measure/figure.h"

#include <optional>
#include <string>
#include <vector>

namespace crownring {

struct Doubt {
    Phrase question;
    /// What may have been meant, at most three: first the same digits in another unit, then with the point moved.
    std::vector<Figure> likely;
};

/// Nothing for a reading inside the plausible range of its quantity. A step of an indicator is plausible when its end
/// is: that no dot has turned is written as a step that begins low.
/// @param given the unit that the reading was written in
[[nodiscard]] std::optional<Doubt> doubt(const Measured& reading, const Unit& given);

/// A load that was held for less time than the manual states, or for which nobody said how long.
/// @param limits of the item's type and kind
[[nodiscard]] std::optional<Phrase> heldTooShort(const ReadingTaken& reading, const Measured& measured,
                                                 std::span<const StatedLimit> limits);

/// A load that was held far beyond what the manual has held: more than 1.2 times its proof load or, where it states
/// none, 2.2 times the least strength; a slip of the unit makes such (lbf for N is 4.4 times). Common practice, no
/// source.
/// @param limits of the item's type and kind
[[nodiscard]] std::optional<Phrase> farFromStated(const Measured& reading, const Unit& given,
                                                  std::span<const StatedLimit> limits);

}
