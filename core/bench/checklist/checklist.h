// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A checklist: what is looked at in an inspection, line by line, in the order in which one works, each line with the
/// clause that asks for it. A plain value read from a document (assets/checklists;
/// assets/schema/checklist.schema.json). It says what to look for; what passes is said by the type's own manual, and by
/// nobody here.

#include "bench/checklist/visit.h"
#include "measure/name.h"
#include "problem/problem.h"
#include "record/kinds/item_kind.h"

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace crownring {

/// A reading that a line asks for.
struct AskedReading {
    std::string quantity;  ///< "grab-strength" …
    bool required = false; ///< the line is not done without it, whatever limits the type has
    bool placed = false;   ///< taken at gores and rows of the envelope
    bool operator==(const AskedReading&) const = default;
};

struct ChecklistSection {
    std::string id;
    std::string title;
    bool operator==(const ChecklistSection&) const = default;
};
/// The section, by its id, of what the program adds to a checklist: work that is neither of the visit nor on the list.
inline constexpr std::string_view furtherWork = "further-work";
/// Its own title; of `furtherWork` a phrase.
[[nodiscard]] Argument titleOf(const ChecklistSection& section);

/// What an owner's task can be besides work that is described.
struct OwnerWork {
    bool repair = false;
    bool part = false;
    bool operator==(const OwnerWork&) const = default;
};

struct ChecklistLine {
    std::string id; ///< different in all lines of a checklist, e.g. "envelope.crown-ring"
    std::string section;
    std::vector<ItemKind> kinds; ///< once for each such item; empty: once a visit
    std::string title;
    std::string lookFor;
    std::vector<std::pair<Regime, std::string>> sources; ///< each with its clause, in their order, at least one
    std::vector<Visit> visits;           ///< empty: every periodic inspection (`isPeriodic`) of a regime with a source
    std::vector<RequirementId> onlyWith; ///< it comes only when one of these is part of the work; empty: always
    std::vector<RequirementId> serves{}; ///< it is carried out for these too, where they are part of the work
    std::vector<std::string> after{};    ///< it comes only after one of these events; empty: whatever happened
    std::vector<AskedReading> readings;
    bool photograph = false; ///< one is asked for
    bool tester = false;     ///< done with a tool that must be in calibration
    std::string ownerRule;   ///< in visits of owner's tasks: the rule that lets the pilot-owner do it
    /// Of an owner's task: whether a repair or a part replaced can be its work; nothing where the list does not say.
    std::optional<OwnerWork> ownerWork{};
    bool required = true; ///< without it the inspection cannot be released
    bool ownLook = false; ///< it wants a look of its own: never settled together with others
    std::string asks{};   ///< what of the record it rests on besides a look: `askedDirectives`; empty: nothing
    bool operator==(const ChecklistLine&) const = default;

    /// One of those that it is there for.
    [[nodiscard]] bool isFor(const RequirementId& requirement) const;
    /// It tests the fabric, or what else a tester in calibration reads: done is only what was read.
    [[nodiscard]] bool isTest() const;
    /// The clause that asks for it; empty where that regime does not.
    [[nodiscard]] std::string_view clauseUnder(Regime regime) const;
};
/// That every directive is carried out on what is inspected.
inline constexpr std::string_view askedDirectives = "directives";
/// Lists of old say so by the line's id alone: "….directives".
[[nodiscard]] constexpr bool asksForDirectives(const ChecklistLine& line) {
    return line.asks == askedDirectives || (line.asks.empty() && std::string_view(line.id).ends_with(".directives"));
}
/// A line that somebody does who did not do the work: ML.A.402(b), error-capturing, from memory.
[[nodiscard]] constexpr bool isSecondLook(std::string_view line) {
    return line == "work.controls" || line == "closing.vent-and-control-lines";
}
/// The line on the documents of what was fitted and used.
[[nodiscard]] constexpr bool isOfMaterial(std::string_view line) { return line == "work.parts"; }

/// A line that is done by flying: "….check-flight", of the shelf or of an organisation's own list.
[[nodiscard]] constexpr bool isFlown(std::string_view line) {
    return line == "check-flight" || line.ends_with(".check-flight");
}

struct Checklist {
    std::string id;
    std::string revision;
    std::string title;
    std::string source;
    std::string note;
    std::vector<ChecklistSection> sections;
    std::vector<ChecklistLine> lines; ///< in the order of their sections
    bool operator==(const Checklist&) const = default;
};

/// Reads a checklist document (JSON). BadJson when it is no JSON; BadValue with the path inside the document
/// (`Where::key`, a JSON pointer such as "/lines/3/section") when it breaks the schema or contradicts itself: an id
/// twice, a section that is not there, lines out of the order of the sections, a visit of a regime without a source,
/// a reading of a line that has no item, a reading at places of something that is no envelope, an owner's task without
/// the rule that allows it.
[[nodiscard]] Result<Checklist> checklistFrom(std::string_view text);

/// Reads a document that was checked when it came into the record; the schema is not asked again. BadValue where it
/// cannot be read all the same.
[[nodiscard]] Result<Checklist> keptChecklist(std::string_view text);

/// The canonical text of a document: keys sorted, no spaces.
[[nodiscard]] Result<std::string> canonicalChecklist(std::string_view text);

/// The document of a checklist, canonical; what has its default is left out. `checklistFrom` reads it back equal.
[[nodiscard]] std::string checklistText(const Checklist& checklist);

/// The checklists that ship with the program, as their canonical texts.
[[nodiscard]] const std::vector<std::string>& checklistShelf();
/// Those that shipped before, by which inspections of the record were opened: under their name and revision, too,
/// nobody leaves out a line.
[[nodiscard]] const std::vector<std::string>& formerChecklists();

/// The lines of a visit, in working order. `onlyWith` is left to who knows the work. The pointers are into `checklist`.
[[nodiscard]] std::vector<const ChecklistLine*> linesFor(const Checklist& checklist, Visit visit);

/// `base` with an organisation's own lines behind those of their section, and its own sections at the end. A section
/// that both have keeps the base's title. A line id that the base has is BadValue at "/lines/N/id" of `own`.
[[nodiscard]] Result<Checklist> withOwnLines(Checklist base, const Checklist& own);

}
