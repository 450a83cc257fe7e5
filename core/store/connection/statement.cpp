// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/connection/statement.h"

#include <QtSql/QSqlDriver>
#include <QtSql/QSqlError>
#include <sqlite3.h>

namespace crownring {

namespace {

sqlite3* handleOf(const Connection& connection) {
    const auto handle = connection.database().driver()->handle();
    if (qstrcmp(handle.typeName(), "sqlite3*") != 0)
        throw StoreError(StoreFault::DriverGivesNoHandle);
    return *static_cast<sqlite3* const*>(handle.constData());
}

StoreError refusalOf(sqlite3* handle, const QString& text) {
    const auto code = sqlite3_extended_errcode(handle);
    return errorOf(QSqlError(QString(), QString::fromUtf8(sqlite3_errmsg(handle)), QSqlError::StatementError,
                             QString::number(code)),
                   text);
}

}

Statement::Statement(const Connection& connection, const char* text) : m_text(QString::fromUtf8(text)) {
    if (connection.dialect() == Dialect::Sqlite) {
        auto* handle = handleOf(connection);
        if (sqlite3_prepare_v3(handle, text, -1, SQLITE_PREPARE_PERSISTENT, &m_sqlite, nullptr) != SQLITE_OK)
            throw refusalOf(handle, m_text);
        return;
    }
    const auto parts = m_text.split(QLatin1Char('?'));
    m_text = parts.front();
    for (const auto& part : parts.sliced(1)) {
        m_places.push_back(QStringLiteral(":v%1").arg(m_places.size()));
        m_text += m_places.back() + part;
    }
    // Not forward-only: such results are lost as soon as another statement runs on the connection.
    m_query.emplace(connection.database());
    if (!m_query->prepare(m_text))
        throw errorOf(m_query->lastError(), m_text);
}

Statement::~Statement() { sqlite3_finalize(m_sqlite); }

void Statement::begin() {
    m_bound = 0;
    m_column = 0;
    if (m_sqlite)
        sqlite3_reset(m_sqlite);
}

void Statement::put(std::int64_t value) {
    if (m_sqlite)
        sqlite3_bind_int64(m_sqlite, ++m_bound, value);
    else
        m_query->bindValue(m_places[m_bound++], QVariant(qlonglong{value}));
}

void Statement::put(double value) {
    if (m_sqlite)
        sqlite3_bind_double(m_sqlite, ++m_bound, value);
    else
        m_query->bindValue(m_places[m_bound++], QVariant(value));
}

void Statement::put(const std::string& value) {
    if (m_sqlite)
        sqlite3_bind_text64(m_sqlite, ++m_bound, value.data(), value.size(), SQLITE_TRANSIENT, SQLITE_UTF8);
    else
        m_query->bindValue(m_places[m_bound++], QVariant(QString::fromStdString(value)));
}

void Statement::put(const QByteArray& value) {
    if (m_sqlite)
        sqlite3_bind_blob64(m_sqlite, ++m_bound, value.data(), static_cast<sqlite3_uint64>(value.size()),
                            SQLITE_TRANSIENT);
    else
        m_query->bindValue(m_places[m_bound++], QVariant(value));
}

void Statement::putNull(bool ofText) {
    if (m_sqlite)
        sqlite3_bind_null(m_sqlite, ++m_bound);
    else
        m_query->bindValue(m_places[m_bound++],
                           ofText ? QVariant(QMetaType(QMetaType::QString)) : QVariant(QMetaType(QMetaType::LongLong)));
}

void Statement::execute() {
    m_bound = 0;
    m_column = 0;
    if (!m_sqlite) {
        if (!m_query->exec())
            throw errorOf(m_query->lastError(), m_text);
        return;
    }
    const int result = sqlite3_step(m_sqlite);
    m_rowWaits = result == SQLITE_ROW;
    if (m_rowWaits)
        return;
    if (result != SQLITE_DONE) {
        const auto error = refusalOf(sqlite3_db_handle(m_sqlite), m_text);
        sqlite3_reset(m_sqlite);
        throw error;
    }
    sqlite3_reset(m_sqlite);
}

bool Statement::next() {
    m_column = 0;
    if (!m_sqlite)
        return m_query->next();
    if (m_rowWaits) {
        m_rowWaits = false;
        return true;
    }
    if (!sqlite3_stmt_busy(m_sqlite))
        return false;
    const int result = sqlite3_step(m_sqlite);
    if (result == SQLITE_ROW)
        return true;
    if (result == SQLITE_DONE) {
        sqlite3_reset(m_sqlite);
        return false;
    }
    const auto error = refusalOf(sqlite3_db_handle(m_sqlite), m_text);
    sqlite3_reset(m_sqlite);
    throw error;
}

void Statement::finish() {
    m_rowWaits = false;
    if (m_sqlite)
        sqlite3_reset(m_sqlite);
    else
        m_query->finish();
}

bool Statement::isNull(int column) const {
    return m_sqlite ? sqlite3_column_type(m_sqlite, column) == SQLITE_NULL : m_query->isNull(column);
}

std::int64_t Statement::number(int column) const {
    return m_sqlite ? sqlite3_column_int64(m_sqlite, column) : m_query->value(column).toLongLong();
}

double Statement::real(int column) const {
    return m_sqlite ? sqlite3_column_double(m_sqlite, column) : m_query->value(column).toDouble();
}

std::string Statement::words(int column) const {
    if (!m_sqlite)
        return m_query->value(column).toString().toStdString();
    const auto* text = reinterpret_cast<const char*>(sqlite3_column_text(m_sqlite, column));
    return text ? std::string(text, static_cast<std::size_t>(sqlite3_column_bytes(m_sqlite, column))) : std::string();
}

void Statement::into(std::string& text) {
    const int column = m_column++;
    if (!m_sqlite) {
        text = words(column);
        return;
    }
    const auto* found = reinterpret_cast<const char*>(sqlite3_column_text(m_sqlite, column));
    text.assign(found ? found : "", found ? static_cast<std::size_t>(sqlite3_column_bytes(m_sqlite, column)) : 0);
}

QByteArray Statement::bytes(int column) const {
    if (!m_sqlite)
        return m_query->value(column).toByteArray();
    const auto* data = static_cast<const char*>(sqlite3_column_blob(m_sqlite, column));
    return {data, sqlite3_column_bytes(m_sqlite, column)};
}

}
