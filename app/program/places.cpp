// SPDX-License-Identifier: GPL-3.0-or-later
#include "program/places.h"

#include "plugins.inc" // what QML needs of every module
#include "print/typeface.h"
#include "screen/desk/house.h"
#include "screen/desk/record_pictures.h"

#include <QFont>
#include <QGuiApplication>
#include <QQmlApplicationEngine>

namespace crownring::screen {

void useOwnFont() {
    if (const QString family = print::ownFamily(); !family.isEmpty())
        QGuiApplication::setFont(QFont(family));
}

void addModules(QQmlEngine& engine) { engine.addImportPath(QStringLiteral("qrc:/qt/qml")); }

void addPlaces(QQmlEngine& engine, House& house) {
    addModules(engine);
    house.open(engine);
    engine.addImageProvider(QStringLiteral("record"), new RecordPictures(house.desk));
}

bool loadFrame(QQmlApplicationEngine& engine, House& house) {
    addPlaces(engine, house);
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Crownring/Frame/Main.qml")));
    return !engine.rootObjects().isEmpty();
}

}
