// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/fabric/lots.h"

#include "fabric/outlook/lot_slopes.h"

#include <algorithm>
#include <map>
#include <set>

namespace crownring {

namespace {

struct Look {
    std::map<std::size_t, LotVerdict> verdicts;
    std::optional<double> smallestDetectableRatio;
};

/// What was read of one fabric, of lots that are known: panels of which nobody knows the lot are no lot.
struct OneFabric {
    FabricFleet fleet;
    std::vector<std::size_t> lots; ///< of the record, by number in `fleet`
};

OneFabric onlyOf(const FabricRecord& record, std::size_t fabric) {
    OneFabric only;
    only.fleet.fabrics = 1;
    std::map<std::size_t, std::size_t> setNumbers;
    for (const auto& reading : record.fleet.readings) {
        const auto lot = record.sets[reading.set].lot;
        if (record.fleet.fabricOfLot[lot] != fabric || record.lots[lot].empty())
            continue;
        const auto [set, isNew] = setNumbers.emplace(reading.set, setNumbers.size());
        if (isNew) {
            auto number = static_cast<std::size_t>(std::ranges::find(only.lots, lot) - only.lots.begin());
            if (number == only.lots.size()) {
                only.lots.push_back(lot);
                only.fleet.fabricOfLot.push_back(0);
            }
            only.fleet.lotOfSet.push_back(number);
        }
        only.fleet.readings.push_back(reading);
        only.fleet.readings.back().set = set->second;
    }
    return only;
}

/// Readings that leave the ageing of the fabric open say nothing of its lots.
Look lookAt(const FabricRecord& record, std::size_t fabric) {
    Look look;
    const auto only = onlyOf(record, fabric);
    const auto slopes = slopesOfLots(only.fleet, 0);
    if (!slopes)
        return look;
    std::vector<LotSlope> plain;
    for (const auto& each : *slopes)
        plain.push_back(each.slope);
    if (const auto comparison = compareLots(plain)) {
        look.smallestDetectableRatio = comparison->smallestDetectableRatio;
        for (std::size_t at = 0; at < slopes->size(); ++at)
            look.verdicts[only.lots[(*slopes)[at].lot]] = comparison->lots[at];
    }
    return look;
}

LotRow rowOf(const FabricRecord& record, std::size_t lot) {
    LotRow row;
    row.lot = lot;
    std::set<std::size_t> envelopes;
    for (const auto& set : record.sets)
        if (set.lot == lot)
            envelopes.insert(set.envelope);
    row.envelopes = envelopes.size();
    row.readings = static_cast<std::size_t>(std::ranges::count_if(
        record.fleet.readings, [&](const SetReading& each) { return record.sets[each.set].lot == lot; }));
    return row;
}

bool isReadSince(const FabricRecord& record, std::size_t lot, CivilDate day) {
    for (std::size_t at = 0; at < record.readings.size(); ++at)
        if (record.readings[at].on >= day && record.sets[record.fleet.readings[at].set].lot == lot)
            return true;
    return false;
}

}

std::vector<FabricLots> lotsOf(const FabricFit& fit) {
    const auto& record = *fit.record;
    const auto lastLook = addMonths(record.on, -monthsBetweenLooks, DayRule::Same);
    const auto earlier = before(record, lastLook);
    std::vector<FabricLots> all;
    for (std::size_t fabric = 0; fabric < record.fabrics.size(); ++fabric) {
        const auto now = lookAt(record, fabric);
        const auto then = lookAt(earlier, fabric);
        FabricLots lots{fabric, {}, now.smallestDetectableRatio};
        for (std::size_t lot = 0; lot < record.lots.size(); ++lot) {
            if (record.fleet.fabricOfLot[lot] != fabric)
                continue;
            auto row = rowOf(record, lot);
            if (row.envelopes == 0)
                continue;
            row.pace = paceOfLot(fit.columns, fit.posterior, lot);
            if (const auto found = now.verdicts.find(lot); found != now.verdicts.end()) {
                const auto known = then.verdicts.find(lot);
                const auto was = known == then.verdicts.end() ? LotStanding::TooLittle : known->second.standing;
                row.verdict = found->second;
                row.standing = confirmed(was, found->second.standing, isReadSince(record, lot, lastLook));
            }
            lots.lots.push_back(std::move(row));
        }
        std::ranges::stable_sort(lots.lots, [](const LotRow& a, const LotRow& b) {
            const auto key = [](const LotRow& row) {
                return std::pair(row.standing, row.pace ? row.pace->ratio.middle : 0.0);
            };
            return key(a) > key(b);
        });
        all.push_back(std::move(lots));
    }
    return all;
}

}
