// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/visit/retest.h"

#include "answers/bench_file.h"

#include <algorithm>

namespace crownring {

namespace {

Result<bool> isReleased(Books& books, const InspectionId& inspection, CivilDate on) {
    const auto told =
        books.told({Subject::Inspection,
                    inspection.text(),
                    {kindName<InspectionClosed>(), kindName<ReturnApproved>(), kindName<ReleaseRevoked>()},
                    on});
    if (!told)
        return tl::unexpected(told.error());
    bool released = false;
    for (const auto& line : *told) {
        const auto& body = nowOf(line).body;
        if (std::holds_alternative<ReleaseRevoked>(body))
            return false;
        const auto* closed = std::get_if<InspectionClosed>(&body);
        released = released || !closed || closed->outcome == Outcome::Released;
    }
    return released;
}

}

bool isRetest(const Stamped<ReadingTaken>& later, const ReadingTaken& failed,
              std::span<const Calibration> calibrations) {
    const auto* quantity = quantityNamed(later.body.quantity);
    if (!failed.tester && !later.body.tester && !(quantity && quantity->traits.tester))
        return true;
    return later.body.inspection && later.body.tester &&
           instrumentOn(calibrations, *later.body.tester, later.stamp.at.on());
}

Result<Retests> retestsIn(Books& books, std::span<const FabricHistory> histories, CivilDate on,
                          const std::optional<InspectionId>& inHand) {
    auto calibrations = calibrationsOn(books, on);
    if (!calibrations)
        return tl::unexpected(calibrations.error());
    Retests retests{std::move(*calibrations), {}, inHand};
    std::set<InspectionId> visits;
    for (const auto& history : histories) {
        for (const auto& each : history.readings)
            if (each.body.inspection)
                visits.insert(*each.body.inspection);
        for (const auto& each : history.repairs)
            if (each.body.inspection)
                visits.insert(*each.body.inspection);
    }
    for (const auto& visit : visits) {
        const auto released = visit == inHand ? Result<bool>(true) : isReleased(books, visit, on);
        if (!released)
            return tl::unexpected(released.error());
        if (*released)
            retests.released.insert(visit);
    }
    return retests;
}

}
