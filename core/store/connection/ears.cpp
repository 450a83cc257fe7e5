// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/connection/ears.h"

#include <QtSql/QSqlDriver>
#include <QtSql/QSqlError>

#include <utility>

namespace crownring {

namespace {

const QString& channel() {
    static const auto name = QStringLiteral("crownring");
    return name;
}

}

void Ears::tell(const Connection& connection) { connection.run(QStringLiteral("NOTIFY ") + channel()); }

bool Ears::heard(const Connection& connection) {
    if (m_opened == connection.reopened())
        return std::exchange(m_heard, false);
    const bool first = m_opened < 0;
    auto* driver = connection.database().driver();
    if (!driver->subscribeToNotification(channel()))
        throw errorOf(driver->lastError(), QStringLiteral("LISTEN ") + channel());
    QObject::connect(driver, &QSqlDriver::notification, &m_listener,
                     [this](const QString&, QSqlDriver::NotificationSource source, const QVariant&) {
                         m_heard = m_heard || source != QSqlDriver::SelfSource;
                     });
    m_opened = connection.reopened();
    m_heard = false;
    return !first;
}

}
