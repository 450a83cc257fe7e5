// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/typeface.h"

#include "print/sheet.h"

#include <QtCore/QFile>
#include <QtGui/QFontDatabase>

namespace crownring::print {

namespace {

/// Where the monospaced B612 is installed too, it answers to the family name of the other, and Qt takes it for the
/// regular face. So our copy goes by a name of its own: the first letter of the family's name, in memory only.
QByteArray renamed(QByteArray font) {
    const QByteArray name("\0B\0006\0001\0002", 8); // "B612", UTF-16 big-endian, as the name table has it
    const QByteArray ours("\0C\0006\0001\0002", 8);
    return font.replace(name, ours);
}

QString loadFamily() {
    QString family;
    for (const char* face : {"B612-Regular", "B612-Bold", "B612-Italic"}) {
        QFile file(QStringLiteral(":/fonts/%1.ttf").arg(QLatin1String(face)));
        if (!file.open(QIODevice::ReadOnly))
            continue;
        const int id = QFontDatabase::addApplicationFontFromData(renamed(file.readAll()));
        family = QFontDatabase::applicationFontFamilies(id).value(0, family);
    }
    return family;
}

}

QString ownFamily() {
    static const QString family = loadFamily();
    return family;
}

QFont typeFont(double size, Face face) {
    QFont font;
    font.setFamilies({ownFamily().isEmpty() ? QStringLiteral("Sans Serif") : ownFamily()});
    font.setStyleHint(QFont::SansSerif);
    font.setPixelSize(qRound(points(size)));
    font.setBold(face == Face::Bold);
    font.setItalic(face == Face::Italic);
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

}
