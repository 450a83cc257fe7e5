// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Where on an envelope fabric, and where on a basket wear, is read or repaired; under which conditions fabric is
/// tested.

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

/// A place on a basket, its wires among them. Sides and corners count clockwise as seen from above, beginning with the
/// long side that carries the data plate, or that the shop has marked; a corner ends the side of its number. Runners
/// count from that long side. Trade usage, no source.
enum class BasketPlace {
    Floor,
    LongSide1,
    Corner1,
    ShortSide1,
    Corner2,
    LongSide2,
    Corner3,
    ShortSide2,
    Corner4,
    Rim, ///< the padded edge at the top
    Partition,
    Runner1,
    Runner2,
    Runner3,
    Runner4,
};
inline constexpr int basketPlaceCount = 15;
/// "floor", "long-side-1", "corner-1", "short-side-1" … "rim", "partition", "runner-1" …
[[nodiscard]] std::string_view basketPlaceName(BasketPlace place);
[[nodiscard]] std::optional<BasketPlace> basketPlaceFrom(std::string_view name);

/// A panel: gores count from 1 around, rows from 1 at the mouth upward. Either may be unknown.
struct PanelPlace {
    std::optional<int> gore;
    std::optional<int> row;
    Zone zone = Zone::Envelope;
    std::optional<BasketPlace> basket{}; ///< then nothing of an envelope is said
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
