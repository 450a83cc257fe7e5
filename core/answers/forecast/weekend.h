// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Which balloons may fly on the days of a weekend, with what is fitted to them then: the rig-up check of each, for a
/// flight of unsaid length.

#include "answers/check_rig_up.h"

#include <memory>
#include <vector>

namespace crownring {

/// The next Saturday and Sunday; of a Sunday that day alone.
[[nodiscard]] std::vector<CivilDate> weekendFrom(CivilDate day);

struct BalloonThen {
    Registration balloon;
    std::vector<CivilDate> flies;       ///< days on which nothing stands against it by the record
    std::shared_ptr<RigUpAnswer> check; ///< of the last day asked; null where nothing is fitted
};
/// In the order of the balloons. @param days not empty
[[nodiscard]] Result<std::vector<BalloonThen>> balloonsThen(Books& books, const std::vector<Registration>& balloons,
                                                            const std::vector<CivilDate>& days);

}
