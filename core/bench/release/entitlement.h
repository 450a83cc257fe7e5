// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Who may release what, and who may defer a defect. The record says in which capacity a person may act, from when to
/// when and for which balloons; the rules say what that capacity may sign.
///
/// Sources, read unless marked: ML.A.801(b) (who issues a certificate of release); Part-ML Appendix II(b)(1) to (9)
/// (what a pilot-owner may not release); FAA-H-8083-11 ch. 2 (annual: repair station, manufacturer, A&P with IA;
/// 100-hour: also A&P). From memory: ML.A.803, ML.A.403(b), 14 CFR 43.3(g), 43.7(f), 91.213(d), 91.405.
///
/// Operations. ML.A.201(e) names balloons operated under Subpart-ADD and those of commercial training organisations
/// (read); that it has them maintained by an approved organisation (ML.1(c)(2)) is from memory, and holds here for what
/// the record calls for-hire. "instruction" alone does not say that a training organisation is a commercial one: it is
/// judged as a private operation.
///
/// Not judged here: ratings inside a licence, and the airworthiness review, which is another act (`review_rule.h`).

#include "bench/checklist/visit.h"
#include "civil/civil_date.h"
#include "measure/name.h"
#include "record/kinds/defects.h"
#include "record/kinds/shop.h"

#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace crownring {

enum class Capacity {
    IndependentCertifyingStaff,  ///< Part-66 licence, in his own name
    OrganisationCertifyingStaff, ///< for an approved maintenance organisation
    PilotOwner,
    Mechanic,                ///< airframe and powerplant (A&P)
    InspectionAuthorization, ///< A&P who holds one (IA)
    RepairStation,
    Manufacturer,
    PrivatePilot,             ///< owner or operator, at least a private pilot
    AirworthinessReviewStaff, ///< of an approved organisation
    ReviewAuthorisation,      ///< of independent certifying staff, to review
    Authority,                ///< the competent authority
};
inline constexpr std::array allCapacities{Capacity::IndependentCertifyingStaff,
                                          Capacity::OrganisationCertifyingStaff,
                                          Capacity::PilotOwner,
                                          Capacity::Mechanic,
                                          Capacity::InspectionAuthorization,
                                          Capacity::RepairStation,
                                          Capacity::Manufacturer,
                                          Capacity::PrivatePilot,
                                          Capacity::AirworthinessReviewStaff,
                                          Capacity::ReviewAuthorisation,
                                          Capacity::Authority};
/// "independent-certifying-staff" …, as the record writes it.
[[nodiscard]] std::string_view capacityName(Capacity capacity);
[[nodiscard]] std::optional<Capacity> capacityFrom(std::string_view name);
[[nodiscard]] Term termOf(Capacity capacity);
[[nodiscard]] Regime regimeOf(Capacity capacity);
/// One signs airworthiness reviews in it, and nothing else.
[[nodiscard]] bool isOfReviewers(Capacity capacity);

struct Entitlement {
    PersonId person;
    Capacity capacity = Capacity::PilotOwner;
    std::string licence;
    CivilDate from;
    std::optional<CivilDate> until;        ///< the last good day
    std::vector<Registration> balloons;    ///< only for these; empty: any, and items that are on none
    std::string organisation{};            ///< on whose behalf
    std::string approval{};                ///< number of that organisation's approval
    std::optional<CivilDate> lastReview{}; ///< before the record's own
    bool operator==(const Entitlement&) const = default;
};

/// Of an entry `person.entitled` dated `from`. BadValue for a capacity that does not exist.
[[nodiscard]] Result<Entitlement> entitlementFrom(const PersonEntitled& said, CivilDate from);

/// Why not, and by which rule.
struct Barred {
    Phrase why;
    std::string rule; ///< document and clause
    bool operator==(const Barred&) const = default;
};

/// A person about to act.
struct Signatory {
    PersonId person;
    Capacity capacity = Capacity::PilotOwner;
    std::optional<Registration> balloon; ///< what is acted on; none: items that are on no balloon
    std::vector<std::string> operations; ///< of that balloon
    CivilDate on;
};

/// Commercial passenger ballooning, Subpart-ADD of Part-BOP (Reg. (EU) 2018/395): operations "for-hire" or
/// "subpart-add".
[[nodiscard]] bool isUnderSubpartAdd(std::span<const std::string> operations);

/// What a capacity may never sign, whoever holds it; nothing when it may.
[[nodiscard]] std::optional<Barred> barOf(Capacity capacity, Visit visit);

/// Why nobody releases a major repair or alteration in that capacity; nothing when it may be. A mechanic without an
/// inspection authorization does not (14 CFR 65.95(a)(1), 43.7(b), from memory), nor an owner (a complex task: Part-ML
/// Appendix II(b)(8), read; 14 CFR 43.3(g)).
[[nodiscard]] std::optional<Barred> barOfMajor(Capacity capacity);

/// Nothing when the record entitles the person to the capacity, on that day, for that balloon.
[[nodiscard]] std::optional<Barred> notEntitled(std::span<const Entitlement> entitlements, const Signatory& signatory);

/// That person's in that capacity, on that day; null where there is none.
[[nodiscard]] const Entitlement* heldBy(std::span<const Entitlement> entitlements, const PersonId& person,
                                        Capacity capacity, CivilDate on);

/// Nothing when the person may release the visit (or sign its list of discrepancies).
[[nodiscard]] std::optional<Barred> mayRelease(std::span<const Entitlement> entitlements, const Signatory& signatory,
                                               Visit visit);

/// Nothing when the person may approve the return to service after the visit's list of discrepancies. A mechanic may
/// after that of an annual, too: what is on it is cleared by whom the rules let do that work (14 CFR 43.11(b), read;
/// FAA-G-8082-19, an extract, read).
[[nodiscard]] std::optional<Barred> mayApproveReturn(std::span<const Entitlement> entitlements,
                                                     const Signatory& signatory, Visit visit);

/// Its licence, with the organisation and its approval beside it.
[[nodiscard]] std::string licenceText(const Entitlement& held);

/// Under which annex an approved organisation works, as the number of its approval says (from memory): "QE.145.0031" is
/// of Part-145, "QE.CAO.0007" of Part-CAO.
enum class Annex { Unknown, Part145, PartCao, PartCamo, SubpartF, SubpartG };
[[nodiscard]] Annex annexOf(std::string_view approval);
/// "Part-145" …; empty for `Unknown`.
[[nodiscard]] std::string_view annexName(Annex annex);

/// The licence that the person acts under in that capacity on that day, as `licenceText`;
/// empty where the record has none.
[[nodiscard]] std::string licenceOf(std::span<const Entitlement> entitlements, const PersonId& person,
                                    Capacity capacity, CivilDate on);

/// What is to be put off.
struct Deferral {
    Severity severity = Severity::Deferrable;
    bool notRequired = false; ///< equipment that neither its certification nor the rules of the operation require
    bool placarded = false;   ///< removed or deactivated, and placarded "Inoperative"
};

/// Nothing when the person may agree to put off a defect; `Grounding` nobody may.
///
///     Part-ML (ML.A.403(b), paragraph from memory, its AMC and GM read): certifying staff, any that is deferrable; a
///     pilot-owner equipment that is not required, and what is required too unless under Subpart-ADD. As owner he
///     agrees by signing.
///     United States: what bars flight when it is not required, removed or deactivated and placarded (14 CFR 91.213(d),
///     from memory), by whoever is entitled, a pilot too; else nobody: it is repaired (91.405).
[[nodiscard]] std::optional<Barred> mayDefer(std::span<const Entitlement> entitlements, const Signatory& signatory,
                                             const Deferral& deferral);

}
