// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/statement.h"

#include <QtSql/QSqlError>

namespace crownring {

Statement::Statement(const Connection& connection, const char* text) : m_query(connection.database()) {
    const auto parts = QString::fromUtf8(text).split(QLatin1Char('?'));
    m_text = parts.front();
    for (const auto& part : parts.sliced(1)) {
        m_places.push_back(QStringLiteral(":v%1").arg(m_places.size()));
        m_text += m_places.back() + part;
    }
    // Forward-only results of PostgreSQL are lost as soon as another statement runs on the connection.
    m_query.setForwardOnly(connection.dialect() == Dialect::Sqlite);
    if (!m_query.prepare(m_text))
        throw errorOf(m_query.lastError(), m_text);
}

void Statement::execute() {
    if (!m_query.exec())
        throw errorOf(m_query.lastError(), m_text);
}

}
