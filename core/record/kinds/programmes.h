// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Programmes are adopted, what they require is done, and the review that they ask for is signed.

#include "civil/civil_date.h"
#include "measure/usage.h"
#include "record/kinds/kind.h"
#include "record/kinds/shop.h"
#include "record/kinds/signatures.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace crownring {

/// Whom a programme binds from its adoption on.
struct BoundBalloons {
    std::vector<Registration> balloons;
    bool operator==(const BoundBalloons&) const = default;
};
struct BoundItems {
    std::vector<ItemId> items;
    bool operator==(const BoundItems&) const = default;
};
struct BoundEverything {
    bool operator==(const BoundEverything&) const = default;
};
using Bound = std::variant<BoundBalloons, BoundItems, BoundEverything>;

struct ProgrammeAdopted {
    ProgrammeId programme;
    Bound bound;
    std::string document; ///< the programme's whole text as canonical JSON; empty only before `post` has filled it in
    std::string digest;   ///< SHA-256 of `document`, 64 hex digits
    bool operator==(const ProgrammeAdopted&) const = default;
};

/// Whom it binds by name; null where it does not.
[[nodiscard]] const std::vector<Registration>* boundBalloons(const ProgrammeAdopted& adopted);
[[nodiscard]] const std::vector<ItemId>* boundItems(const ProgrammeAdopted& adopted);

template <>
struct Kind<ProgrammeAdopted> {
    static constexpr std::string_view name = "programme.adopted";
    static constexpr std::string_view keys = "programme and one of balloons, items, everything [document digest]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{Key{"balloons", boundBalloons}, Key{"items", boundItems}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = nothing;
    static ProgrammeAdopted read(ObjectReader& reader);
    static void write(nlohmann::json& into, const ProgrammeAdopted& body);
};

struct RequirementDone {
    ItemId item;
    RequirementId requirement;
    Figures clock; ///< what the paper states; an absent figure is computed
    std::string method;
    std::string ref;                     ///< the inspection that accomplished it, or the paper
    std::optional<PersonId> signatory{}; ///< of that paper
    std::string licence{};               ///< of who signed it
    std::optional<CivilDate> expires{};  ///< the last good day as that paper prints it: then it is the due date
    std::string mark{};                  ///< that the tester stamped beside the date
    bool operator==(const RequirementDone&) const = default;
};

template <>
struct Kind<RequirementDone> {
    static constexpr std::string_view name = "requirement.done";
    static constexpr std::string_view keys =
        "item requirement [clock{minutes landings inflations} method ref signatory licence expires mark]";
    static constexpr TimeOfDay time{18, 0};
    static constexpr std::tuple mentions{Key{"item", &RequirementDone::item}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = nothing;
    static RequirementDone read(ObjectReader& reader);
    static void write(nlohmann::json& into, const RequirementDone& body);
};

/// The airworthiness review of a balloon is an act of its own (ML.A.901, ML.A.903), beside the visit in which it may be
/// made: a certificate is issued, or extended, or a recommendation given to the authority.
enum class ReviewAct {
    Review,
    Extension,
    Recommendation, ///< that a certificate be issued: it is none itself, and accomplishes nothing
};
inline constexpr int reviewActCount = 3;
[[nodiscard]] std::string_view reviewActName(ReviewAct act);
[[nodiscard]] std::optional<ReviewAct> reviewActFrom(std::string_view name);

/// Dated as issued.
struct ReviewSigned {
    Registration balloon;
    ItemId item; ///< its envelope, which carries the registration: the certificate is kept there
    ReviewAct act = ReviewAct::Review;
    std::string form;                 ///< "EASA Form 15c"
    std::string certificate;          ///< its number
    std::optional<CivilDate> expires; ///< the last good day as printed; none of a recommendation
    PersonId reviewer;
    std::string capacity;
    std::string authorisation; ///< to review: number of the approval or authorisation
    std::string findings;
    std::vector<std::string> photographs;   ///< SHA-256 of each, 64 hex digits
    std::optional<InspectionId> inspection; ///< the annual or 100-hour inspection while which it was made
    std::optional<Proof> proof{};
    std::string statement{};                ///< what was signed, word for word; of old ones it is not kept
    std::vector<ConfirmedText> confirmed{}; ///< as in `InspectionClosed`
    bool operator==(const ReviewSigned&) const = default;
};

/// What it accomplishes on the envelope; nothing of a recommendation.
[[nodiscard]] std::optional<RequirementId> requirementOf(ReviewAct act);
/// Whether it is accomplished by the signing of a review, and by no visit.
[[nodiscard]] bool isOfReviews(const RequirementId& requirement);

template <>
struct Kind<ReviewSigned> {
    static constexpr std::string_view name = "review.signed";
    static constexpr std::string_view keys = "balloon item act form certificate reviewer capacity [expires "
                                             "authorisation findings photographs inspection statement confirmed[{text "
                                             "revision digest by licence on against}] proof{key signature}]";
    static constexpr TimeOfDay time{18, 5};
    static constexpr std::tuple mentions{Key{"balloon", &ReviewSigned::balloon}, Key{"item", &ReviewSigned::item},
                                         Key{"reviewer", &ReviewSigned::reviewer},
                                         Key{"inspection", &ReviewSigned::inspection}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&ReviewSigned::reviewer, &ReviewSigned::balloon};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = nothing;
    static ReviewSigned read(ObjectReader& reader);
    static void write(nlohmann::json& into, const ReviewSigned& body);
};

}
