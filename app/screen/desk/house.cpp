// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/desk/house.h"

#include <QQmlEngine>
#include <QVariant>

namespace crownring::screen {

namespace {
constexpr const char* property = "crownring house";
}

House::House(CivilDate today, bool remembered)
    : habits(remembered), day(today), desk(nullptr), fleet(day, desk), notice(day, desk) {
    QObject::connect(&desk, &RecordDesk::stateChanged, &habits, [this] {
        habits.turnTo(desk.isDemo() ? QStringLiteral("demo") : desk.location()); // which lies elsewhere every time
    });
}

void House::open(QQmlEngine& engine) { engine.setProperty(property, QVariant::fromValue(this)); }

House& House::of(const QQmlEngine& engine) {
    auto* house = engine.property(property).value<House*>();
    if (house == nullptr)
        qFatal("QML is loaded by an engine that no house was opened for");
    return *house;
}

}
