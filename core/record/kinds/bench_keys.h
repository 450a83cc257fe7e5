// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Panels, conditions of a test with their figures, photographs, the three figures of a clock, and who confirmed
/// wording, as keys of several kinds. Inside the record room only.

#include "measure/usage.h"
#include "record/json/object_reader.h"
#include "record/kinds/panels.h"
#include "record/kinds/shop.h"

#include <string>
#include <vector>

namespace crownring {

/// No reading and no bound lies farther from zero, in whatever unit.
inline constexpr double farthest = 1e12;
/// Characters of a unit.
inline constexpr std::size_t longestUnit = 40;
/// Seconds for which something is held.
inline constexpr double longestHold = 86'400;

/// Keys "gore", "row" and "zone", or "place" of a basket; the body of the envelope is not written.
[[nodiscard]] PanelPlace readPlace(ObjectReader& reader);
void writePlace(nlohmann::json& into, const PanelPlace& place);

/// Keys "direction", "jaw_mm", "pressure_pa" and "area_cm2".
[[nodiscard]] TestConditions readConditions(ObjectReader& reader);
void writeConditions(nlohmann::json& into, const TestConditions& conditions);

/// Key "zone".
[[nodiscard]] std::optional<Zone> readZone(ObjectReader& reader);

/// Keys "hold_s", "dry", "side" and "temp_c".
[[nodiscard]] TestCircumstances readCircumstances(ObjectReader& reader);
void writeCircumstances(nlohmann::json& into, const TestCircumstances& circumstances);

/// A number of gores, rows or places: 1 to 1000.
[[nodiscard]] std::optional<int> readSmallCount(ObjectReader& reader, std::string_view key);
/// A length, a pressure or an area: more than nothing.
template <class AmountOf>
[[nodiscard]] std::optional<AmountOf> readAmount(ObjectReader& reader, std::string_view key) {
    constexpr double least = 1e-6;
    constexpr double most = 1e6;
    const auto number = reader.optionalNumber(key, least, most);
    return number ? std::optional(AmountOf(*number)) : std::nullopt;
}

/// Refuses what is no SHA-256 in hex.
void checkDigest(ObjectReader& reader, std::string_view key, const std::string& digest);
/// Key "photographs": digests of what the record keeps as pictures, all different; absent: none.
[[nodiscard]] std::vector<std::string> readPhotographs(ObjectReader& reader);
void writePhotographs(nlohmann::json& into, const std::vector<std::string>& photographs);

/// Calls `read(inner, key, figure)` for each figure of the object under `key`, where that is there.
template <class Read>
void readFigures(ObjectReader& reader, std::string_view key, Figures& figures, Read read) {
    reader.object(key, [&](ObjectReader& inner) {
        read(inner, "minutes", figures.minutes);
        read(inner, "landings", figures.landings);
        read(inner, "inflations", figures.inflations);
    });
}

/// Key "clock": what a paper states, at least one figure; absent: none.
[[nodiscard]] Figures readStatedClock(ObjectReader& reader);

/// Leaves out a figure that is as in `implied`; an unknown one that is not is null.
void writeFigures(nlohmann::json& into, const char* key, const Figures& figures, const Figures& implied);

/// Keys "text" and "checklist", of which one must be there.
void readWhich(ObjectReader& reader, std::optional<TextId>& text, std::optional<ChecklistId>& checklist);
/// Key "confirmed"; absent: none.
[[nodiscard]] std::vector<ConfirmedText> readConfirmed(ObjectReader& reader);
void writeConfirmed(nlohmann::json& into, const std::vector<ConfirmedText>& confirmed);

}
