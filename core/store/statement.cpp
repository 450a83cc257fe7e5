// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/statement.h"

#include <QtSql/QSqlError>

namespace crownring {

Statement::Statement(const Connection& connection, const char* text)
    : m_query(connection.database()), m_text(QString::fromUtf8(text)) {
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
