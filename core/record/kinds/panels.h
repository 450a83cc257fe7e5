// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Where on an envelope fabric is read or repaired, and under which conditions it is tested.

#include "measure/amount.h"

#include <optional>
#include <string>
#include <string_view>

namespace crownring {

/// A part of an envelope whose panels are counted, tested and bounded for themselves.
enum class Zone {
    Envelope, ///< its body: what nothing else is said of
    Parachute,
    TurningVent,
    Mouth, ///< heat-resistant panels, scoop or skirt
};
inline constexpr int zoneCount = 4;
/// "envelope", "parachute", "turning-vent", "mouth".
[[nodiscard]] std::string_view zoneName(Zone zone);
[[nodiscard]] std::optional<Zone> zoneFrom(std::string_view name);

/// A panel: gores count from 1 around, rows from 1 at the mouth upward. Either may be unknown.
struct PanelPlace {
    std::optional<int> gore;
    std::optional<int> row;
    Zone zone = Zone::Envelope;
    bool operator==(const PanelPlace&) const = default;
    /// Another test there is of the same panel. In a vent or at the mouth the panels are counted around alone.
    [[nodiscard]] bool isOnePanel() const { return gore && (row || zone != Zone::Envelope); }
};

/// What is part of a reading's quantity besides its unit: readings that differ here are other series. Nothing of it is
/// ever converted.
struct TestConditions {
    std::optional<std::string> direction; ///< "warp" or "weft"
    std::optional<Millimetres> jaw;       ///< width of the jaws of a grab or strip test
    std::optional<Pascals> pressure;      ///< across the fabric
    std::optional<SquareCentimetres> area;
    bool operator==(const TestConditions&) const = default;
};

enum class Side { Inside, Outside };
inline constexpr int sideCount = 2;
/// "inside", "outside".
[[nodiscard]] std::string_view sideName(Side side);
[[nodiscard]] std::optional<Side> sideFrom(std::string_view name);

/// How a test was carried out, where that was written down. It makes no other series.
struct TestCircumstances {
    std::optional<double> seconds; ///< for which the load or pressure was held
    std::optional<bool> dry;
    std::optional<Side> side;           ///< from which the instrument was put on
    std::optional<Celsius> temperature; ///< of the fabric or the shed
    bool operator==(const TestCircumstances&) const = default;
};

}
