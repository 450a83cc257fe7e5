// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The rig-up check: if these items fly together, may they by the record, and what governs? It answers from the record
/// and the adopted rules only; whether the balloon is airworthy is for the pilot and the licensed people to decide.

#include "registry/question.h"
#include "rules/due/due_list.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace crownring {

/// What a release after incomplete maintenance lets a check flight pass over: that it is incomplete, and what the visit
/// accomplishes once it is done (ML.A.801(f), from memory).
struct Covered {
    ItemId item;
    RequirementId requirement;
    bool operator==(const Covered&) const = default;
};

struct PlannedFlight {
    Usage use{Minutes{0}, Landings{1}, Inflations{1}}; ///< minutes zero: a flight of unsaid length
    bool positioning = false;                          ///< flown only to reach the place of the inspection
    bool checkFlight = false;                          ///< flown only to complete maintenance that was released so
    std::vector<Covered> covered{};                    ///< with `checkFlight`
};

/// Why not, or what to mind.
struct RigUpReason {
    enum class Kind {
        Standing,      ///< lapsed, spent or unproven
        TooLong,       ///< the flight would use more than is left, tolerance included
        Positioning,   ///< inside a tolerance that only serves to reach the place of the inspection
        Incomplete,    ///< no balloon: a part of it is missing, or there is more than one of what there is one of
        CannotSay,     ///< no mandatory requirement that was adopted binds the item: nothing is known of it
        NotEntered,    ///< a part of what flies is in no entry of that day: nor of this
        OutOfService,  ///< the item is, or the balloon that it is fitted to
        BeyondRelease, ///< a check flight beyond what the release after incomplete maintenance lets it fly
        Unread,        ///< an entry of the record cannot be read: whether it is about this kit nobody knows
    };
    Kind kind = Kind::Standing;
    const DueRow* row = nullptr;        ///< with the first three
    std::optional<LimitState> limit{};  ///< the limit that says no, where one does
    const ItemFacts* item = nullptr;    ///< with `CannotSay`, `OutOfService`, `BeyondRelease`
    ItemKind part = ItemKind::Envelope; ///< with `Incomplete`: of what there is too little or too much
    std::size_t count = 0;              ///< with `Incomplete`: how many of it the kit has
    std::optional<Question> unread{};   ///< with `Unread`
    std::optional<ItemId> unknown{};    ///< with `NotEntered`
    std::optional<Phrase> beyond{};     ///< with `BeyondRelease`
};

/// A row that the kit flies, or comes to fly, in a tolerance that this flight may use.
struct ToleranceUse {
    const DueRow* row = nullptr;
    LimitState limit;
};

struct RigUp {
    bool mayFly = false;
    const DueRow* governs = nullptr;      ///< the worst binding row; absent when nothing binds the kit
    std::vector<RigUpReason> reasons;     ///< empty when it may fly
    std::vector<ToleranceUse> tolerances; ///< what flies past its limit, and yet may
    std::vector<const DueRow*> notes;     ///< recommended, filling-only or not required rows that are not clear;
                                          ///< defects that are put off
};

/// @param rows the kit's due rows on the day of the flight (from `dueList`), which must outlive the answer.
/// A row blocks when it is mandatory, blocks flight and is required, and: it is spent, lapsed or unproven; or in
/// tolerance that only serves positioning and the flight is none; or a limit leaves less (tolerance included, where it
/// may be used) than the flight needs. Nothing left means no flight, not even a short one.
[[nodiscard]] RigUp rigUp(std::span<const DueRow> rows, const PlannedFlight& flight);

/// The same for a kit that is to be a balloon: exactly one envelope, one basket and one burner, at least one cylinder,
/// each of
/// these bound by at least one mandatory requirement that was adopted, and nothing out of service; else it may not fly.
/// @param kit its due list, which must outlive the answer
[[nodiscard]] RigUp rigUp(const DueList& kit, const PlannedFlight& flight);

}
