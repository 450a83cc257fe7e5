// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Directives and bulletins of authorities and manufacturers, and whom they bind: an item by its kind, type and serial
/// number, and by what is fitted to the same balloon ("an envelope whose burner has valve X"). Each thing may be not
/// known: a missing serial, a type that nobody wrote down, parts of which no list is whole. Then the answer is unknown,
/// never no, unless something that is known decides it.
///
/// What is asked of a tree of fitted parts is asked as it is on the day: a part that was swapped takes what binds it
/// along.

#include "civil/civil_date.h"
#include "measure/name.h"
#include "parts/serial_shape.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace crownring {

/// Something that is fitted: an item of a balloon, a part of an item, a part of a part.
struct FittedThing {
    std::string name;                  ///< what it is: "burner", "valve"; a slug
    std::optional<std::string> type;   ///< type, model or part number; absent: not known
    std::optional<std::string> serial; ///< absent: not known
    std::vector<FittedThing> parts;
    bool isWhole = false; ///< nothing is fitted in it besides `parts`
    bool isItem = false;  ///< `name` is the kind of an item, which is no slip of the pen
};

/// What a thing must be. Empty lists ask nothing.
struct ThingAsked {
    std::string name;
    std::vector<std::string> types; ///< any of them
    std::vector<SerialRange> serials;
};

/// Which items it binds: those that are what `item` asks, of a balloon in which each of `having` is fitted, in whatever
/// depth. No `having`: the item alone decides.
struct BoundBy {
    ThingAsked item;
    std::vector<ThingAsked> having;
};

/// Why an answer is what it is, for the thing that decided it.
enum class WhyBound {
    AllHolds,      ///< yes: everything that it asks is so
    OtherKind,     ///< no: it is another kind of item
    OtherType,     ///< no: it is of another type
    OtherSerial,   ///< no: its serial is in none of the ranges
    NothingFitted, ///< no: no such part is fitted, and all that is fitted is known
    TypeMissing,   ///< unknown: its type is not known
    SerialMissing, ///< unknown: its serial is not known
    SerialShape,   ///< unknown: its serial is written otherwise than the ranges are
    PartsUnlisted, ///< unknown: not all that is fitted is known
    NearlyAlike,   ///< unknown: its name or type is written nearly as the directive does
    EntriesDiffer, ///< unknown: it was entered in two ways, and of one it may bind
};
inline constexpr int whyBoundCount = 11;
/// "all-holds", "other-kind" …
[[nodiscard]] std::string_view whyBoundName(WhyBound why);

struct Applicability {
    Truth applies = Truth::Unknown;
    WhyBound why = WhyBound::PartsUnlisted;
    std::string about; ///< the name of the thing that decided it
    bool operator==(const Applicability&) const = default;
};

/// Whether it is that part, or nearly called so.
[[nodiscard]] bool mayBe(std::string_view part, const FittedThing& thing);

/// Whether one thing is what is asked.
[[nodiscard]] Applicability isAsked(const ThingAsked& asked, const FittedThing& thing);

/// Whether it binds the item.
/// @param fitted all that is fitted to the same balloon, the item among it; of a loose item the item alone
/// @param isWhole nothing else is fitted to the balloon; of a loose item false, since nobody knows what it will fly
/// with
[[nodiscard]] Applicability applies(const BoundBy& bound, const FittedThing& item,
                                    const std::vector<FittedThing>& fitted, bool isWhole);

}
