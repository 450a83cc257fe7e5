// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The whole screen without a window, over a real record in a folder of its own. Today is 2026-11-25.

#include "acts/post.h"
#include "made_once.h"
#include "program/demo.h"
#include "screen/desk/house.h"

#include <QCoreApplication>
#include <QTemporaryDir>
#include <QTest>

namespace crownring::screen {

/// A place that lives in a house: `In<NextPlace> next(demo.house)`.
template <class Place>
struct In : Place {
    explicit In(House& house) { this->moveInto(house); }
};

inline bool copyDemoRecord(const QString& to) {
    return testing::copyOfMadeOnce(QFileInfo(QCoreApplication::applicationFilePath()), QStringLiteral("demo"), to,
                                   [](const QString& file) {
                                       const auto record = openRecord(file.toStdString(), OpenMode::OrCreate);
                                       return record && postText(**record, **record, demoFleet().toStdString(), {});
                                   });
}

/// Lines of JSON, as another of the program's own acts would write them, and the fleet read with them. @return false
/// where they are refused
[[nodiscard]] inline bool isPosted(House& house, const std::string& lines) {
    auto posted =
        house.desk.ask([lines](Record& record) { return postText(record, record, lines, "test").has_value(); });
    posted.waitForFinished();
    if (!posted.result())
        return false;
    const Sheet before = house.fleet.sheet();
    house.desk.written();
    return QTest::qWaitFor([&] { return house.fleet.sheet() != before; }, 20'000);
}

struct DemoHouse {
    enum class Filled { Demo, Empty };

    explicit DemoHouse(Filled filled = Filled::Demo) : house(*CivilDate::parse("2026-11-25"), false) {
        const auto file = folder.filePath(QStringLiteral("record.sqlite"));
        if (filled == Filled::Demo && !copyDemoRecord(file))
            qFatal("the demo fleet cannot be posted");
        house.desk.proveWhole(false); // by a test of its own
        house.desk.open(file);
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
