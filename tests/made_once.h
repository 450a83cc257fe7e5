// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What takes longer to make than most tests take is made once for each build of the program that makes it.

#include <QtCore/QDir>
#include <QtCore/QFileInfo>
#include <QtCore/QLockFile>

namespace crownring::testing {

/// Copies the file of that name of that program to `to`; makes it first where it is not there or an earlier build made
/// it.
/// @param make writes the file that it is given, and says whether it could
template <class Make>
bool copyOfMadeOnce(const QFileInfo& program, const QString& name, const QString& to, Make make) {
    const auto stem = QStringLiteral("%1.%2-").arg(program.fileName(), name);
    const auto made = program.dir().filePath(stem + QString::number(program.lastModified().toMSecsSinceEpoch()));
    QLockFile lock(program.absoluteFilePath() + QStringLiteral(".lock"));
    lock.setStaleLockTime(0); // who makes it may take long
    if (!lock.lock())
        return false;
    if (!QFile::exists(made)) {
        const auto earlier = program.dir().entryList({stem + QLatin1Char('*')}, QDir::Files);
        for (const auto& each : earlier)
            program.dir().remove(each);
        const auto draft = made + QStringLiteral(".draft");
        if (!make(draft) || !QFile::rename(draft, made))
            return false;
    }
    return QFile::copy(made, to);
}

}
