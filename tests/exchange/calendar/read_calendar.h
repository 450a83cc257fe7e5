// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A calendar as a parser reads it that is not ours (`read_calendar.py`).

#include <QByteArray>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>

#include <stdexcept>
#include <string>

namespace crownring::testing {

/// Its events. @throws where it is refused
inline QJsonArray readCalendar(const std::string& text) {
    QProcess reader;
    reader.start(
        QStringLiteral("/usr/bin/python3"),
        {QStringLiteral("-B"), QStringLiteral(CROWNRING_SOURCE_DIR "/tests/exchange/calendar/read_calendar.py")});
    reader.write(text.data(), static_cast<qint64>(text.size()));
    reader.closeWriteChannel();
    if (!reader.waitForFinished() || reader.exitCode() != 0)
        throw std::runtime_error("refused: " + reader.readAllStandardError().toStdString());
    return QJsonDocument::fromJson(reader.readAllStandardOutput()).array();
}

}
