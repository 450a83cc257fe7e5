// SPDX-License-Identifier: GPL-3.0-or-later
#include "program/own_place.h"

#include <QCoreApplication>
#include <QDir>
#include <QStandardPaths>

namespace crownring {

void nameProgram(const QString& version) {
    QCoreApplication::setOrganizationName(QStringLiteral("Crownring"));
    QCoreApplication::setApplicationName(QStringLiteral("crownring"));
    QCoreApplication::setApplicationVersion(version);
}

QString ownRecord() {
    // Not under the organisation's name: records were kept here before settings had one.
    const QDir folder(QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) +
                      QStringLiteral("/crownring"));
    folder.mkpath(QStringLiteral("."));
    return folder.filePath(QStringLiteral("fleet.sqlite"));
}

}
