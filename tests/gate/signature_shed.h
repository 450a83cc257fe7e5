// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The record and the checklist of the model of signatures; all of it is invented.

#include <string>

namespace crownring::testing {

inline constexpr const char* shed =
    R"({"entry":"item.entered","on":"2020-01-01","item":"E1","kind":"envelope","type":"T"}
{"entry":"item.entered","on":"2020-01-01","item":"B1","kind":"basket"}
{"entry":"item.entered","on":"2020-01-01","item":"R1","kind":"burner"}
{"entry":"item.entered","on":"2020-01-01","item":"C1","kind":"cylinder"}
{"entry":"balloon.entered","on":"2020-01-01","balloon":"QE-ONE"}
{"entry":"item.fitted","on":"2020-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"item.fitted","on":"2020-01-01","balloon":"QE-ONE","item":"B1"}
{"entry":"item.fitted","on":"2020-01-01","balloon":"QE-ONE","item":"R1"}
{"entry":"item.fitted","on":"2020-01-01","balloon":"QE-ONE","item":"C1"}
{"entry":"programme.adopted","on":"2020-01-01","programme":"part-ml-hot-air","everything":true}
{"entry":"limit.stated","on":"2020-01-01","type":"T","kind":"envelope","quantity":"grab-strength","unit":"N","least":100,"places":2,"direction":"warp","source":"Manual T, 6"}
{"entry":"limit.stated","on":"2020-01-01","type":"T","kind":"envelope","quantity":"grab-strength","unit":"N","least":100,"places":1,"direction":"weft","source":"Manual T, 6"}
{"entry":"tester.calibrated","on":"2026-01-01","tester":"F-1","until":"2026-12-31"}
{"entry":"tester.calibrated","on":"2025-01-01","tester":"F-2","until":"2025-12-31"}
{"entry":"person.entitled","on":"2020-01-01","person":"Ada Rhos","capacity":"independent-certifying-staff","licence":"QE.66.1"}
{"entry":"person.entitled","on":"2020-01-01","person":"Una Past","capacity":"independent-certifying-staff","licence":"QE.66.2","until":"2026-01-31"}
{"entry":"person.entitled","on":"2020-01-01","person":"Ole Berg","capacity":"pilot-owner","licence":"BPL 4"})";

inline constexpr const char* checklist =
    R"({"checklist":"short","revision":"1","title":"Short","source":"invented for tests","sections":[{"id":"all","title":"All"}],"lines":[
{"id":"look","section":"all","kinds":["envelope"],"title":"Look","look_for":"Holes.","sources":{"part-ml":"invented"}},
{"id":"pull","section":"all","kinds":["envelope"],"title":"Pull","look_for":"Strength.","sources":{"part-ml":"invented"},"readings":[{"quantity":"grab-strength","placed":true}],"tester":true},
{"id":"weave","section":"all","kinds":["basket"],"title":"Weave","look_for":"Breaks.","sources":{"part-ml":"invented"}},
{"id":"flame","section":"all","kinds":["burner"],"title":"Flame","look_for":"Leaks.","sources":{"part-ml":"invented"}},
{"id":"shell","section":"all","kinds":["cylinder"],"title":"Shell","look_for":"Dents.","sources":{"part-ml":"invented"}},
{"id":"papers","section":"all","kinds":[],"title":"Papers","look_for":"All there.","sources":{"part-ml":"invented"}},
{"id":"documents","section":"all","kinds":[],"title":"Documents","look_for":"In order.","sources":{"part-ml":"invented"},"only_with":["ml.arc-review"]},
{"id":"survey","section":"all","kinds":[],"title":"Survey","look_for":"Placards.","sources":{"part-ml":"invented"},"only_with":["ml.arc-review"]},
{"id":"extra","section":"all","kinds":["envelope"],"title":"Extra","look_for":"Dirt.","sources":{"part-ml":"invented"},"required":false}]})";

/// Adopted before the first visit; an entry is one line.
inline std::string shedsOwnList() {
    std::string document = checklist;
    std::erase(document, '\n');
    return R"({"entry":"checklist.adopted","on":"2020-01-01","checklist":"short","document":)" + document + "}";
}

}
