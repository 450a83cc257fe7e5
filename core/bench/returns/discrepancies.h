// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A list of discrepancies that an inspection was closed with, and the approval of the return to service after it: what
/// was on the list when it was signed, what of that still stands on a day, and who may approve. Pure.
///
///     annual signed on 2026-06-02 with a torn panel and a hose that is spent: pending; the panel cleared on 06-20, the
///     hose replaced and the old one scrapped on 06-25; approved on 06-26: the annual counts from 2026-06-02

#include "bench/confirmed/wording_refusals.h"
#include "bench/release/release.h"

#include <optional>
#include <vector>

namespace crownring {

struct ListedItem {
    ItemId item;
    RequirementId requirement; ///< its name in the due list: "defect/…", or what stood against flight beside the work
    Argument what = "";
    bool stands = true; ///< not answered on the day asked
    bool read = false;  ///< answered by no bare statement: what a reading found, a test of fabric
    bool operator==(const ListedItem&) const = default;
};

struct Discrepancies {
    InspectionId inspection;
    Stamp closed;
    std::vector<ItemId> items; ///< what was inspected
    std::optional<Registration> balloon;
    std::vector<ListedItem> listed; ///< in the order of the items, defects first

    [[nodiscard]] ListCount count() const;
};

/// What is on the list: every open defect, deferred ones too, and what was signed as excepted.
/// @param then the facts of the items as the signature found them
[[nodiscard]] std::vector<ListedItem> listedIn(const InspectionClosed& closed, const std::vector<ItemFacts>& then);

/// All that an approval is judged by.
struct ReturnFile {
    Discrepancies list; ///< on the day of the approval
    bool pending = true;
    bool withdrawn = false;                ///< an approval of it was withdrawn: what it accomplished counts no more
    std::optional<TimeOfDay> time;         ///< of the closing, where it states one
    BenchFile then;                        ///< as the signature found it
    std::vector<std::string> operations;   ///< of the balloon on the day of the approval
    std::vector<Entitlement> entitlements; ///< on that day
    WordingBook wordings;                  ///< on that day
    std::vector<Refusal> unsupported;      ///< what would refuse the list itself, by what the record says now
    std::vector<Work> accomplishments;     ///< what counts from the day of the inspection once it is approved
};

/// What was signed as excepted: its title, or what names it where the programme gave none.
[[nodiscard]] Argument titleOf(const SignedException& excepted);

struct Approving {
    PersonId person;
    Capacity capacity = Capacity::IndependentCertifyingStaff;
    CivilDate on;
};

/// What stands in the way; empty when the return to service may be approved so.
[[nodiscard]] std::vector<Refusal> refusals(const ReturnFile& file, const Approving& approving);

/// The words of the approval. An inspection that found the aircraft unairworthy did not determine that it is airworthy,
/// so those of 14 CFR 43.11(a)(4) are not among them.
[[nodiscard]] PrescribedStatement statementOf(const ReturnFile& file, const Approving& approving);

/// Whether it is confirmed is asked apart, as of a release.
[[nodiscard]] WordingAsked wordingAsked(const ReturnFile& file, const Approving& approving);

/// What the record composes: who approves adds nothing of it by hand.
[[nodiscard]] ReturnApproved composedApproval(const ReturnFile& file, const Approving& approving);

}
