// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The statements that are signed, as texts with a revision and a digest: those that ship (assets/texts), and what an
/// organisation adopted. Which of them an act is signed by the rules say; what it reads the organisation does, within
/// what the rule wants stated.

#include "bench/checklist/visit.h"
#include "record/kinds/programmes.h"
#include "record/kinds/shop.h"

#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace crownring {

enum class StatementText {
    PartMlRelease,
    PartMlOwnerRelease,
    PartMlComponentRelease,
    PartMlIncompleteRelease,
    PartMlReview,
    PartMlReviewExtension,
    PartMlReviewRecommendation,
    UsAirworthy,
    UsDiscrepancies,
    UsReturnToService,
};
inline constexpr int statementTextCount = 10;
/// "part-ml-release" …
[[nodiscard]] TextId idOf(StatementText text);
[[nodiscard]] std::optional<StatementText> statementTextFrom(const TextId& id);
[[nodiscard]] StatementText textOf(ReviewAct act);
/// Visits that may be signed by it; none: it is of reviews.
[[nodiscard]] std::vector<Visit> visitsSignedBy(StatementText text);

struct Wording {
    TextId text;
    std::string revision;
    std::string title;
    std::string body;
    std::string source;
    bool operator==(const Wording&) const = default;
};
/// SHA-256 of its canonical JSON: what a confirmation names.
[[nodiscard]] std::string digestOf(const Wording& wording);
[[nodiscard]] Wording wordingOf(const TextAdopted& adopted);

struct ShippedWording {
    Wording wording;
    bool read = false; ///< else it is from memory
    std::string note;  ///< what of it was read, and where
};
/// In the order of `StatementText`.
[[nodiscard]] std::span<const ShippedWording> shippedWordings();
[[nodiscard]] const ShippedWording& shipped(StatementText text);

/// That a text which is signed by, or worked by, holds a character that nobody sees: what is read is then not what is
/// signed. At that key, with its line and its place.
[[nodiscard]] std::optional<Problem> hiddenIn(std::string_view text, std::string key);

/// What stands against adopting it: no such text, a place that there is not, one missing that the rule wants filled, a
/// revision under which another wording ships.
[[nodiscard]] std::vector<Problem> faultsOf(const TextAdopted& adopted);

/// What an organisation signs by from a day on.
struct AdoptedText {
    Wording wording;
    std::string organisation;
    CivilDate on;
    EntryId entry;
};
using AdoptedTexts = std::map<TextId, AdoptedText>;

struct Confirmation {
    TextConfirmed said;
    CivilDate on;
    EntryId entry;
};

/// What the record holds of wording up to a day.
struct WordingBook {
    AdoptedTexts adopted;                    ///< the latest of each
    std::vector<Confirmation> confirmations; ///< by stamp; what was taken back is not among them
};

}
