// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Puts the fabric of one envelope after the other into a `FabricRecord`.

#include "answers/fabric/record.h"
#include "answers/flown_hours.h"
#include "fabric/likelihood/heat.h"

#include <map>

namespace crownring {

/// Entries about the fabric of one envelope, as corrected, in the order of their stamps.
struct FabricTold {
    std::vector<Entry> stated;   ///< FabricStated
    std::vector<Entry> repairs;  ///< RepairMade with a place
    std::vector<Entry> readings; ///< ReadingTaken
    std::vector<Entry> heats;    ///< EventReported with heat and length
};

/// Of which cloth each lot is, by whatever envelope it was stated for.
using ClothOfLot = std::map<std::string, std::string>;

class FabricGathering {
public:
    FabricGathering(Books& books, FabricRecord& record, const TypeBook& book, const ClothOfLot& cloths)
        : m_books(books), m_record(record), m_book(book), m_cloths(cloths) {}

    Result<void> take(const ItemFacts& envelope, const StatedLimit& limit, const FabricTold& told);
    /// Puts the readings in the order of their sets, and what is expected of hours to come into the sets.
    void finish();

private:
    struct Panels {
        std::size_t set = 0;
        Stamp stamp;
    };

    void addSets(const FabricTold& told, const std::string& cloth);
    Result<void> addPatches(const FabricTold& told, FlownHours& hours, const std::string& cloth);
    Result<void> addReading(const Entry& entry, FlownHours& hours, const StatedLimit& limit);
    void leaveOut(const Entry& entry, Phrase why);
    std::size_t newSet(const std::string& lot, const std::string& cloth, Hours fittedAt);
    std::size_t numberOfLot(const std::string& lot, const std::string& cloth);
    [[nodiscard]] double heightOf(int row) const;
    [[nodiscard]] std::size_t setAt(const PanelPlace& place, const Stamp& when) const;
    [[nodiscard]] Hours doseAt(const FollowedSet& set, Hours ofEnvelope) const;

    Books& m_books;
    FabricRecord& m_record;
    const TypeBook& m_book;
    const ClothOfLot& m_cloths;
    std::vector<Overheating> m_heats; ///< of the envelope at hand, by its own hours
    std::vector<Panels> m_panels;     ///< the sets of the envelope at hand
    Hours m_heatAll;                  ///< equivalent hours of all envelopes
    Hours m_flownAll;
};

}
