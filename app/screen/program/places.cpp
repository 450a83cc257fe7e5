// SPDX-License-Identifier: GPL-3.0-or-later
#include "places.h"

#include <QFile>
#include <QFont>
#include <QFontDatabase>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QtQml/QQmlExtensionPlugin>

Q_IMPORT_QML_PLUGIN(Crownring_ScreenPlugin)
Q_IMPORT_QML_PLUGIN(Crownring_ThemePlugin)
Q_IMPORT_QML_PLUGIN(Crownring_PartsPlugin)
Q_IMPORT_QML_PLUGIN(Crownring_NextPlugin)
Q_IMPORT_QML_PLUGIN(Crownring_BalloonsPlugin)
Q_IMPORT_QML_PLUGIN(Crownring_RulesPlugin)
Q_IMPORT_QML_PLUGIN(Crownring_RecordPlugin)
Q_IMPORT_QML_PLUGIN(Crownring_FramePlugin)

namespace crownring::screen {

namespace {

/// Where the monospaced B612 is installed too, it answers to the family name of the other, and Qt takes it for the
/// regular face. So our copy goes by a name of its own: the first letter of the family's name, in memory only.
QByteArray renamed(QByteArray font) {
    const QByteArray name("\0B\0006\0001\0002", 8); // "B612", UTF-16 big-endian, as the name table has it
    const QByteArray ours("\0C\0006\0001\0002", 8);
    return font.replace(name, ours);
}

}

void useOwnFont() {
    QString family;
    for (const char* face : {"B612-Regular", "B612-Bold", "B612-Italic"}) {
        QFile file(QStringLiteral(":/fonts/%1.ttf").arg(QLatin1String(face)));
        if (!file.open(QIODevice::ReadOnly))
            continue;
        const int id = QFontDatabase::addApplicationFontFromData(renamed(file.readAll()));
        family = QFontDatabase::applicationFontFamilies(id).value(0, family);
    }
    if (!family.isEmpty())
        QGuiApplication::setFont(QFont(family));
}

void addPlaces(QQmlEngine& engine) { engine.addImportPath(QStringLiteral("qrc:/qt/qml")); }

bool loadFrame(QQmlApplicationEngine& engine) {
    addPlaces(engine);
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Crownring/Frame/Main.qml")));
    return !engine.rootObjects().isEmpty();
}

}
