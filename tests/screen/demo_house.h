// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The whole screen without a window, over a real record in a folder of its own. Today is 2026-11-25.

#include "program/demo.h"
#include "screen/desk/house.h"

#include <QTemporaryDir>
#include <QTest>

namespace crownring::screen {

/// A place that lives in a house: `In<NextPlace> next(demo.house)`.
template <class Place>
struct In : Place {
    explicit In(House& house) { this->moveInto(house); }
};

struct DemoHouse {
    enum class Filled { Demo, Empty };

    explicit DemoHouse(Filled filled = Filled::Demo) : house(*CivilDate::parse("2026-11-25"), false) {
        house.desk.open(folder.filePath(QStringLiteral("record.sqlite")),
                        filled == Filled::Demo ? demoFleet() : QByteArray());
    }
    /// Waits until the fleet's sheet is there.
    [[nodiscard]] bool ready() {
        return QTest::qWaitFor([this] { return house.fleet.ready(); }, 240'000);
    }
    /// Waits until the sheet answers for the day asked.
    [[nodiscard]] bool settled() {
        return QTest::qWaitFor(
            [this] {
                return !house.fleet.asking() && house.fleet.ready() && house.fleet.sheet()->on() == house.day.date();
            },
            60'000);
    }

    QTemporaryDir folder;
    House house;
};

}
