// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/fabric/score.h"

#include "answers/fabric/fit.h"
#include "fabric/outlook/life.h"

#include <algorithm>

namespace crownring {

namespace {

bool isDecided(const FollowedReading& reading) {
    return reading.judgement == Judgement::Passes || reading.judgement == Judgement::Fails;
}

}

Result<std::optional<Score>> pastScore(const FabricRecord& record, std::uint64_t seed, std::stop_token stop,
                                       const Progress& progress) {
    std::vector<Foretold> foretold;
    for (int back = halfYearsScored; back >= 1; --back) {
        const auto from = addMonths(record.on, -6 * back, DayRule::Same);
        const auto until = addMonths(from, 6, DayRule::Same);
        const auto isScored = [&](const FollowedReading& each) {
            return from <= each.on && each.on < until && isDecided(each);
        };
        const auto known = std::make_shared<const FabricRecord>(before(record, from));
        if (known->readings.empty() || std::ranges::none_of(record.readings, isScored))
            continue;
        const auto share = [&](double of) {
            if (progress)
                progress((halfYearsScored - back + of) / halfYearsScored);
        };
        const auto fit = fitOf(known, seed, stop, share);
        if (!fit)
            return tl::unexpected(fit.error());
        if (!*fit)
            return std::optional<Score>();
        for (std::size_t at = 0; at < record.readings.size(); ++at) {
            if (!isScored(record.readings[at]))
                continue;
            const auto& row = record.fleet.readings[at];
            const double lnLimit = record.lnLimit(record.sets[row.set].envelope);
            foretold.push_back(
                {chanceBreaksBelow((*fit)->posterior, row.set, lnLimit, {row.hours, row.dose, 0, row.row}, row.hours),
                 record.readings[at].judgement == Judgement::Fails});
        }
    }
    return std::optional(scoreOf(foretold));
}

}
