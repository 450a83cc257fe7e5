// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Making all answers anew from the journal: for a record whose entries are sound and whose tables beside them are not.

#include "screen/desk/resident.h"

#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class Rebuilding : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool running READ isRunning NOTIFY changed FINAL)
    Q_PROPERTY(bool failed READ hasFailed NOTIFY changed FINAL)
    /// How the last one ended, in words.
    Q_PROPERTY(QString outcome READ outcome NOTIFY changed FINAL)

public:
    using Resident::Resident;

    [[nodiscard]] bool isRunning() const { return m_running; }
    [[nodiscard]] bool hasFailed() const { return m_failed; }
    [[nodiscard]] QString outcome() const { return m_outcome; }
    Q_INVOKABLE void begin();

signals:
    void changed();

private:
    void movedIn() override;

    bool m_running = false;
    bool m_failed = false;
    QString m_outcome;
};

}
