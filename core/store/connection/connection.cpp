// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/connection/connection.h"

#include <QtCore/QFileInfo>
#include <QtCore/QUrl>
#include <QtCore/QUrlQuery>
#include <QtCore/QUuid>
#include <QtSql/QSqlError>
#include <QtSql/QSqlQuery>

#include <array>
#include <utility>

namespace crownring {

bool isPostgres(const std::string& location) {
    return location.starts_with("postgresql://") || location.starts_with("postgres://");
}

StoreError errorOf(const QSqlError& error, const QString& statement) {
    const auto native = error.nativeErrorCode();
    // A SQLSTATE has five letters; of SQLite's numbers the low byte is the primary code, here BUSY and LOCKED.
    // PostgreSQL: lock_not_available and deadlock_detected.
    const bool isState = native.size() == 5;
    const auto primary = isState ? 0 : native.toInt() & 0xff;
    const bool busy =
        primary == 5 || primary == 6 || native == QStringLiteral("55P03") || native == QStringLiteral("40P01");
    const auto text = error.text() + QStringLiteral(" [") + native + QStringLiteral("] in: ") + statement.left(120);
    const auto fault = busy            ? StoreFault::Busy
                       : primary == 26 ? StoreFault::NotADatabase // SQLITE_NOTADB
                                       : StoreFault::Refused;
    return StoreError(fault, {text.toStdString()});
}

namespace {

/// What a URL says beyond host and user goes to libpq as it is (sslmode, sslrootcert, target_session_attrs …); a key
/// that libpq does not know is refused by it. @return "key='value';…"
QString connectOptions(const QUrlQuery& asked) {
    auto options = QStringLiteral("application_name=crownring");
    bool hasTimeout = false;
    for (const auto& [key, value] : asked.queryItems(QUrl::FullyDecoded)) {
        if (key == QStringLiteral("host") || key == QStringLiteral("user") || key == QStringLiteral("application_name"))
            continue;
        hasTimeout = hasTimeout || key == QStringLiteral("connect_timeout");
        auto quoted = value;
        quoted.replace(u'\\', QStringLiteral("\\\\")).replace(u'\'', QStringLiteral("\\'"));
        options += QStringLiteral(";%1='%2'").arg(key, quoted);
    }
    return hasTimeout ? options : options + QStringLiteral(";connect_timeout=5");
}

}

Connection::Connection(const std::string& location, Access access)
    : m_name(QUuid::createUuid().toString()), m_dialect(isPostgres(location) ? Dialect::Postgres : Dialect::Sqlite) {
    QSqlDatabase::addDatabase(m_dialect == Dialect::Sqlite ? QStringLiteral("QSQLITE") : QStringLiteral("QPSQL"),
                              m_name);
    try {
        if (m_dialect == Dialect::Sqlite)
            openSqlite(location, access);
        else
            openPostgres(location);
    } catch (...) {
        QSqlDatabase::removeDatabase(m_name);
        throw;
    }
}

Connection::~Connection() {
    {
        auto db = database();
        if (m_dialect == Dialect::Sqlite && db.isOpen()) {
            // One file is then the whole truth: people copy it.
            QSqlQuery checkpoint(db);
            checkpoint.exec(QStringLiteral("PRAGMA wal_checkpoint(TRUNCATE)"));
        }
        db.close();
    }
    QSqlDatabase::removeDatabase(m_name);
}

void Connection::run(const QString& statement) const {
    QSqlQuery query(database());
    if (!query.exec(statement))
        throw errorOf(query.lastError(), statement);
}

QString Connection::ask(const QString& statement) const {
    QSqlQuery query(database());
    if (!query.exec(statement))
        throw errorOf(query.lastError(), statement);
    return query.next() ? query.value(0).toString() : QString();
}

std::int64_t Connection::writtenByOthers() const { return ask(QStringLiteral("PRAGMA data_version")).toLongLong(); }

void Connection::openSqlite(const std::string& file, Access access) const {
    auto db = database();
    db.setDatabaseName(QString::fromStdString(file));
    if (access == Access::ReadOnly)
        db.setConnectOptions(QStringLiteral("QSQLITE_OPEN_READONLY"));
    if (!db.open())
        throw StoreError(StoreFault::NotOpened, {db.lastError().text().toStdString()});
    const auto set = [&](const char* pragma, const char* value, const char* answer) {
        const auto name = QString::fromLatin1(pragma);
        run(QStringLiteral("PRAGMA %1 = %2").arg(name, QString::fromLatin1(value)));
        const auto is = ask(QStringLiteral("PRAGMA %1").arg(name));
        if (is != QString::fromLatin1(answer))
            throw StoreError(StoreFault::SettingNotTaken, {pragma, is.toStdString(), answer});
    };
    set("busy_timeout", "5000", "5000");
    set("foreign_keys", "ON", "1");
    set("recursive_triggers", "ON", "1"); // else INSERT OR REPLACE would go round the append-only guard
    set("trusted_schema", "OFF", "0");
    set("cache_size", "-65536", "-65536");
    set("temp_store", "MEMORY", "2");
    if (access == Access::ReadOnly)
        return;
    // WAL needs shared memory; where the file system has none SQLite keeps its answer and the older way serves as well.
    static_cast<void>(ask(QStringLiteral("PRAGMA journal_mode = WAL")));
    set("synchronous", "FULL", "2");
}

void Connection::openPostgres(const std::string& location) const {
    const QUrl url(QString::fromStdString(location));
    const QUrlQuery options(url);
    auto db = database();
    db.setDatabaseName(url.path().mid(1));
    const auto socket = options.queryItemValue(QStringLiteral("host"), QUrl::FullyDecoded);
    db.setHostName(socket.isEmpty() ? url.host() : socket);
    if (url.port() > 0)
        db.setPort(url.port());
    const auto user = options.queryItemValue(QStringLiteral("user"), QUrl::FullyDecoded);
    db.setUserName(user.isEmpty() ? url.userName() : user);
    db.setPassword(url.password());
    db.setConnectOptions(connectOptions(options));
    if (!db.open())
        throw StoreError(StoreFault::NotOpened, {db.lastError().text().toStdString()});
    run(QStringLiteral("SET client_min_messages = warning"));
    run(QStringLiteral("SET lock_timeout = '5s'"));
    run(QStringLiteral("SET synchronous_commit = on"));
}

Transaction::Transaction(const Connection& connection) : m_connection(connection) {
    // A deferred BEGIN that reads before it writes fails at once when another writes, whatever the timeout says.
    connection.run(connection.dialect() == Dialect::Sqlite ? QStringLiteral("BEGIN IMMEDIATE")
                                                           : QStringLiteral("BEGIN"));
}

Transaction::~Transaction() {
    if (!m_open)
        return;
    QSqlQuery rollback(m_connection.database());
    rollback.exec(QStringLiteral("ROLLBACK"));
}

// On SQLite the state is that of the first read; in write-ahead mode nobody waits for it.
ReadTransaction::ReadTransaction(const Connection& connection) : m_connection(connection) {
    connection.run(connection.dialect() == Dialect::Sqlite
                       ? QStringLiteral("BEGIN DEFERRED")
                       : QStringLiteral("BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY"));
}

ReadTransaction::~ReadTransaction() {
    QSqlQuery end(m_connection.database());
    end.exec(QStringLiteral("ROLLBACK"));
}

void Transaction::commit() {
    m_connection.run(QStringLiteral("COMMIT"));
    m_open = false;
}

}
