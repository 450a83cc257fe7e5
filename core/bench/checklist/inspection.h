// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// An inspection: a fold over what the record says about one, by stamp. It is open until it is closed; what is dated
/// after that does not belong to it. A correction speaks through the entry that it corrects, and the words that it
/// replaced stay beside it.

#include "bench/checklist/checklist.h"
#include "record/journal.h"
#include "registry/item_facts.h"
#include "rules/programme/requirement.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace crownring {

/// Something said on the bench, with who said it and when.
template <class Body>
struct Said {
    EntryId id;
    Stamp stamp;
    std::string by;
    std::string note;
    Body body;
    std::optional<Entry> first; ///< as first written, where a correction changed it
};

struct Inspection {
    InspectionId id;
    Said<InspectionOpened> opened;
    Checklist checklist; ///< as opened with; empty where a shop's own system said none
    std::vector<Said<LineSettled>> lines;
    std::vector<Said<ReadingTaken>> readings;
    std::vector<Said<DefectFound>> found;
    std::vector<Said<DefectDeferred>> deferred;
    std::vector<Said<DefectCleared>> cleared;
    std::vector<Said<RepairMade>> repairs;
    std::vector<Said<PartReplaced>> parts;
    std::vector<Said<WorkPerformed>> performed;
    std::vector<Said<DirectiveAnswered>> answered;
    std::optional<Said<ReleaseIncomplete>> incomplete; ///< the last one while it is open
    std::optional<Said<InspectionClosed>> closed;      ///< the first one; an inspection closes once
    std::optional<Said<ReleaseRevoked>> revoked;       ///< its release, or the approval of its return, was withdrawn
    std::optional<Said<ReturnApproved>> approved;      ///< the return to service after its list, not withdrawn since
    std::vector<EntryId> late;                         ///< dated after the close: they do not count

    [[nodiscard]] bool isOpen() const { return !closed; }
    /// Closed with a list of discrepancies that nobody has approved the return to service after.
    [[nodiscard]] bool isPending() const {
        return closed && closed->body.outcome == Outcome::Discrepancies && !approved;
    }
    [[nodiscard]] bool isWorkOn(const ItemId& item, std::span<const RequirementId> requirements) const;
    /// An inspection is of all its items, and what comes as a component comes for its work. Of other work those alone
    /// on which something was done or is to be done: who mends a basket says nothing of the cylinders beside it.
    [[nodiscard]] bool concerns(const ItemId& item) const;
    /// The same of what was done alone: what was taken into the work and left undone is certified by nobody.
    [[nodiscard]] bool wasWorkedOn(const ItemId& item) const;
};

/// Some of its work is what such a visit accomplishes, or the work is not said. Else a periodic visit is no annual,
/// however it was opened: it is called after its work, and asks for that alone.
[[nodiscard]] bool isOfItsVisit(Visit visit, std::span<const Work> work);

/// @param told about the inspection, by stamp. UnknownReference when it was never opened.
[[nodiscard]] Result<Inspection> inspectionFrom(const InspectionId& id, std::span<const JournalLine> told);

/// The same as it stood at a moment while it was open: without what was said later, and without its signatures.
[[nodiscard]] Inspection openAt(Inspection inspection, const Stamp& moment);

/// One line to be done: of the checklist, for one item or for the visit.
struct WorkLine {
    const ChecklistLine* line =
        nullptr;                     ///< in the inspection's checklist; null for a line that only a shop's entry names
    const ItemFacts* item = nullptr; ///< null: once a visit
    const Said<LineSettled>* settled = nullptr; ///< the latest word on it
    std::vector<const Said<ReadingTaken>*> readings;

    [[nodiscard]] LineState state() const { return settled ? settled->body.state : LineState::Open; }
    /// Nothing is released before it is settled.
    [[nodiscard]] bool isMissing() const { return state() == LineState::Open && (!line || line->required); }
    /// Done with a tool in calibration that is named for the line; where it asks for readings each names its own.
    [[nodiscard]] bool asksTester() const { return line && line->tester && line->readings.empty(); }
    /// The clause that asks for it; empty for a line that only a shop's entry names.
    [[nodiscard]] std::string_view clauseUnder(Regime regime) const {
        return line ? line->clauseUnder(regime) : std::string_view();
    }
};

/// All lines in the order in which one works: by section, then item, then line; at the end what was settled and stands
/// on no list. The pointers are into `inspection` and `items`.
/// @param items the facts of what is inspected
[[nodiscard]] std::vector<WorkLine> workLines(const Inspection& inspection, std::span<const ItemFacts> items);

}
