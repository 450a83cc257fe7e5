// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What shows that a reading which failed is put right: the panel was replaced, or read again in its place, in a visit
/// that somebody released. A patch of some size mends and shows nothing, nor does a figure that nobody answers for.
/// ML.A.403(a), ML.A.801(a); 14 CFR 43.13(b), 91.407(a) (from memory); our reading.

#include "bench/release/bench_file.h"
#include "registry/books.h"

#include <set>

namespace crownring {

/// Wherever the quantity asks for an instrument, or the first was read with one: read in a visit, and with one in
/// calibration on that day. What is seen, a broken strand, is seen again by whoever puts it right.
[[nodiscard]] bool isRetest(const Stamped<ReadingTaken>& later, const ReadingTaken& failed,
                            std::span<const Calibration> calibrations);

struct Retests {
    std::vector<Calibration> calibrations;
    std::set<InspectionId> released;
    std::optional<InspectionId> inHand; ///< a visit that is being signed; it counts as released

    /// @param isCleared somebody answered for it by clearing what the reading found
    [[nodiscard]] bool shows(const Stamped<ReadingTaken>& later, const ReadingTaken& failed, bool isCleared) const {
        return isRetest(later, failed, calibrations) &&
               (later.body.inspection ? released.contains(*later.body.inspection) : isCleared);
    }
    /// Of a size that is stated it is a patch.
    [[nodiscard]] bool isNewPanel(const RepairMade& repair) const {
        return !repair.width && !repair.height && repair.inspection && released.contains(*repair.inspection);
    }
};
/// By what was released up to a day, and is not withdrawn.
[[nodiscard]] Result<Retests> retestsIn(Books& books, std::span<const FabricHistory> histories, CivilDate on,
                                        const std::optional<InspectionId>& inHand);

}
