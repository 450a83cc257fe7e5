// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A small record with one balloon on the bench, for tests that drive the desks. The maker and all figures are
/// invented.

#include "acts/confirmed_wording.h"

namespace crownring::screen {

inline constexpr const char* smallShop =
    R"({"entry":"item.entered","id":"e1","on":"2024-01-01","item":"ENV-1","kind":"envelope","serial":"S1","type":"Heron 60","made":"2023-11"}
{"entry":"item.entered","id":"e2","on":"2024-01-01","item":"BRN-1","kind":"burner","serial":"S2","type":"Flare"}
{"entry":"balloon.entered","id":"e3","on":"2024-01-01","balloon":"QE-SML","title":"Small Heron","operations":["private"]}
{"entry":"item.fitted","id":"e4","on":"2024-01-01","balloon":"QE-SML","item":"ENV-1"}
{"entry":"item.fitted","id":"e5","on":"2024-01-01","balloon":"QE-SML","item":"BRN-1"}
{"entry":"programme.adopted","id":"e6","on":"2024-01-01","programme":"part-ml-hot-air","everything":true}
{"entry":"type.described","id":"e7","on":"2024-01-01","type":"Heron 60","kind":"envelope","manual":"Heron manual","revision":"3","gores":12,"rows":10}
{"entry":"limit.stated","id":"e8","on":"2024-01-01","type":"Heron 60","kind":"envelope","quantity":"grab-strength","unit":"N","least":133.4,"proof":133.4,"places":2,"jaw_mm":25,"source":"Heron manual, 3"}
{"entry":"limit.stated","id":"e9","on":"2024-01-01","type":"Heron 60","kind":"envelope","quantity":"air-permeability","unit":"mm/s","most":45,"places":1,"pressure_pa":100,"area_cm2":20,"source":"Heron manual, 3"}
{"entry":"limit.stated","id":"e10","on":"2024-01-01","type":"Heron 60","kind":"envelope","quantity":"tell-tale","unit":"degC","most":127,"source":"Heron manual, 3"}
{"entry":"person.entitled","id":"e11","on":"2024-01-01","person":"insp. A","capacity":"independent-certifying-staff","licence":"L-A"}
{"entry":"person.entitled","id":"e12","on":"2024-01-01","person":"pilot B","capacity":"pilot-owner","licence":"L-B","balloons":["QE-SML"]}
{"entry":"person.entitled","id":"e13","on":"2024-01-01","person":"insp. C","capacity":"independent-certifying-staff","licence":"L-C","until":"2025-01-01"}
{"entry":"tester.calibrated","id":"e14","on":"2026-01-01","tester":"grab 1","what":"fabric grab tester","until":"2027-01-01"}
{"entry":"tester.calibrated","id":"e15","on":"2026-01-01","tester":"air 1","what":"air permeability tester","until":"2027-01-01"}
{"entry":"tester.calibrated","id":"e16","on":"2025-01-01","tester":"air 0","what":"old permeability tester","until":"2026-01-01"}
)";

/// With the wording that is signed, confirmed by who signs.
inline const std::string smallBenchLines =
    smallShop + testing::adoptedAsShipped("2024-01-01") +
    testing::confirmedBy("insp. A", Capacity::IndependentCertifyingStaff, "2024-01-02", "L-A");
inline const char* const smallBench = smallBenchLines.c_str();

}
