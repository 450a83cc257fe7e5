// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A balloon of four items that flew once, a cylinder beside it, and a programme of one inspection. All of it is
/// invented.

namespace crownring::testing {

inline constexpr const char* aWholeBalloon = R"({"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"item.entered","on":"2024-01-01","item":"B1","kind":"basket"}
{"entry":"item.entered","on":"2024-01-01","item":"R1","kind":"burner"}
{"entry":"item.entered","on":"2024-01-01","item":"C1","kind":"cylinder"}
{"entry":"item.entered","on":"2024-01-01","item":"C2","kind":"cylinder"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-TWO"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"B1"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"R1"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"C1"}
{"entry":"programme.adopted","on":"2024-01-01","programme":"plain","balloons":["QE-ONE"],"document":{"programme":"plain","revision":"1","title":"Plain","source":"invented for tests","requirements":[{"id":"plain.look","title":"Look at it","source":"invented for tests","kinds":["envelope","basket","burner","cylinder"],"action":"inspect","limits":[{"clock":"months","every":12}],"starts_from":"entered"}]}}
{"entry":"flight.logged","on":"2024-02-01","balloon":"QE-ONE","minutes":60})";

}
