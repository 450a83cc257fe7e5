// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What an instrument measures, over what range, by what its calibration states. A grab tester says nothing about air,
/// and a gauge nothing beyond its scale: ML.A.402(b)(4) has tools calibrated where necessary; which figure a
/// certificate of calibration covers is common practice, no source.

#include "bench/reading/series.h"
#include "measure/name.h"
#include "record/kinds/shop.h"

#include <optional>
#include <string>
#include <vector>

namespace crownring {

struct Instrument {
    TesterId tester;
    std::vector<std::string> measures; ///< slugs; empty: the record does not say
    std::optional<Figure> from;
    std::optional<Figure> to;
    std::string station; ///< whose it is; empty: the record does not say
    bool operator==(const Instrument&) const = default;

    [[nodiscard]] bool saysWhat() const { return !measures.empty(); }
    /// It measures the quantity, or the record does not say what it measures.
    [[nodiscard]] bool mayMeasure(std::string_view quantity) const;
};

/// As stated; what contradicts itself is left out, `misstated` says it.
[[nodiscard]] Instrument instrumentFrom(const TesterCalibrated& stated);

/// A quantity that the bench does not know, a unit that is none of each of them, a range without unit or quantity or
/// that is turned round. BadQuantity at the key.
[[nodiscard]] std::optional<Problem> misstated(const TesterCalibrated& stated);

enum class InstrumentFit {
    Fits,
    NotSaid,       ///< the record does not say what it measures
    OtherQuantity, ///< it measures something else
    BeyondRange,   ///< the figure lies outside the range for which it is calibrated
};
[[nodiscard]] InstrumentFit fitOf(const Instrument& instrument, const Measured& reading);

/// "grab strength, tear strength"
[[nodiscard]] Argument whatItMeasures(const Instrument& instrument);

}
