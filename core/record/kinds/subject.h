// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The sorts of things that entries speak of by name. The sort follows from the type of the name.

#include "measure/name.h"

namespace crownring {

/// The numbers are those of the record's tables.
enum class Subject {
    Item = 1,
    Balloon = 2,
    Requirement = 3,
    Inspection = 4,
    Defect = 5,
    Person = 6,
    Tester = 7,
    Type = 8,
    Checklist = 9,
    Entry = 10, ///< of which nothing but its id can be read
    Text = 11,  ///< wording that is signed
    Directive = 12
};

constexpr Subject subjectOf(const ItemId&) { return Subject::Item; }
constexpr Subject subjectOf(const Registration&) { return Subject::Balloon; }
constexpr Subject subjectOf(const RequirementId&) { return Subject::Requirement; }
constexpr Subject subjectOf(const InspectionId&) { return Subject::Inspection; }
constexpr Subject subjectOf(const DefectId&) { return Subject::Defect; }
constexpr Subject subjectOf(const PersonId&) { return Subject::Person; }
constexpr Subject subjectOf(const TesterId&) { return Subject::Tester; }
constexpr Subject subjectOf(const TypeName&) { return Subject::Type; }
constexpr Subject subjectOf(const ChecklistId&) { return Subject::Checklist; }
constexpr Subject subjectOf(const EntryId&) { return Subject::Entry; }
constexpr Subject subjectOf(const TextId&) { return Subject::Text; }
constexpr Subject subjectOf(const DirectiveId&) { return Subject::Directive; }

}
