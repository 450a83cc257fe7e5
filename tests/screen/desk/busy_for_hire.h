// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace crownring::screen {

/// Flown 40 h each month: of the 100 h since its inspection 20 are left, and of its year 200 days.
inline std::string busyForHire() {
    std::string lines = R"({"entry":"item.entered","on":"2026-01-01","item":"ENV-1","kind":"envelope"}
{"entry":"balloon.entered","on":"2026-01-01","balloon":"QN1","operations":["for-hire"]}
{"entry":"item.fitted","on":"2026-01-01","balloon":"QN1","item":"ENV-1"}
{"entry":"programme.adopted","on":"2026-01-01","programme":"us-14cfr","balloons":["QN1"]}
{"entry":"requirement.done","on":"2026-05-10","item":"ENV-1","requirement":"us.annual"}
{"entry":"requirement.done","on":"2026-09-20","item":"ENV-1","requirement":"us.hundred-hour"}
)";
    for (const char* day : {"2026-06-01", "2026-07-01", "2026-08-01", "2026-10-01", "2026-11-01"})
        lines += R"({"entry":"flight.logged","balloon":"QN1","minutes":2400,"on":")" + std::string(day) + "\"}\n";
    return lines;
}

}
