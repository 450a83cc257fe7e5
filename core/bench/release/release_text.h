// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The words of a release: what the rules want in it, the statement that is signed, and what is still missing. It
/// composes what it is given and judges nothing: whether a balloon may be released is for the person who signs.
///
/// Sources. Read: 14 CFR 43.11(a), (b). Read in a UK-retained copy of Part-M: AMC M.A.801(e)1(a), (b), whose Part-ML
/// twin is from memory, as are ML.A.801(e) to (g) and 14 CFR 43.9(a). A manufacturer's checklist, read, asks for total
/// time and highest temperature; it is an example of a type's own instructions and no law.

#include "bench/checklist/visit.h"
#include "bench/release/content_phrase.h"
#include "bench/release/entitlement.h"
#include "bench/wording/places.h"
#include "bench/wording/wording.h"
#include "measure/count.h"
#include "record/kinds/defects.h"
#include "record/kinds/inspections.h"
#include "record/kinds/item_kind.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace crownring {

/// Work that was performed, as a maintenance entry describes it.
struct DescribedWork {
    Argument what = "";         ///< on which item
    std::string data;           ///< to which it was done
    std::optional<Grade> grade; ///< of a repair or an alteration
    std::string approval;
    std::string performed; ///< by whom, where it was another
};

struct ReleasedItem {
    ItemKind kind = ItemKind::Other;
    std::string named;           ///< as a statement names it: "basket B1, serial number 88"
    Argument title = "";         ///< "basket B1, type B-4, serial 88"
    std::optional<Minutes> time; ///< in service; absent: not known
};

/// Everything that a release is composed of. What is empty or absent was not given.
struct ReleaseFacts {
    Visit visit = Visit::PartMlInspection;
    std::optional<Argument> otherWork; ///< its titles, where it is not what such a visit accomplishes
    Outcome outcome = Outcome::Released;
    std::string registration; ///< empty: items that are on no balloon
    std::string title;        ///< of the balloon
    std::string envelopeType;
    std::string envelopeSerial;
    std::vector<ReleasedItem> items;
    std::string order; ///< the shop's work order
    std::string owner; ///< of the balloon
    std::string operatedBy;
    std::vector<Argument> extent;               ///< what was done
    std::vector<Argument> readings{};           ///< what was read, in brief
    std::vector<DescribedWork> performed;       ///< and how it is described
    std::vector<Argument> outstanding;          ///< lines that were not done
    std::vector<std::string> manuals;           ///< the data used, with their revision
    std::optional<CivilDate> date;              ///< when the work was completed
    std::optional<Minutes> totalTime;           ///< in service, of the balloon: that of its envelope
    std::optional<Argument> highestTemperature; ///< of the tell-tale
    std::vector<Argument> deferred;
    std::vector<Argument> excepted; ///< on what is inspected and beside the work: not covered
    std::vector<Argument> notAsked; ///< of what has no type: tests that no limit is stated for
    std::string limitations;
    FlownWithin within{}; ///< after incomplete maintenance
    std::vector<Argument> discrepancies;
    std::optional<CivilDate> discrepanciesDated; ///< the list given to the owner
    std::string person;
    std::optional<Capacity> capacity;
    std::string licence;
    std::string annex{}; ///< under which an organisation works, "Part-145"; empty: under Part-ML
    std::string organisation{};
    std::string approval{};
    AdoptedTexts texts{}; ///< in force on that day; of what nobody adopted the wording is that which ships
};

struct ReleaseSection {
    Argument heading;
    std::vector<Argument> paragraphs;
    bool operator==(const ReleaseSection&) const = default;
};

/// In the language of the statement that is signed: "basket B1, serial number 88".
[[nodiscard]] std::string namedInStatement(ItemKind kind, const ItemId& item, const std::optional<std::string>& serial);

/// Under what it may fly, and until when: what is signed "within the limitations stated" states them all.
[[nodiscard]] std::vector<Argument> limitsOfFlight(const std::string& limitations, const FlownWithin& within);

/// An envelope, a basket, a burner and at least one cylinder, on one balloon: less is no aircraft, and is certified by
/// the names of its items (14 CFR 43.11(a)(4) lets a component be certified).
[[nodiscard]] bool isAircraft(const ReleaseFacts& facts);

/// Of items that are on no balloon.
[[nodiscard]] bool isLoose(const ReleaseFacts& facts);
/// An annual or 100-hour inspection as 14 CFR 43.11 has it.
[[nodiscard]] bool isUsInspection(const ReleaseFacts& facts);

/// "minor repair or alteration" …; under Part-ML it is a modification.
[[nodiscard]] Phrase phraseOf(Grade grade, Regime regime);

/// The wording to be signed as it stands.
struct PrescribedStatement {
    std::string text;                    ///< empty where no rule gives one; `because` then says why
    std::string source;                  ///< the rule that prescribes it
    std::optional<Phrase> because;       ///< e.g. items on no balloon: the statement of Part-ML is for an aircraft
    std::optional<Wording> wording{};    ///< what it was composed by
    bool adopted = false;                ///< that wording, by an organisation
    std::vector<std::string> unfilled{}; ///< its places for which nothing is given
    bool operator==(const PrescribedStatement&) const = default;
};
/// By what is adopted, else by what ships.
[[nodiscard]] PrescribedStatement composedStatement(StatementText text, const AdoptedTexts& texts,
                                                    const Places& places);
[[nodiscard]] PrescribedStatement statementOf(const ReleaseFacts& facts);
/// Of who approves the return to service after a list of discrepancies.
[[nodiscard]] PrescribedStatement returnStatementOf(const ReleaseFacts& facts);

/// The work carried out: its extent, what was read, how it is described, the shop's order.
[[nodiscard]] std::vector<Argument> workOf(const ReleaseFacts& facts);

/// The release as headings and paragraphs, without the statement and its signature; sections of which nothing was given
/// are left out, except that unknown times are said to be unknown. The last section is the caution, which stands on
/// every paper and on the release screen.
[[nodiscard]] std::vector<ReleaseSection> sectionsOf(const ReleaseFacts& facts);

/// A required content that was not given.
struct MissingContent {
    ContentPhrase what{};
    std::string rule; ///< document and clause
    bool law = true;  ///< false: asked by a type's instructions, not by law
    bool operator==(const MissingContent&) const = default;
};
[[nodiscard]] std::vector<MissingContent> missing(const ReleaseFacts& facts);

}
