// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answers/fabric/record.h"
#include "fabric/numeric/draws.h"
#include "store/scratch.h"

#include <cmath>
#include <memory>

namespace crownring::testing {

/// A record without a file: envelopes of one type with pulls at the crown that fall as a plain exponential does, so
/// that the end of life is known. Limit 30, new 100.
struct Made {
    double slope = 0.2; ///< fall of ln strength in 100 h
    double scatter = 0.03;
    int envelopes = 12;
    int lots = 6;
    int fastLot = -1;
    double fastBy = 1;
};

inline std::shared_ptr<FabricRecord> made(const Made& making, std::uint64_t seed) {
    Draws draws(seed);
    auto record = std::make_shared<FabricRecord>();
    record->channel = {"grab-strength", {"grab-strength", {}, {}, {}}, false};
    record->on = day("2026-06-01");
    record->fabrics = {"cloth"};
    record->fleet.fabrics = 1;
    for (int lot = 0; lot < making.lots; ++lot) {
        record->lots.push_back("L" + std::to_string(lot));
        record->fleet.fabricOfLot.push_back(0);
    }
    for (int e = 0; e < making.envelopes; ++e) {
        const auto lot = static_cast<std::size_t>(e % making.lots);
        FollowedEnvelope envelope;
        envelope.id = ItemId("E" + std::to_string(e));
        envelope.limit = record->channel.figure(30);
        envelope.hours = Hours(400);
        envelope.rows = 10;
        envelope.gores = 12;
        envelope.firstSet = record->sets.size();
        envelope.setCount = 1;
        FollowedSet set;
        set.envelope = record->envelopes.size();
        set.lot = lot;
        set.use.hours = 400;
        record->envelopes.push_back(envelope);
        record->sets.push_back(set);
        record->fleet.lotOfSet.push_back(lot);
        const bool isFast = static_cast<int>(lot) == making.fastLot;
        const double slope = making.slope * (isFast ? making.fastBy : 1) * std::exp(0.04 * draws.normal());
        for (int test = 1; test <= 8; ++test) {
            const double hours = 50 * test;
            const double ln = std::log(100.0) - slope * hours / 100 + making.scatter * draws.normal();
            record->fleet.readings.push_back({record->sets.size() - 1, hours, 1, 0, {Seen::Exactly, ln, 0}});
            const auto on = addMonths(record->on, -6 * (8 - test) - 1, DayRule::Same);
            record->readings.push_back({EntryId(envelope.id.text() + "/" + std::to_string(test)),
                                        on,
                                        {1, 10},
                                        record->channel.figure(std::exp(ln)),
                                        false,
                                        std::exp(ln) < 30 ? Judgement::Fails : Judgement::Passes});
        }
    }
    return record;
}

}
