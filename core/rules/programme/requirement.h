// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A requirement: one thing that must be done to an item, from one source, with its limits. A programme is a document
/// of requirements. Both are plain values read from JSON (`programme.h`); nothing here knows a database or today's
/// date.

#include "civil/civil_date.h"
#include "measure/name.h"
#include "record/entry.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace crownring {

/// What a limit counts. The first three are clocks of the item, two are the calendar; the last counts the inspections
/// that the limit goes with.
enum class ClockName { Minutes, Landings, Inflations, Months, Days, Inspections };
[[nodiscard]] std::string_view clockNameText(ClockName clock);
[[nodiscard]] std::optional<ClockName> clockNameFrom(std::string_view text);
[[nodiscard]] constexpr bool isCalendar(ClockName clock) {
    return clock == ClockName::Months || clock == ClockName::Days;
}

/// One bound of a requirement, in the unit of its clock.
struct Limit {
    ClockName clock = ClockName::Months;
    std::int64_t every = 0;
    std::optional<std::int64_t> first; ///< the first interval where it differs, from the origin of `starts_from`
    std::int64_t tolerance = 0;
    DayRule day = DayRule::Same;           ///< months only
    std::optional<std::int64_t> lookAhead; ///< default: `defaultLookAhead`
    std::vector<RequirementId> with{};     ///< of `Inspections`: due with every so-manieth of these
    bool operator==(const Limit&) const = default;
};
/// 600 minutes, 10 landings, 10 inflations, 1 month, 30 days, 1 inspection.
[[nodiscard]] std::int64_t defaultLookAhead(ClockName clock);

enum class Action { Inspect, Test, Service, Replace, Retire, Comply };
enum class Whichever { First, Last };
enum class NextFrom { Done, Earlier, Kept };
enum class StartsFrom { Done, Made, Entered };
enum class ToleranceFor { Flight, Positioning };
enum class Force { Mandatory, Recommended };
enum class Blocks { Flight, Filling };

/// Serial numbers from … to, inclusive, in natural order (runs of digits compare as numbers); an absent end is open.
struct SerialRange {
    std::optional<std::string> from;
    std::optional<std::string> to;
    bool operator==(const SerialRange&) const = default;
};

using PerClock = std::vector<std::pair<ClockName, std::int64_t>>;

struct Requirement {
    RequirementId id;
    Argument title;  ///< a text of the programme; of a row that the record itself makes a phrase
    Argument source; ///< document and clause
    Argument note;
    std::vector<ItemKind> kinds; ///< may be empty: it then makes no row and describes an act that satisfies others
    std::vector<std::string> types;
    std::vector<SerialRange> serials;
    Action action = Action::Inspect;
    std::vector<Limit> limits;
    Whichever whichever = Whichever::First;
    NextFrom nextFrom = NextFrom::Done;
    PerClock window; ///< how long before the due date an accomplishment keeps the pattern (`NextFrom::Kept`)
    StartsFrom startsFrom = StartsFrom::Done;
    ToleranceFor toleranceFor = ToleranceFor::Flight;
    std::vector<RequirementId> satisfiedBy;
    bool once = false;
    std::vector<RequirementId> endedBy;
    Force force = Force::Mandatory;
    Blocks blocks = Blocks::Flight;
    std::vector<std::string> operations;
    std::vector<std::string> triggeredBy;
    std::vector<std::pair<std::string, std::int64_t>> byMethod; ///< months until the next, by how it was done
    PerClock exemptUntil;                                       ///< not compulsory while the item is under all of these
    std::optional<int> atMost;
    bool operator==(const Requirement&) const = default;
};

struct Programme {
    ProgrammeId id;
    std::string revision;
    Argument title; ///< a text of the document, as are source and note
    Argument source;
    Argument note;
    std::vector<Requirement> requirements;
    std::string regime{}; ///< whose aircraft rules it is, of one state of registry: "part-ml", "us-14cfr"; empty: none
    bool operator==(const Programme&) const = default;
};

[[nodiscard]] std::string_view actionText(Action action);

}
