// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/desk/proof/acknowledgements.h"

#include "words/border.h"

#include <QCryptographicHash>
#include <QFileInfo>
#include <QSettings>

namespace crownring::screen {

using namespace words;

namespace {

QString groupOf(const QString& location) {
    const bool isUrl = location.contains(QStringLiteral("://"));
    const auto place = isUrl ? location : QFileInfo(location).absoluteFilePath();
    return QStringLiteral("acknowledged/") +
           QString::fromLatin1(QCryptographicHash::hash(place.toUtf8(), QCryptographicHash::Sha256).toHex().left(16));
}

}

std::vector<Acknowledged> acknowledgedAt(const QString& location) {
    QSettings settings;
    settings.beginGroup(groupOf(location));
    std::vector<Acknowledged> ends;
    const auto writers = settings.childKeys();
    for (const auto& writer : writers)
        if (const auto end = acknowledgedFrom(outward(settings.value(writer).toString())))
            ends.push_back(*end);
    return ends;
}

void keepAcknowledged(const QString& location, const Acknowledged& end) {
    QSettings settings;
    settings.beginGroup(groupOf(location));
    settings.setValue(inward(end.writer.text()), inward(acknowledgedText(end)));
}

void forgetAcknowledged(const QString& location) { QSettings().remove(groupOf(location)); }

}
