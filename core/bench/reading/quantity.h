// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The quantities that can be read on the bench. Each has a unit of its own, in which `Measured` and `StatedLimit` hold
/// their figures (`Figure`, which carries it); papers may use any other unit of its dimension.
///
/// The plausible range is no limit: a figure outside it is questioned (`bench/doubt.h`), never refused. All ranges are
/// common practice, no source, except where the table says otherwise.

#include "measure/figure.h"
#include "problem/problem.h"
#include "record/kinds/item_kind.h"
#include "record/kinds/panels.h"

#include <optional>
#include <span>
#include <string_view>

namespace crownring {

/// Which way is good; `Within` may be bounded on both sides.
enum class Good { Higher, Lower, Within };

/// What besides the unit is part of a quantity, and in which ways it can be read.
struct ReadingTraits {
    bool placed = false;    ///< taken at a gore and row of an envelope
    bool tester = false;    ///< taken with a tester whose calibration counts
    bool direction = false; ///< along the warp or the weft
    bool jaw = false;       ///< between jaws, or on a strip, of a stated width
    bool airflow = false;   ///< at a pressure, on an area
    bool held = false;      ///< may be a load or pressure that was survived
    bool stepped = false;   ///< an indicator of steps: at least this, below that
    bool whole = false;     ///< a whole number
    bool isSigned = false;  ///< may be negative
    bool onBasket = false;  ///< may be taken at a place of a basket
    bool wears = false;     ///< follows the hours flown: a trend of it means something
    bool fuelled = false;   ///< pressed by the fuel: how warm the liquid in the cylinder was is part of what it says
    bool gauge = false;     ///< may name the gauge that it was read from, which then is in calibration
};

struct Quantity {
    std::string_view slug;
    Dimension dimension = Dimension::Number;
    std::string_view unit; ///< the symbol of its own unit
    Good good = Good::Within;
    double lowest = 0;  ///< of the plausible range, in its own unit
    double highest = 0; ///< of the plausible range
    ReadingTraits traits;
    std::span<const ItemKind> kinds{}; ///< of items that it is read of; empty: of any

    [[nodiscard]] bool isReadOf(ItemKind kind) const;
};

[[nodiscard]] std::span<const Quantity> allQuantities();
/// Null for a slug that names none.
[[nodiscard]] const Quantity* quantityNamed(std::string_view slug);
/// Its name in the middle of a sentence.
[[nodiscard]] Term termOf(const Quantity& quantity);
[[nodiscard]] Term quantityTerm(std::string_view slug);
[[nodiscard]] const Unit& unitOf(const Quantity& quantity);
/// A figure of the quantity, from the unit in which it was written. @pre of the quantity's dimension
[[nodiscard]] Figure figureOf(const Quantity& quantity, double value, const Unit& written);
/// Whether it lies in the plausible range.
[[nodiscard]] bool isPlausible(const Quantity& quantity, const Figure& figure);

/// BadQuantity at key `quantity`.
[[nodiscard]] Result<const Quantity*> quantityFor(std::string_view slug);
/// The unit that a text names for this quantity; BadQuantity at key `unit` for none or one of another dimension.
[[nodiscard]] Result<const Unit*> unitFor(const Quantity& quantity, std::string_view text);
/// What is wrong with the test's conditions: of a kind that is no part of the quantity, a direction that is neither
/// "warp" nor "weft", a width, pressure or area that is not above zero. At the key of the record.
[[nodiscard]] std::optional<Problem> misfit(const Quantity& quantity, const TestConditions& conditions);

}
