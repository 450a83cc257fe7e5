// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Open defects of an item, and how they stand in the due list. One that is not minor grounds the item from the moment
/// when it was found until it is cleared (ML.A.403(a), from memory: what seriously endangers flight safety is put right
/// before further flight; 14 CFR 91.405, gist read) or deferred; a deferred one, from the end of its deferral on
/// (ML.A.403(c), from memory). What a failing reading found grounds, whatever its finder called it, and nobody defers
/// it: it is neither equipment nor another defect of ML.A.403(b) (AMC and GM read, paragraph from memory).

#include "registry/item_facts.h"
#include "rules/programme/requirement.h"
#include "rules/standing/standing.h"

#include <memory_resource>
#include <vector>

namespace crownring {

/// A defect that was found and not cleared; the marks live in the item's facts.
struct OpenDefect {
    const DefectMark* found = nullptr;
    const DefectMark* deferred = nullptr; ///< the latest deferral since it was found; null when there is none
    const DefectMark* cleared = nullptr;  ///< the latest clearing that does not count
};

/// Nobody defers it: a reading beyond the manual's limit found it, or its finder says that it is a danger to flight.
[[nodiscard]] bool isGrounding(const DefectMark& found);

/// In the order in which they were found. A clearing without a time answers what was found on its day, at whatever time
/// that was. What was found again after it was cleared is open again; a mark of a defect
/// that was never found says nothing. What was put right in a visit of which no release stands is open (ML.A.801(a),
/// (b), 14 CFR 91.407(a), from memory: nothing is operated after maintenance that nobody released).
[[nodiscard]] std::vector<OpenDefect> openDefects(const ItemFacts& item);

/// Does the defect bar flight on that day? A minor one only when its deferral has run out: what was put off with a
/// limit is put right by then, whatever its grade (ML.A.403(c), from memory).
[[nodiscard]] bool bars(const OpenDefect& defect, const ItemFacts& item, CivilDate today);

/// "defect/…": the name that an open defect has in the due list, and the defect that such a name is of; nothing for
/// another requirement.
[[nodiscard]] RequirementId requirementOf(const DefectId& defect);
[[nodiscard]] std::optional<DefectId> defectOf(const RequirementId& requirement);

/// `requirementOf` and what was found, as a requirement of the due list: mandatory unless minor, and when its deferral
/// has run out, else recommended.
[[nodiscard]] Requirement defectRequirement(const OpenDefect& defect, const ItemFacts& item, CivilDate today);
[[nodiscard]] const Programme& defectProgramme();

/// Not minor: `Lapsed` until deferred, and where the deferral does not hold for what it is flown for. Deferred:
/// `Clear`, `Nearing` (30 days, 10 h), `Lapsed` by the worse of its limits; `Unproven` where it ends by a clock that is
/// not known. Minor and not deferred: `Nearing`.
[[nodiscard]] Assessment assessDefect(const OpenDefect& defect, const ItemFacts& item, CivilDate today,
                                      std::pmr::memory_resource* memory = std::pmr::get_default_resource());

}
