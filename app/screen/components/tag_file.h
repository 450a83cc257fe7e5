// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Tags of items, written to a file to be printed.

#include "screen/desk/resident.h"

#include <QStringList>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class TagFile : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT

public:
    using Resident::Resident;
    /// Among the user's documents.
    Q_INVOKABLE QUrl proposed(const QStringList& items) const;
    /// On pages of the size that is usual where the user is. What came of it is told as a notice.
    Q_INVOKABLE void write(const QStringList& items, const QUrl& file);
};

}
