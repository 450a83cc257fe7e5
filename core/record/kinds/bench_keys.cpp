// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/bench_keys.h"

#include "problem/faults/entry_fault.h"
#include "record/chain/chain.h"
#include "record/json/written.h"

namespace crownring {

std::optional<int> readSmallCount(ObjectReader& reader, std::string_view key) {
    const auto number = reader.optionalCount(key, 1, 1000);
    return number ? std::optional<int>(static_cast<int>(*number)) : std::nullopt;
}

PanelPlace readPlace(ObjectReader& reader) { return {readSmallCount(reader, "gore"), readSmallCount(reader, "row")}; }

void writePlace(nlohmann::json& into, const PanelPlace& place) {
    writeValue(into, "gore", place.gore);
    writeValue(into, "row", place.row);
}

TestConditions readConditions(ObjectReader& reader) {
    TestConditions conditions;
    if (reader.has("direction")) {
        conditions.direction = reader.text("direction");
        if (*conditions.direction != "warp" && *conditions.direction != "weft")
            reader.refuse("direction", EntryFault::NoDirection);
    }
    conditions.jaw = readAmount<Millimetres>(reader, "jaw_mm");
    conditions.pressure = readAmount<Pascals>(reader, "pressure_pa");
    conditions.area = readAmount<SquareCentimetres>(reader, "area_cm2");
    return conditions;
}

void writeConditions(nlohmann::json& into, const TestConditions& conditions) {
    writeValue(into, "direction", conditions.direction);
    writeAmount(into, "jaw_mm", conditions.jaw);
    writeAmount(into, "pressure_pa", conditions.pressure);
    writeAmount(into, "area_cm2", conditions.area);
}

void checkDigest(ObjectReader& reader, std::string_view key, const std::string& digest) {
    if (!digestFromHex(digest))
        reader.refuse(key, EntryFault::NotADigest);
}

std::vector<std::string> readPhotographs(ObjectReader& reader) {
    auto photographs = reader.optionalTexts("photographs");
    for (const auto& digest : photographs)
        checkDigest(reader, "photographs", digest);
    return photographs;
}

void writePhotographs(nlohmann::json& into, const std::vector<std::string>& photographs) {
    if (!photographs.empty())
        into["photographs"] = photographs;
}

}
