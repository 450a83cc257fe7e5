// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A program run to its end, and what it said.

#include <QtCore/QByteArray>
#include <QtCore/QProcess>
#include <QtCore/QStringList>
#include <nlohmann/json.hpp>

namespace crownring::testing {

struct Answer {
    int code = -1;
    QByteArray out;
    QByteArray err;
    [[nodiscard]] nlohmann::json document() const { return nlohmann::json::parse(out.toStdString()); }
};

/// @param input goes to its standard input
inline Answer answerOf(const QString& program, const QStringList& arguments, const QByteArray& input = {}) {
    QProcess process;
    process.start(program, arguments);
    process.write(input);
    process.closeWriteChannel();
    process.waitForFinished(300'000);
    return {process.exitCode(), process.readAllStandardOutput(), process.readAllStandardError()};
}

}
