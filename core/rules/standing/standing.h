// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Where an item stands against one requirement on one day. Pure arithmetic: all facts are arguments, "today" too.
///
///     done 2024-04-10 at 312.4 h, every 12 months (tolerance 1) or 100 h (tolerance 10 h), whichever is first:
///     due 2025-04-10 or 412.4 h; on 2025-04-28 at 398.0 h it is in `Tolerance`, from 2025-05-11 on it is `Lapsed`.

#include "civil/moment.h"
#include "registry/item_facts.h"
#include "rules/programme/requirement.h"

#include <array>
#include <cstdint>
#include <memory_resource>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace crownring {

/// Worst first: a smaller value is a worse standing.
enum class Standing { Spent, Lapsed, Unproven, Tolerance, Nearing, Clear, Closed };
inline constexpr int standingCount = 7;
[[nodiscard]] std::string_view standingText(Standing standing);

/// How far a limit of the calendar reaches.
struct CalendarReach {
    CivilDate last; ///< the accomplishment itself, or the origin before any
    CivilDate due;  ///< the last good day
    Days left;      ///< negative beyond, as the next one
    Days toleranceLeft;
    bool operator==(const CalendarReach&) const = default;
};

/// How far a limit of use reaches, in the count of its clock.
struct UsageReach {
    ClockCount last; ///< at the accomplishment itself, or at the origin before any
    ClockCount due;  ///< the count at which nothing is left
    ClockCount left; ///< negative beyond, as the next one
    ClockCount toleranceLeft;
    bool operator==(const UsageReach&) const = default;
};

/// One limit's state.
struct LimitState {
    ClockName clock = ClockName::Months;
    std::variant<std::monostate, CalendarReach, UsageReach> reach; ///< nothing when unproven
    Standing standing = Standing::Unproven;
    std::optional<double> share; ///< left / (due - what it was counted from), calendar in days

    /// Null for a limit of use, and when unproven.
    [[nodiscard]] const CalendarReach* calendar() const { return std::get_if<CalendarReach>(&reach); }
    /// Null for a limit of the calendar, and when unproven.
    [[nodiscard]] const UsageReach* usage() const { return std::get_if<UsageReach>(&reach); }
    [[nodiscard]] bool isProven() const { return !std::holds_alternative<std::monostate>(reach); }
    bool operator==(const LimitState&) const = default;
};

/// Why a row stands as it does, where the limits alone do not say it.
enum class Because {
    Limits,
    NotRequired,       ///< the balloon's operations do not call for it: shown, never blocks
    Exempt,            ///< under every bound of `exempt_until`
    Triggered,         ///< an event made it due at once
    TypeMissing,       ///< it binds certain types and the item's is not recorded
    SerialMissing,     ///< it binds certain serial numbers and the item's is not recorded
    Done,              ///< a one-time requirement that is done
    Ended,             ///< ended by its terminating action
    RowFull,           ///< the last act was one too many in a row (`at_most`) and does not count
    Defect,            ///< a defect that is open
    Deferred,          ///< a defect that is open and put off until its limits
    DeferredElsewhere, ///< a defect that is open, and put off by who may not for what it is flown for
    Fabric,            ///< readings of fabric, held against the bounds of the type's manual
    Incomplete,        ///< a visit was released after incomplete maintenance, and is not closed
    Listed,            ///< an inspection was closed with a list of discrepancies that is pending
    Directive,         ///< a directive or bulletin that binds it
    DirectiveUnknown,  ///< a directive or bulletin of which nobody can say whether it binds it
};

struct Assessment {
    Standing standing = Standing::Unproven;
    std::optional<ClockName> governs;
    std::pmr::vector<LimitState> limits; ///< from the memory given to `assess`, which must outlive it
    std::optional<double> share;         ///< of the governing limit
    Because because = Because::Limits;
    std::optional<Evidence>
        evidence{};           ///< of the accomplishment that it counts from; nothing where it counts from none
    bool unsupported = false; ///< the record would refuse by now what it counts from, where that was asked for
    const Occurrence* trigger = nullptr; ///< the event, with `Because::Triggered`; it lives in the item's facts
    bool operator==(const Assessment&) const = default;
};

/// Does the operation call for it? Otherwise it is shown, and never counts or blocks.
[[nodiscard]] inline bool isRequired(const Assessment& state) { return state.because != Because::NotRequired; }

/// The limit that decided the standing, into `state`; null where none did: an event, an exemption, a missing fact.
[[nodiscard]] const LimitState* governingLimit(const Assessment& state);

/// Looks up a requirement that is in force for the item; used for `satisfied_by`: the window and `at_most` of an act
/// are those of the requirement that was carried out. May return nullptr.
class InForce {
public:
    virtual ~InForce() = default;
    [[nodiscard]] virtual const Requirement* find(const RequirementId& id) const = 0;
};

/// Does the requirement bind this item (kind, types, serials)? Missing type or serial counts as bound: the row is then
/// `Unproven` with that reason.
[[nodiscard]] bool binds(const Requirement& requirement, const ItemFacts& item);

/// @pre binds(requirement, item)
/// @param memory for the limits; a long list gives its own
/// @param flownFor operations, besides those of the balloon that the item is fitted to
[[nodiscard]] Assessment assess(const Requirement& requirement, const ItemFacts& item, const InForce& inForce,
                                CivilDate today, std::pmr::memory_resource* memory = std::pmr::get_default_resource(),
                                const std::vector<std::string>& flownFor = {});

}
