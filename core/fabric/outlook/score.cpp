// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/outlook/score.h"

#include <algorithm>

namespace crownring {

Score scoreOf(std::span<const Foretold> foretold) {
    Score score;
    for (const auto& each : foretold) {
        const double miss = each.chance - (each.came ? 1 : 0);
        const auto at = static_cast<std::size_t>(each.chance * static_cast<double>(chanceBins));
        auto& bin = score.bins[std::min(at, chanceBins - 1)];
        score.brier += miss * miss;
        score.came += each.came ? 1 : 0;
        bin.foretold += each.chance;
        bin.came += each.came ? 1 : 0;
        ++bin.count;
        ++score.count;
    }
    if (score.count == 0)
        return score;
    const auto count = static_cast<double>(score.count);
    const double share = static_cast<double>(score.came) / count;
    score.brier /= count;
    score.baseRate = share * (1 - share);
    for (auto& bin : score.bins)
        if (bin.count > 0) {
            bin.foretold /= static_cast<double>(bin.count);
            bin.came /= static_cast<double>(bin.count);
        }
    return score;
}

}
