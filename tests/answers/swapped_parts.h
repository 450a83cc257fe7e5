// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Burners that change balloons and valves that change burners, as entries and on a sheet of paper.

#include "fleet_of_directives.h"
#include "parts/serial_shape.h"

#include <rapidcheck.h>

#include <map>
#include <optional>
#include <string>

namespace swapped_parts_test {

using namespace crownring;
using namespace crownring::testing;

/// As somebody would keep it on a sheet of paper.
struct Sheet {
    struct Burner {
        std::string on = "QE-ONE";
        bool isListed = false, isWhole = false;
        std::optional<std::string> valve; ///< its type; "?" where nobody stated it
    };
    std::map<std::string, Burner> burners{{"R1", {"QE-ONE", false, false, {}}}, {"R2", {"QE-TWO", false, false, {}}}};

    [[nodiscard]] Truth binds(const std::string& balloon) const {
        Truth answer = Truth::No;
        bool isAny = false;
        for (const auto& [name, burner] : burners) {
            if (burner.on != balloon)
                continue;
            isAny = true;
            if (burner.valve == "X-2")
                return Truth::Yes;
            if (!burner.isListed || !burner.isWhole || burner.valve == "?")
                answer = Truth::Unknown;
        }
        return isAny ? answer : Truth::Unknown;
    }
};

/// Days one after the other, so that nothing hangs on the order within one.
inline std::string dayOf(int step) { return addDays(CivilDate::parse("2025-01-01").value(), step).iso(); }

/// Something happens to a burner; on the sheet, and as an entry.
inline std::string happens(Sheet& sheet, int step) {
    const std::string burner = *rc::gen::element<std::string>("R1", "R2");
    auto& on = sheet.burners[burner];
    const auto begin = R"("on":")" + dayOf(step) + R"(","item":")" + burner + R"(")";
    switch (*rc::gen::inRange(0, 4)) {
    case 0: {
        on.on = *rc::gen::element<std::string>("QE-ONE", "QE-TWO");
        return R"({"entry":"item.fitted",)" + begin + R"(,"balloon":")" + on.on + "\"}";
    }
    case 1:
        if (on.isListed && on.valve)
            on.valve = "?";
        else
            on.isWhole = false; // the list did not know of it
        return R"({"entry":"part.replaced","part":"Pilot valve","fitted_serial":"n)" + std::to_string(step) +
               R"(","release_document":"Form 1",)" + begin + "}";
    case 2:
        on = {on.on, true, true, std::nullopt};
        return R"({"entry":"parts.listed","whole":true,)" + begin + "}";
    default:
        on = {on.on, true, *rc::gen::arbitrary<bool>(), *rc::gen::element<std::string>("X-1", "X-2")};
        return R"({"entry":"parts.listed",)" + begin + (on.isWhole ? R"(,"whole":true)" : "") +
               R"(,"parts":[{"part":"pilot-valve","whole":true,"type":")" + *on.valve + R"(","serial":"s)" +
               std::to_string(step) + "\"}]}";
    }
}

inline constexpr const char* valvesOfTheirOwn =
    R"({"entry":"parts.listed","on":"2024-01-01","item":"R1","whole":true}
{"entry":"parts.listed","on":"2024-01-01","item":"R2","whole":true}
{"entry":"item.entered","on":"2024-01-01","item":"V1","kind":"other","type":"X-2","serial":"7"}
{"entry":"item.entered","on":"2024-01-01","item":"V2","kind":"other","type":"Pilot valve","serial":"8"}
{"entry":"item.entered","on":"2024-01-01","item":"V3","kind":"other","type":"X-3","serial":"9"})";
inline constexpr const char* burnerOff = R"({"entry":"item.removed","on":"2025-03-02","item":"R1","balloon":"QE-ONE"})";
inline constexpr const char* valveOut = R"({"entry":"item.removed","on":"2025-03-03","item":"V1","from":"R1"})";

inline std::string fitted(const std::string& valve, const std::string& burner) {
    return R"({"entry":"item.fitted","on":"2025-03-01","item":")" + valve + R"(","to":")" + burner + "\"}";
}

}
