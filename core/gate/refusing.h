// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What several checks of the gate say and look up.

#include "record/journal.h"
#include "registry/books.h"

#include <optional>
#include <string>
#include <string_view>

namespace crownring {

/// The same problem at the line of an entry.
[[nodiscard]] Problem atLine(Problem problem, int line);

/// The same problem at the keys of what `entry` amends, where it is an amendment.
[[nodiscard]] Problem asAmended(Problem problem, const Entry& entry);

/// The key under which an entry should say by whom or why it takes something back, and does not: "by", and of a void
/// "reason", else "note"; empty where it says both.
[[nodiscard]] std::string_view unsaidIn(const Entry& entry);

/// The line of the entry that an amendment is about in the end (`Journal::root`); a problem where there is none.
[[nodiscard]] Result<JournalLine> rootOf(Journal& journal, const EntryId& id);

/// The line of what `entry` amends in the end; nothing where it is no amendment.
[[nodiscard]] Result<std::optional<JournalLine>> amendedRoot(Journal& journal, const Entry& entry);

/// What the entry that an amendment is about says by now; nothing where it is voided or cannot be read, and for what is
/// no amendment.
[[nodiscard]] Result<std::optional<Entry>> amendedBy(Journal& journal, const Entry& amendment);

/// What an entry of a batch comes to, where it says one of `Said`: itself, or what an amendment leaves of another. A
/// long log of flights is passed over without a copy.
template <class... Said>
[[nodiscard]] Result<std::optional<Entry>> standingAs(Journal& journal, const Entry& entry) {
    const auto says = [](const Entry& each) { return (std::holds_alternative<Said>(each.body) || ...); };
    if (says(entry))
        return entry;
    auto amended = amendedBy(journal, entry);
    if (amended && *amended && !says(**amended))
        return std::optional<Entry>();
    return amended;
}

/// Of an adoption with a text: that our reader does not take it, or that it is of another programme.
[[nodiscard]] std::optional<Problem> unreadableText(const ProgrammeAdopted& adopted);

/// The inspection of the record that what was accomplished refers to; nothing where it refers to a paper, or to none.
[[nodiscard]] Result<std::optional<InspectionId>> accomplishedBy(Books& books, const RequirementDone& done);

/// The latest word on the inspection that a signature covers; nothing where there is none.
[[nodiscard]] Result<std::optional<Stamp>> saidLast(Books& books, const InspectionId& inspection);

}
