// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is to be filed of a balloon, written to a file to be printed: the status of its directives, and its events with
/// what they made due. Of the day that is asked.

#include "screen/desk/resident.h"

#include <QUrl>
#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class StatusFile : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT

public:
    /// Of the last year, and what is open from before.
    enum Paper { Directives, Events };
    Q_ENUM(Paper)
    using Resident::Resident;
    /// Among the user's documents.
    Q_INVOKABLE QUrl proposed(crownring::screen::StatusFile::Paper paper, const QString& balloon) const;
    /// On pages of the size that is usual where the user is. What came of it is told as a notice.
    Q_INVOKABLE void write(crownring::screen::StatusFile::Paper paper, const QString& balloon, const QUrl& file);
};

}
