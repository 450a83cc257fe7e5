// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A record of one balloon of five items; ninety of its hundred hours are flown. Today is 2026-11-25, a Wednesday.

#include "screen/demo_house.h"

namespace crownring::screen {

/// An inspection every 100 h with 10 h of tolerance, a tenth of it left; the tolerance of another serves positioning.
inline constexpr const char* shedProgramme =
    R"({"programme":"short","revision":"1","title":"Short","source":"invented","requirements":[)"
    R"({"id":"hundred","title":"Every hundred","source":"invented, 1","kinds":["envelope","basket","burner","cylinder"],)"
    R"("action":"inspect","starts_from":"entered","limits":[{"clock":"minutes","every":6000,"tolerance":600}],"tolerance_for":"%1"}]})";

inline QByteArray shed(const char* toleranceFor) {
    QByteArray text = R"({"entry":"balloon.entered","on":"2026-01-01","balloon":"QE-ONE"}
)";
    for (const auto* item : {"E1|envelope", "K1|basket", "R1|burner", "C1|cylinder", "C2|cylinder"}) {
        const auto parts = QByteArray(item).split('|');
        text += R"({"entry":"item.entered","on":"2026-01-01","item":")" + parts[0] + R"(","kind":")" + parts[1] +
                "\"}\n" + R"({"entry":"item.fitted","on":"2026-01-01","balloon":"QE-ONE","item":")" + parts[0] +
                "\"}\n";
    }
    text += R"({"entry":"flight.logged","on":"2026-02-01","balloon":"QE-ONE","minutes":5400})";
    text += "\n" +
            QByteArray(
                R"({"entry":"programme.adopted","on":"2026-01-01","everything":true,"programme":"short","document":)") +
            QByteArray(shedProgramme).replace("%1", toleranceFor) + "}\n";
    return text;
}

struct Shed {
    explicit Shed(const char* toleranceFor = "flight") : house(*CivilDate::parse("2026-11-25"), false) {
        house.desk.open(folder.filePath(QStringLiteral("record.sqlite")), shed(toleranceFor));
    }
    [[nodiscard]] bool ready() {
        return QTest::qWaitFor([this] { return house.fleet.ready(); }, 60'000);
    }
    QTemporaryDir folder;
    House house;
};

}
