// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Hears from a PostgreSQL server that somebody else has written. What comes in is handed over by the event loop of the
/// thread.

#include "store/connection/connection.h"

#include <QtCore/QObject>

namespace crownring {

class Ears {
public:
    /// Told to everybody who listens, once what was written is committed. @throws StoreError
    static void tell(const Connection& connection);
    /// Whether somebody else has told since this was asked last; listening begins when it is first asked. After the
    /// server was lost nobody knows: true. @throws StoreError
    bool heard(const Connection& connection);

private:
    QObject m_listener;
    int m_opened = -1; ///< the connection on which it listens, by how often it was opened again
    bool m_heard = false;
};

}
