// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A small record with forty balloons, of which one has all that it is made of, an event whose report may be owed,
/// flights that burn more than they did, and a worn basket.

#include <string>

namespace crownring::testing {

inline std::string happenings() {
    std::string lines;
    for (int at = 10; at < 50; ++at)
        lines += R"({"entry":"balloon.entered","on":"2025-01-01","balloon":"QE-B)" + std::to_string(at) + "\"}\n";
    const auto item = [&](const char* id, const char* kind) {
        lines += R"({"entry":"item.entered","on":"2025-01-01","serial":"1","type":"Wren 70","item":")" +
                 std::string(id) + R"(","kind":")" + kind + "\"}\n" +
                 R"({"entry":"item.fitted","on":"2025-01-01","balloon":"QE-B27","item":")" + id + "\"}\n";
    };
    item("ENV-1", "envelope");
    item("BSK-1", "basket");
    item("BRN-1", "burner");
    lines += R"({"entry":"programme.adopted","on":"2025-01-02","programme":"part-ml-hot-air","balloons":["QE-B27"]}
{"entry":"programme.adopted","on":"2025-01-02","programme":"event-inspections","balloons":["QE-B27"]}
{"entry":"limit.stated","on":"2025-01-02","type":"Wren 70","kind":"basket","quantity":"runner-thickness","least":12,"unit":"mm","source":"invented for tests"}
{"entry":"limit.stated","on":"2025-01-02","type":"Wren 70","kind":"basket","quantity":"wicker-break","most":60,"unit":"mm","source":"invented for tests"}
{"entry":"event.reported","id":"tree","on":"2026-11-23","time":"16:20Z","balloon":"QE-B27","event":"dragged","by":"pilot 7"}
)";
    const double runner[] = {20.0, 18.9, 18.1, 16.8};
    const int wicker[] = {10, 30, 48, 66};
    for (int at = 0; at < 4; ++at) {
        const auto day = R"("on":"2025-0)" + std::to_string(at + 3) + "-";
        lines += R"({"entry":"flight.logged","balloon":"QE-B27","minutes":6000,)" + day + "01\"}\n";
        lines +=
            R"({"entry":"reading.taken","item":"BSK-1","quantity":"runner-thickness","unit":"mm","place":"runner-2",)" +
            day + R"(02","value":)" + std::to_string(runner[at]) + "}\n";
        lines +=
            R"({"entry":"reading.taken","item":"BSK-1","quantity":"wicker-break","unit":"mm","place":"short-side-1",)" +
            day + R"(02","value":)" + std::to_string(wicker[at]) + "}\n";
    }
    for (int at = 0; at < 15; ++at)
        lines += R"({"entry":"flight.logged","balloon":"QE-B27","minutes":60,"oat_c":10,"load_kg":320,"on":"2026-10-)" +
                 std::to_string(at + 10) + R"(","fuel_kg":)" + std::to_string(at < 12 ? 34 + at % 4 : 42) + "}\n";
    return lines;
}

}
