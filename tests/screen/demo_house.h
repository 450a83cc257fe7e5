// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The whole screen without a window, over a real record in a folder of its own. Today is 2026-11-25.

#include "acts/post.h"
#include "program/demo.h"
#include "screen/desk/house.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QLockFile>
#include <QTemporaryDir>
#include <QTest>

namespace crownring::screen {

/// A place that lives in a house: `In<NextPlace> next(demo.house)`.
template <class Place>
struct In : Place {
    explicit In(House& house) { this->moveInto(house); }
};

/// A copy of a record with the demo fleet, which is made once for each build of the program of tests: to post the fleet
/// takes longer than most tests.
inline bool copyDemoRecord(const QString& to) {
    const QFileInfo self(QCoreApplication::applicationFilePath());
    const auto stem = self.fileName() + QStringLiteral(".demo-");
    const auto made = self.dir().filePath(stem + QString::number(self.lastModified().toMSecsSinceEpoch()));
    QLockFile lock(self.absoluteFilePath() + QStringLiteral(".lock"));
    lock.setStaleLockTime(0); // who makes it may take long
    if (!lock.lock())
        return false;
    if (!QFile::exists(made)) {
        const auto earlier = self.dir().entryList({stem + QLatin1Char('*')}, QDir::Files);
        for (const auto& each : earlier)
            self.dir().remove(each);
        const auto draft = made + QStringLiteral(".draft");
        {
            const auto record = openRecord(draft.toStdString(), OpenMode::OrCreate);
            if (!record || !postText(**record, **record, demoFleet().toStdString(), {}))
                return false;
        }
        if (!QFile::rename(draft, made))
            return false;
    }
    return QFile::copy(made, to);
}

struct DemoHouse {
    enum class Filled { Demo, Empty };

    explicit DemoHouse(Filled filled = Filled::Demo) : house(*CivilDate::parse("2026-11-25"), false) {
        const auto file = folder.filePath(QStringLiteral("record.sqlite"));
        if (filled == Filled::Demo && !copyDemoRecord(file))
            qFatal("the demo fleet cannot be posted");
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
