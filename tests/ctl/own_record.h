// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// crownringctl on a record of the test's own, in a folder that goes away with it.

#include "ctl/answer.h"

#include <QtCore/QTemporaryDir>

namespace crownring::testing {

class OwnRecord {
protected:
    Answer ctl(const QStringList& arguments, const QByteArray& input = {}) const {
        return answerOf(QStringLiteral(CROWNRINGCTL), QStringList{QStringLiteral("--record"), path("r")} + arguments,
                        input);
    }
    /// Of a file beside the record, which is "r".
    [[nodiscard]] QString path(const char* name) const { return m_folder.filePath(QString::fromLatin1(name)); }

    QTemporaryDir m_folder;
};

}
