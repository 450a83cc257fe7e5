// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Puts the fabric of one envelope after the other into a `FabricRecord`.

#include "answers/fabric/record.h"
#include "answers/flown_hours.h"
#include "fabric/likelihood/heat.h"

#include <map>

namespace crownring {

/// The over-temperatures of which heat and length were reported.
[[nodiscard]] std::vector<Occurrence> overheatingsOf(const ItemFacts& item);

/// Of which cloth each lot is, by whatever envelope it was stated for.
using ClothOfLot = std::map<std::string, std::string>;

class FabricGathering {
public:
    /// @param hours of all envelopes at the ends of the days on which something was read, repaired or became too hot
    FabricGathering(FabricRecord& record, const TypeBook& book, const ClothOfLot& cloths, const FlownHours& hours)
        : m_record(record), m_book(book), m_cloths(cloths), m_hours(hours) {}

    /// @param history readings of the quantity that is followed, repairs with a place
    Result<void> take(const ItemFacts& envelope, const StatedLimit& limit, const FabricHistory& history);
    /// Puts the readings in the order of their sets, and what is expected of hours to come into the sets.
    void finish();

private:
    struct Panels {
        std::size_t set = 0;
        Stamp stamp;
    };

    Result<void> addHeats(const ItemFacts& envelope);
    void addSets(const FabricHistory& history, const std::string& cloth);
    Result<void> addPatches(const ItemFacts& envelope, const FabricHistory& history, const std::string& cloth);
    Result<void> addReading(const Stamped<ReadingTaken>& reading, const StatedLimit& limit);
    void leaveOut(const EntryId& entry, Phrase why);
    std::size_t newSet(const std::string& lot, const std::string& cloth, Hours fittedAt);
    std::size_t numberOfLot(const std::string& lot, const std::string& cloth);
    [[nodiscard]] double heightOf(int row) const;
    [[nodiscard]] std::size_t setAt(const PanelPlace& place, const Stamp& when) const;
    [[nodiscard]] Hours doseAt(const FollowedSet& set, Hours ofEnvelope) const;

    FabricRecord& m_record;
    const TypeBook& m_book;
    const ClothOfLot& m_cloths;
    const FlownHours& m_hours;
    std::vector<Overheating> m_heats; ///< of the envelope at hand, by its own hours
    std::vector<Panels> m_panels;     ///< the sets of the envelope at hand
    Hours m_heatAll;                  ///< equivalent hours of all envelopes
    Hours m_flownAll;
};

}
