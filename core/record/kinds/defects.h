// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Defects are found, deferred and cleared; work is performed, repairs are made and parts replaced.

#include "civil/civil_date.h"
#include "measure/count.h"
#include "record/kinds/kind.h"
#include "record/kinds/panels.h"

#include <optional>
#include <string>
#include <vector>

namespace crownring {

/// The grade of a defect.
enum class Severity {
    Barring,    ///< as entries of old say it: read as `Deferrable`
    Minor,      ///< to be put right, does not bar flight
    Grounding,  ///< bars flight until it is cleared; nobody defers it
    Deferrable, ///< bars flight until it is cleared, or deferred by whom the rules let defer it
};
inline constexpr int severityCount = 4;
[[nodiscard]] std::string_view severityName(Severity severity);
[[nodiscard]] std::optional<Severity> severityFrom(std::string_view name);

/// How grave it is: 0 does not bar flight, 1 may be deferred, 2 is never.
[[nodiscard]] int rankOf(Severity severity);

struct DefectFound {
    DefectId defect;
    ItemId item;
    std::string what; ///< empty: that the reading failed
    Severity severity = Severity::Barring;
    std::optional<InspectionId> inspection;
    std::string line;
    std::optional<EntryId> reading; ///< the reading that failed
    PanelPlace place;
    std::vector<std::string> photographs{}; ///< SHA-256 of each, 64 hex digits
    std::optional<PersonId> gradedBy{}; ///< who decided that it is less than it was found to be; a correction says so
    bool operator==(const DefectFound&) const = default;
};

template <>
struct Kind<DefectFound> {
    static constexpr std::string_view name = "defect.found";
    static constexpr std::string_view keys =
        "defect item what severity [inspection line reading gore row zone place photographs graded_by]";
    static constexpr TimeOfDay time{18, 0};
    static constexpr std::tuple mentions{Key{"item", &DefectFound::item}, Key{"inspection", &DefectFound::inspection}};
    static constexpr auto brings = &DefectFound::defect;
    static constexpr std::tuple toldUnder{&DefectFound::defect, &DefectFound::inspection};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = &DefectFound::inspection;
    static DefectFound read(ObjectReader& reader);
    static void write(nlohmann::json& into, const DefectFound& body);
};

/// At least one of `until` and `untilMinutes`.
struct DefectDeferred {
    DefectId defect;
    ItemId item;
    std::string reason;
    std::optional<CivilDate> until;      ///< the last good day
    std::optional<Minutes> untilMinutes; ///< a figure of the item's clock
    PersonId agreedBy;
    std::optional<InspectionId> inspection;
    bool notRequired = false; ///< equipment that neither its certification nor the rules of the operation require
    std::string placard{};    ///< how it was removed or deactivated, and placarded "Inoperative"
    bool operator==(const DefectDeferred&) const = default;
};

template <>
struct Kind<DefectDeferred> {
    static constexpr std::string_view name = "defect.deferred";
    static constexpr std::string_view keys =
        "defect item reason agreed_by and until or until_minutes [not_required placard inspection]";
    static constexpr TimeOfDay time{18, 1};
    static constexpr std::tuple mentions{Key{"defect", &DefectDeferred::defect}, Key{"item", &DefectDeferred::item},
                                         Key{"inspection", &DefectDeferred::inspection},
                                         Key{"agreed_by", &DefectDeferred::agreedBy}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&DefectDeferred::defect, &DefectDeferred::inspection};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = &DefectDeferred::inspection;
    static DefectDeferred read(ObjectReader& reader);
    static void write(nlohmann::json& into, const DefectDeferred& body);
};

struct DefectCleared {
    DefectId defect;
    ItemId item;
    std::string what; ///< was done
    std::string ref;
    std::optional<InspectionId> inspection;
    bool operator==(const DefectCleared&) const = default;
};

template <>
struct Kind<DefectCleared> {
    static constexpr std::string_view name = "defect.cleared";
    static constexpr std::string_view keys = "defect item what [ref inspection]";
    static constexpr TimeOfDay time{18, 2};
    static constexpr std::tuple mentions{Key{"defect", &DefectCleared::defect}, Key{"item", &DefectCleared::item},
                                         Key{"inspection", &DefectCleared::inspection}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&DefectCleared::defect, &DefectCleared::inspection};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = &DefectCleared::inspection;
    static DefectCleared read(ObjectReader& reader);
    static void write(nlohmann::json& into, const DefectCleared& body);
};

struct RepairMade {
    ItemId item;
    std::string method;
    PanelPlace place;
    std::optional<Millimetres> width;
    std::optional<Millimetres> height;
    std::string lot; ///< of the material
    std::optional<DefectId> defect;
    std::optional<InspectionId> inspection;
    std::string line{}; ///< of an owner's task that it is
    bool operator==(const RepairMade&) const = default;
};

template <>
struct Kind<RepairMade> {
    static constexpr std::string_view name = "repair.made";
    static constexpr std::string_view keys =
        "item method [gore row zone place width_mm height_mm lot defect inspection line]";
    static constexpr TimeOfDay time{18, 0};
    static constexpr std::tuple mentions{Key{"defect", &RepairMade::defect}, Key{"item", &RepairMade::item},
                                         Key{"inspection", &RepairMade::inspection}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&RepairMade::item, &RepairMade::defect, &RepairMade::inspection};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = &RepairMade::inspection;
    static RepairMade read(ObjectReader& reader);
    static void write(nlohmann::json& into, const RepairMade& body);
};

struct PartReplaced {
    ItemId item;
    std::string part;
    std::string removedSerial;
    std::string fittedSerial;
    std::string releaseDocument; ///< that the fitted part came with
    std::optional<DefectId> defect;
    std::optional<InspectionId> inspection;
    std::string line{}; ///< of an owner's task that it is
    bool operator==(const PartReplaced&) const = default;
};

template <>
struct Kind<PartReplaced> {
    static constexpr std::string_view name = "part.replaced";
    static constexpr std::string_view keys =
        "item part release_document [removed_serial fitted_serial defect inspection line]";
    static constexpr TimeOfDay time{18, 0};
    static constexpr std::tuple mentions{Key{"defect", &PartReplaced::defect}, Key{"item", &PartReplaced::item},
                                         Key{"inspection", &PartReplaced::inspection}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&PartReplaced::item, &PartReplaced::defect, &PartReplaced::inspection};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = &PartReplaced::inspection;
    static PartReplaced read(ObjectReader& reader);
    static void write(nlohmann::json& into, const PartReplaced& body);
};

/// How grave a repair or an alteration is, and so who may approve it, to which data.
enum class Grade {
    Servicing, ///< neither a repair nor an alteration
    Minor,
    Major,
    Standard, ///< a standard repair or change (CS-STAN)
};
inline constexpr int gradeCount = 4;
[[nodiscard]] std::string_view gradeName(Grade grade);
[[nodiscard]] std::optional<Grade> gradeFrom(std::string_view name);

/// Work that was performed in a visit, as a maintenance entry describes it.
struct WorkPerformed {
    InspectionId inspection;
    ItemId item;
    std::string what; ///< was done
    std::string data; ///< to which it was done, with revision and page
    std::optional<Grade> grade{};
    std::string approval{};              ///< reference of the form or approval that a major one has
    std::optional<PersonId> performed{}; ///< by whom, where that is another than who signs
    std::string line{};                  ///< of an owner's task that it is
    std::optional<DefectId> defect{};
    bool operator==(const WorkPerformed&) const = default;
};

template <>
struct Kind<WorkPerformed> {
    static constexpr std::string_view name = "work.performed";
    static constexpr std::string_view keys = "inspection item what data [grade approval performed_by line defect]";
    static constexpr TimeOfDay time{18, 0};
    static constexpr std::tuple mentions{Key{"defect", &WorkPerformed::defect}, Key{"item", &WorkPerformed::item},
                                         Key{"inspection", &WorkPerformed::inspection}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&WorkPerformed::item, &WorkPerformed::defect, &WorkPerformed::inspection};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = &WorkPerformed::inspection;
    static WorkPerformed read(ObjectReader& reader);
    static void write(nlohmann::json& into, const WorkPerformed& body);
};

}
