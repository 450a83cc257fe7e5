// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A reading held against what a type's manual states.
///
/// A reading is a span of values that the truth may have: one value; all from a load that was held upward; from one
/// step of an indicator to the next. It passes when all of the span is inside the limit, fails when none is, and is
/// undecided when the span reaches across the limit: a pull that held at 100 N says neither yes nor no to a limit of
/// 133 N.
///
///     broke at 150 N,  at least 133.4 N   passes        held at 150 N,  at least 133.4 N   passes
///     broke at 120 N,  at least 133.4 N   fails         held at 120 N,  at least 133.4 N   undecided
///     121 to 127 °C,   at most 127 °C     passes        127 to 132 °C,  at most 127 °C     fails (see `judge`)
///     121 to 127 °C,   at most 124 °C     undecided     10 mm/s at 100 Pa, a limit at 125 Pa   incomparable

#include "bench/reading/series.h"
#include "measure/name.h"
#include "problem/problem.h"
#include "record/kinds/shop.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace crownring {

/// A bound that a type's manual puts on a reading; figures in the quantity's own unit. Bounds are inclusive: what reads
/// exactly `least` or `most` is inside.
struct StatedLimit {
    TypeName type;
    ItemKind kind = ItemKind::Other;
    std::string quantity;
    std::optional<Figure> least;
    std::optional<Figure> most;
    std::optional<Figure> proof; ///< the load that is to be held; where `least` stands too, both must be met
    std::optional<int> places;   ///< how many readings an inspection asks
    std::optional<Zone> zone;    ///< of an envelope; absent: wherever no limit of its own is stated
    TestConditions conditions;   ///< what it does not state is not asked for, except the pressure of a permeability
    std::string passes;          ///< what passing means, in words
    std::string source;
    Retired retires = Retired::Panel; ///< what goes when a reading lies beyond
    std::optional<double> seconds{};  ///< for which the load is to be held
    bool operator==(const StatedLimit&) const = default;

    /// What must be reached: the harder of `least` and `proof`; nothing where neither stands.
    [[nodiscard]] std::optional<Figure> needed() const;
    /// The one that its manual states it in; null where nothing is stated.
    [[nodiscard]] const Unit* unit() const;
    /// How far a reading is from the bound, on a scale on which it is 1 there and more is better: times what is needed,
    /// or `most` divided by it. Nothing where a bound, or the figure, is not above zero.
    [[nodiscard]] std::optional<double> shareOf(const Measured& reading) const;
    /// Where the readings are taken that it asks for.
    [[nodiscard]] Zone asksIn() const { return zone.value_or(Zone::Envelope); }
};

/// The limit in the unit that it is stated in. BadQuantity, at the key that is wrong, for what `measuredFrom` would
/// refuse; for neither `least` nor `most` nor `proof`; for a `least` above `most`; for a `proof` of what cannot be
/// held.
[[nodiscard]] Result<StatedLimit> limitFrom(const LimitStated& stated);

enum class Judgement {
    Passes,
    Fails,
    Undecided,    ///< the reading is only a bound, and the limit lies beyond it
    NoLimit,      ///< nothing is stated for this quantity, or not for this direction
    Incomparable, ///< what is stated is stated for another test, or it is not known for which
};
inline constexpr int judgementCount = 5;
/// "passes", "fails", "undecided", "no-limit", "incomparable".
[[nodiscard]] std::string_view judgementName(Judgement judgement);

struct Decision {
    Judgement judgement = Judgement::NoLimit;
    const StatedLimit* limit = nullptr; ///< the one that decided; null for NoLimit
};

struct Judged {
    Judgement judgement = Judgement::NoLimit;
    const StatedLimit* limit = nullptr; ///< as in `Decision`
    Phrase reason;
};

/// Holds a reading against the limits of its item's type. Of several the hardest answer stands: fails; undecided;
/// incomparable because the reading does not state a width, pressure, area or direction that the limit asks; passes.
/// A limit for another test (`seriesOf`) is never converted and is the answer only when no other limit is; one for the
/// other direction does not speak, nor one for another zone of the envelope; one that names no zone speaks of a vent or
/// the mouth only where none is stated for that.
///
/// An indicator's step that begins at `most` fails: "275°F or higher dot has been activated" is what a manufacturer's
/// instructions (FAA-approved, 2001, read) treat as 275 °F exceeded. One that begins below and ends above is undecided,
/// never passed.
///
/// What the fuel presses is no fault while propane at rest, as warm as the fuel was said to be, presses less than
/// `least` by gauge: nothing could have reached it. It is incomparable then, which is no pass either. Saturation
/// pressure: `parts/propane.h`, where the sources stand; fuel with butane in it presses less still.
/// @param limits of the item's type and kind; the pointer in the answer is into them
[[nodiscard]] Judged judge(const Measured& reading, std::span<const StatedLimit> limits);
/// The same without a word of why, for many readings at a time.
[[nodiscard]] Decision decide(const Measured& reading, std::span<const StatedLimit> limits);

/// The same reading in another unit; as it is where its own is none of that dimension.
[[nodiscard]] ReadingTaken readIn(const Unit& unit, ReadingTaken reading);

/// "at least 133.4 N".
[[nodiscard]] std::optional<Phrase> boundsOf(const StatedLimit& limit);

}
