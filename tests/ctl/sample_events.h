// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A balloon to which something happened, and what it burnt.

#include <QtCore/QByteArray>

namespace crownring::testing {

inline constexpr const char* sampleEvents = R"({"entry":"item.entered","on":"2026-01-01","item":"E1","kind":"envelope"}
{"entry":"item.entered","on":"2026-01-01","item":"R1","kind":"burner"}
{"entry":"balloon.entered","on":"2026-01-01","balloon":"QE-ONE"}
{"entry":"item.fitted","on":"2026-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"item.fitted","on":"2026-01-01","balloon":"QE-ONE","item":"R1"}
{"entry":"programme.adopted","on":"2026-01-01","programme":"event-inspections","balloons":["QE-ONE"]}
{"entry":"event.reported","id":"wire","on":"2026-05-03","time":"06:40Z","balloon":"QE-ONE","event":"wire-contact","altitude_m":35}
{"entry":"event.reported","id":"dry","on":"2026-05-01","item":"R1","event":"coil-run-dry","temp_c":90,"minutes":2}
{"entry":"event.reported","id":"old","on":"2026-01-03","balloon":"QE-ONE","event":"mildew"}
)";
inline constexpr const char* wireWasNotified =
    R"({"entry":"event.notified","on":"2026-05-04","event":"wire","balloon":"QE-ONE","to":"authority","ref":"ECR-7"})";

/// Twelve flights of an hour and three that burn more.
inline QByteArray burningFlights() {
    QByteArray lines;
    for (int at = 0; at < 15; ++at)
        lines += R"({"entry":"flight.logged","balloon":"QE-ONE","minutes":60,"oat_c":10,"load_kg":320,"on":"2026-03-)" +
                 QByteArray::number(at + 10) + R"(","fuel_kg":)" + QByteArray::number(at < 12 ? 34 + at % 4 : 42) +
                 "}\n";
    return lines;
}

}
