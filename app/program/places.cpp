// SPDX-License-Identifier: GPL-3.0-or-later
#include "program/places.h"

#include "plugins.inc" // of every module, as CMake knows them
#include "print/typeface.h"
#include "screen/bench/record_pictures.h"

#include <QFont>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QtQml/QQmlExtensionPlugin>

namespace crownring::screen {

void useOwnFont() {
    if (const QString family = print::ownFamily(); !family.isEmpty())
        QGuiApplication::setFont(QFont(family));
}

void addPlaces(QQmlEngine& engine) {
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    engine.addImageProvider(QStringLiteral("record"), new RecordPictures);
}

bool loadFrame(QQmlApplicationEngine& engine) {
    addPlaces(engine);
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Crownring/Frame/Main.qml")));
    return !engine.rootObjects().isEmpty();
}

}
