// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/connection/statement.h"

#include "store/connection/row_digest.h"
#include "text/shown.h"
#include "text/utf8.h"

#include <QtSql/QSqlDriver>
#include <QtSql/QSqlError>
#include <QtSql/QSqlRecord>
#include <nlohmann/json.hpp>
#include <sqlite3.h>

#include <algorithm>
#include <cmath>

namespace crownring {

namespace {

std::string_view textAt(sqlite3_value* value) {
    const auto* found = reinterpret_cast<const char*>(sqlite3_value_text(value));
    return found ? std::string_view(found, static_cast<std::size_t>(sqlite3_value_bytes(value))) : std::string_view();
}

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

/// The table that a statement reads, the first where there are several.
std::string tableOf(const QString& statement) {
    const auto from = QStringLiteral(" FROM ");
    auto at = statement.indexOf(from);
    while (at >= 0 && statement.mid(at + from.size(), 1) == QStringLiteral("("))
        at = statement.indexOf(from, at + 1);
    const auto rest = at < 0 ? QString() : statement.mid(at + from.size());
    return rest.section(QLatin1Char(' '), 0, 0).toStdString();
}

bool isReadable(std::string_view bytes) {
    const auto plain = [](char byte) { return static_cast<unsigned char>(byte) < 0x80; };
    return std::ranges::all_of(bytes, plain) || isUtf8(bytes);
}

}

Statement::Statement(const Connection& connection, const char* text)
    : m_connection(connection), m_text(QString::fromUtf8(text)) {
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
    prepare();
}

/// On a server.
void Statement::prepare() {
    // Not forward-only: such results are lost as soon as another statement runs on the connection.
    m_query.emplace(m_connection.database());
    m_reopened = m_connection.reopened();
    if (!m_query->prepare(m_text))
        throw errorOf(m_query->lastError(), m_text);
}

Statement::~Statement() { sqlite3_finalize(m_sqlite); }

void Statement::begin() {
    m_bound = 0;
    m_column = 0;
    if (m_sqlite)
        sqlite3_reset(m_sqlite);
    else if (m_reopened != m_connection.reopened())
        prepare();
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
    m_valued = 0;
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
    m_valued = 0;
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

void Statement::valueTo(int column) const {
    if (std::ssize(m_values) <= column)
        m_values.resize(static_cast<std::size_t>(std::max(column + 1, sqlite3_column_count(m_sqlite))));
    for (; m_valued <= column; ++m_valued)
        m_values[static_cast<std::size_t>(m_valued)] = sqlite3_column_value(m_sqlite, m_valued);
}

bool Statement::isNull(int column) const {
    return m_sqlite ? sqlite3_value_type(valueAt(column)) == SQLITE_NULL : m_query->isNull(column);
}

std::int64_t Statement::number(int column) const {
    return m_sqlite ? sqlite3_value_int64(valueAt(column)) : m_query->value(column).toLongLong();
}

std::int64_t Statement::within(int column, std::int64_t first, std::int64_t last) const {
    const auto value = number(column);
    if (value < first || value > last)
        throw unread(column);
    return value;
}

double Statement::real(int column) const {
    const auto value = m_sqlite ? sqlite3_value_double(valueAt(column)) : m_query->value(column).toDouble();
    if (!std::isfinite(value))
        throw unread(column);
    return value;
}

std::string Statement::words(int column) const {
    if (!m_sqlite)
        return m_query->value(column).toString().toStdString();
    std::string text(textAt(valueAt(column)));
    if (!isReadable(text))
        throw unread(column);
    return text;
}

void Statement::into(std::string& text) {
    const int column = m_column++;
    if (!m_sqlite) {
        text = words(column);
        return;
    }
    text.assign(textAt(valueAt(column)));
    if (!isReadable(text))
        throw unread(column);
}

QByteArray Statement::bytes(int column) const {
    if (!m_sqlite)
        return m_query->value(column).toByteArray();
    const auto* data = static_cast<const char*>(sqlite3_value_blob(valueAt(column)));
    return {data, sqlite3_value_bytes(valueAt(column))};
}

std::vector<std::string> Statement::texts(int column) const {
    const auto list = nlohmann::json::parse(words(column), nullptr, false);
    const auto isWord = [](const nlohmann::json& each) { return each.is_string(); };
    if (!list.is_array() || !std::ranges::all_of(list, isWord))
        throw unread(column);
    return list.get<std::vector<std::string>>();
}

std::uint64_t Statement::digest(int columns) const {
    RowDigest digest;
    if (!m_sqlite) {
        columns = std::min(columns, m_query->record().count());
        for (int column = 0; column < columns; ++column) {
            const auto value = m_query->value(column);
            if (value.isNull())
                digest.addNull();
            else if (value.typeId() == QMetaType::Double)
                digest.add(value.toDouble());
            else if (value.typeId() == QMetaType::LongLong)
                digest.add(std::int64_t{value.toLongLong()});
            else
                digest.add(std::string_view(value.toString().toStdString()));
        }
        return digest.value();
    }
    columns = std::min(columns, sqlite3_column_count(m_sqlite));
    if (m_valued < columns)
        valueTo(columns - 1);
    for (int column = 0; column < columns; ++column) {
        auto* each = m_values[static_cast<std::size_t>(column)];
        switch (sqlite3_value_type(each)) {
        case SQLITE_NULL:
            digest.addNull();
            break;
        case SQLITE_INTEGER:
            digest.add(std::int64_t{sqlite3_value_int64(each)});
            break;
        case SQLITE_FLOAT:
            digest.add(sqlite3_value_double(each));
            break;
        default: {
            const auto* bytes = static_cast<const char*>(sqlite3_value_blob(each));
            digest.add(std::string_view(bytes ? bytes : "", static_cast<std::size_t>(sqlite3_value_bytes(each))));
        }
        }
    }
    return digest.value();
}

CivilDate Statement::Column<CivilDate>::of(const Statement& row, int column) {
    const auto number = row.number(column);
    const auto day = CivilDate::fromDayNumber(number);
    if (day.dayNumber() != number)
        throw row.unread(column);
    return day;
}

std::string Statement::columnName(int column) const {
    return m_sqlite ? sqlite3_column_name(m_sqlite, column) : m_query->record().fieldName(column).toStdString();
}

std::string Statement::plainly(int column) const {
    constexpr std::size_t most = 60;
    if (!m_sqlite)
        return shownOnOneLine(m_query->value(column).toString().left(most).toStdString());
    return shownOnOneLine(textAt(valueAt(column)).substr(0, most));
}

StoreError Statement::unread(int column) const {
    const int columns = m_sqlite ? sqlite3_column_count(m_sqlite) : m_query->record().count();
    std::string row;
    auto name = columnName(column);
    for (int each = 0; each < columns; ++each)
        row += (row.empty() ? "" : " ") + columnName(each) + "=" + plainly(each);
    sqlite3_reset(m_sqlite); // a statement that is left in the middle would hold its state of the file
    return StoreError(StoreFault::ValueUnread, {tableOf(m_text), std::move(row), std::move(name)});
}

}
