// SPDX-License-Identifier: GPL-3.0-or-later
#include "places.h"

#include "print/typeface.h"
#include "record_pictures.h"

#include <QFont>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QtQml/QQmlExtensionPlugin>

Q_IMPORT_QML_PLUGIN(Crownring_ScreenPlugin)
Q_IMPORT_QML_PLUGIN(Crownring_ThemePlugin)
Q_IMPORT_QML_PLUGIN(Crownring_PartsPlugin)
Q_IMPORT_QML_PLUGIN(Crownring_FabricPlugin)
Q_IMPORT_QML_PLUGIN(Crownring_NextPlugin)
Q_IMPORT_QML_PLUGIN(Crownring_BalloonsPlugin)
Q_IMPORT_QML_PLUGIN(Crownring_BenchPlugin)
Q_IMPORT_QML_PLUGIN(Crownring_RulesPlugin)
Q_IMPORT_QML_PLUGIN(Crownring_RecordPlugin)
Q_IMPORT_QML_PLUGIN(Crownring_FramePlugin)

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
