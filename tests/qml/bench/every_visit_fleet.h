// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A record with a balloon for each kind of visit, and with who may sign them. All of it is invented.

#include "acts/confirmed_wording.h"
#include "bench/checklist/visit.h"

#include <string>

namespace every_visit_window_test {

using namespace crownring;

inline std::string nameOf(Visit visit) {
    return (regimeOf(visit) == Regime::PartMl ? "QE-" : "QN-") + std::to_string(static_cast<int>(visit) + 1);
}

/// A balloon for each kind of visit, and for a component's what is loose.
inline std::string balloonOf(Visit visit) {
    const auto name = nameOf(visit);
    std::string lines;
    const auto item = [&](const char* letter, const char* kind, const char* more) {
        lines += R"({"entry":"item.entered","on":"2024-01-01","serial":"S-)" + name + R"(","item":")" + letter + name +
                 R"(","kind":")" + kind + '"' + more + "}\n";
        if (!isOfComponents(visit))
            lines += R"({"entry":"item.fitted","on":"2024-01-01","balloon":")" + name + R"(","item":")" + letter +
                     name + "\"}\n";
    };
    if (isOfComponents(visit)) {
        item("K", "basket", R"(,"type":"Creel 4")");
        return lines;
    }
    lines +=
        R"({"entry":"balloon.entered","on":"2024-01-01","balloon":")" + name + R"(","operations":["private"]})" + "\n";
    item("E", "envelope", R"(,"type":"Heron 60")");
    item("K", "basket", "");
    item("R", "burner", "");
    item("C", "cylinder", "");
    if (visit == Visit::UsHundredHour) // its annual is another's, and stands
        for (const char* letter : {"E", "K", "R", "C"})
            lines += R"({"entry":"requirement.done","on":"2026-10-10","requirement":"us.annual","item":")" +
                     (letter + name) + "\"}\n";
    if (isSpecial(visit))
        lines += R"({"entry":"event.reported","on":"2026-11-20","event":"hard-landing","balloon":")" + name + "\"}\n";
    return lines;
}

inline std::string theRecord() {
    std::string lines =
        R"({"entry":"type.described","on":"2024-01-01","type":"Heron 60","kind":"envelope","manual":"Heron manual","revision":"3","gores":12,"rows":10}
{"entry":"limit.stated","on":"2024-01-01","type":"Heron 60","kind":"envelope","quantity":"tell-tale","unit":"degC","most":127,"source":"Heron manual, 3"}
{"entry":"person.entitled","on":"2024-01-01","person":"Ada Rhos","capacity":"independent-certifying-staff","licence":"QE.66.1"}
{"entry":"person.entitled","on":"2024-01-01","person":"Ines Holt","capacity":"inspection-authorization","licence":"A&P 6, IA"}
{"entry":"person.entitled","on":"2024-01-01","person":"Ole Berg","capacity":"pilot-owner","licence":"BPL 4","balloons":["BALLOON"]}
{"entry":"person.entitled","on":"2024-01-01","person":"Pia Lund","capacity":"private-pilot","licence":"PP 7"}
)";
    const std::string balloon = "BALLOON";
    lines.replace(lines.find(balloon), balloon.size(), nameOf(Visit::PartMlOwnerTasks));
    for (const auto regime : allRegimes) {
        std::string bound;
        for (const auto visit : allVisits)
            if (regimeOf(visit) == regime) {
                lines += balloonOf(visit);
                if (!isOfComponents(visit))
                    bound += (bound.empty() ? "\"" : ",\"") + nameOf(visit) + '"';
            }
        lines += R"({"entry":"programme.adopted","on":"2024-01-01","programme":")" +
                 std::string(regime == Regime::PartMl ? "part-ml-hot-air" : "us-14cfr") + R"(","balloons":[)" + bound +
                 "]}\n";
    }
    return lines + testing::adoptedAsShipped("2024-01-01") +
           testing::confirmedBy("Ada Rhos", Capacity::IndependentCertifyingStaff, "2024-01-02", "QE.66.1") +
           testing::confirmedBy("Ines Holt", Capacity::InspectionAuthorization, "2024-01-02", "A&P 6, IA");
}

}
