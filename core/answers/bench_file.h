// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Reads all that an inspection is judged by from the record.

#include "bench/release/bench_file.h"
#include "registry/books.h"

namespace crownring {

/// @param on facts, entitlements and limits as of that day, or of the day on which it was closed where that came first,
///        so that a paper says the same in ten years; the inspection itself is read whole
/// UnknownReference when the record holds no such inspection.
[[nodiscard]] Result<BenchFile> benchFile(Books& books, const InspectionId& inspection, CivilDate on);

/// The same as it stood before a closing, which is in the record by now, on the day of that closing: what the signature
/// was to be judged by.
[[nodiscard]] Result<BenchFile> benchFileBefore(Books& books, const InspectionId& inspection, const EntryId& closing,
                                                CivilDate on);

/// The file of an inspection that was closed, as its signature found it: open, and without what came later on that day.
[[nodiscard]] Result<BenchFile> benchFileAtSignature(Books& books, Inspection inspection);
/// Of that only the facts of the items. @pre it was closed
[[nodiscard]] Result<std::vector<ItemFacts>> itemsAtSignature(Books& books, const Inspection& inspection);

/// Who is entitled to what, as said up to a day.
[[nodiscard]] Result<std::vector<Entitlement>> entitlementsOn(Books& books, CivilDate on);
/// By stamp.
[[nodiscard]] Result<std::vector<Calibration>> calibrationsOn(Books& books, CivilDate on);

/// What is adopted of wording and confirmed, as said up to a day.
[[nodiscard]] Result<WordingBook> wordingBook(Books& books, CivilDate on);

/// A line of the list of inspections.
struct InspectionCard {
    InspectionId inspection;
    std::string visit;
    std::optional<Registration> balloon;
    std::vector<ItemId> items;
    CivilDate opened;
    std::string by;
    std::optional<Outcome> outcome; ///< absent: open
    std::optional<CivilDate> closed;
    std::optional<PersonId> signatory;
    bool revoked = false;                  ///< the release, or the approval of the return, was withdrawn since
    bool ofItsVisit = true;                ///< else other work was carried out in it
    std::optional<CivilDate> approved{};   ///< the return to service after its list of discrepancies
    std::optional<CivilDate> incomplete{}; ///< the last release after incomplete maintenance
    std::string order{};                   ///< the shop's own number

    /// Closed with a list of discrepancies that grounds what was inspected.
    [[nodiscard]] bool isPending() const { return outcome == Outcome::Discrepancies && !approved; }
    /// What is signed in it releases something: work on what is on no balloon does so where it came as a component.
    [[nodiscard]] bool releases() const;
    /// What it accomplished counts.
    [[nodiscard]] bool isReleased() const { return !revoked && (outcome == Outcome::Released || approved); }
};

/// All inspections opened up to a day: open ones first, then the latest closed.
[[nodiscard]] Result<std::vector<InspectionCard>> inspectionsOn(Books& books, CivilDate on);

}
