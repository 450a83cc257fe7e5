// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the checks of directives have in common: the revisions of the record, what an answer is for, who may give it.

#include "answers/aircraft_rules.h"
#include "bench/release/entitlement.h"
#include "gate/check.h"

namespace crownring {

// From memory: who releases work to a directive is who may release other work.
inline constexpr const char* complianceRule = "ML.A.303, ML.A.801; 14 CFR 39, 43.9 (from memory)";

/// The revisions of a directive that the record has, as they say now.
[[nodiscard]] Result<std::vector<Entry>> issuesOf(Books& books, const DirectiveId& directive);

/// What is wrong with a directive that is issued.
[[nodiscard]] Findings judgedIssue(const Batch& batch, const Entry& entry, const DirectiveIssued& issued, int line);

/// What an answer is for, on its day; of an item that came into the record later, as it is in the end.
struct Answered {
    std::vector<ItemFacts> items; ///< itself, or all that is on the balloon
    std::optional<Registration> balloon;
    std::vector<ItemFacts> beside; ///< all that is on the balloon
    std::vector<std::string> operations;
};
[[nodiscard]] Result<Answered> answeredOn(Books& books, const DirectiveAnswered& answer, CivilDate on);

/// Who may answer, by the rules under which the items fly. The record is asked for these once.
class Answering {
public:
    explicit Answering(Books& books) : m_books(books) {}

    /// By the table for other work: whoever may release a visit that is for compliance. Nothing where he may.
    [[nodiscard]] Result<std::optional<Barred>> bar(const PersonId& person, std::string_view capacity, CivilDate on,
                                                    const Answered& answered);
    /// The same in any capacity that the person has on that day.
    [[nodiscard]] Result<std::optional<Barred>> barInAny(const PersonId& person, CivilDate on,
                                                         const Answered& answered);
    /// The person holds that licence in that capacity on that day.
    [[nodiscard]] Result<bool> holds(const PersonId& person, std::string_view capacity, CivilDate on,
                                     std::string_view licence);

private:
    [[nodiscard]] Result<std::optional<Regime>> regime(const Answered& answered, CivilDate on);

    Books& m_books;
    std::optional<std::vector<Aircraft>> m_rules;
};

}
