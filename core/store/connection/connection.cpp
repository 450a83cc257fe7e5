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

namespace {

/// https://www.sqlite.org/rescode.html
StoreFault faultOfNumber(int code) {
    constexpr int noRoomForSharedMemory = 4874; // IOERR_SHMSIZE: a full disk, though it is not called so
    if (code == noRoomForSharedMemory)
        return StoreFault::DiskFull;
    switch (code & 0xff) {
    case 5: // BUSY
    case 6: // LOCKED
        return StoreFault::Busy;
    case 10: // IOERR
        return StoreFault::DiskFailed;
    case 11: // CORRUPT
        return StoreFault::Damaged;
    case 13: // FULL
        return StoreFault::DiskFull;
    case 26: // NOTADB
        return StoreFault::NotADatabase;
    default:
        return StoreFault::Refused;
    }
}

/// https://www.postgresql.org/docs/15/errcodes-appendix.html
StoreFault faultOfState(const QString& state) {
    if (state == QStringLiteral("55P03") || state == QStringLiteral("40P01")) // lock_not_available, deadlock_detected
        return StoreFault::Busy;
    if (state == QStringLiteral("53100")) // disk_full
        return StoreFault::DiskFull;
    if (state == QStringLiteral("42501")) // insufficient_privilege
        return StoreFault::RightsMissing;
    // connection exceptions; admin_shutdown, crash_shutdown, cannot_connect_now
    if (state.startsWith(QStringLiteral("08")) || state.startsWith(QStringLiteral("57P0")))
        return StoreFault::Lost;
    return StoreFault::Refused;
}

}

namespace {

/// On one line, and without what Qt says of the call.
QString driverText(const QSqlError& error) {
    const auto text = error.databaseText().simplified();
    return text.isEmpty() ? error.text().simplified() : text;
}

}

StoreError errorOf(const QSqlError& error, const QString& statement) {
    const auto native = error.nativeErrorCode();
    // A SQLSTATE has five letters; of SQLite's numbers the low byte is the primary code.
    const bool isState = native.size() == 5;
    const auto fault = native.isEmpty() ? StoreFault::Lost // what a server did not say itself
                       : isState        ? faultOfState(native)
                                        : faultOfNumber(native.toInt());
    auto text = driverText(error) + QStringLiteral(" [") + native + u']';
    if (fault == StoreFault::Refused) // by no state of a disk or a server: who mends the program asks which
        text += QStringLiteral(" in: ") + statement.left(120);
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
    : m_name(QUuid::createUuid().toString()), m_location(location),
      m_dialect(isPostgres(location) ? Dialect::Postgres : Dialect::Sqlite), m_access(access) {
    QSqlDatabase::addDatabase(m_dialect == Dialect::Sqlite ? QStringLiteral("QSQLITE") : QStringLiteral("QPSQL"),
                              m_name);
    try {
        if (m_dialect == Dialect::Sqlite)
            openSqlite();
        else
            openPostgres();
    } catch (...) {
        QSqlDatabase::removeDatabase(m_name);
        throw;
    }
}

Connection::~Connection() {
    {
        auto db = database();
        if (m_dialect == Dialect::Sqlite && m_access == Access::ReadWrite && db.isOpen())
            letGoOfLog(); // one file is then the whole truth: people copy it
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

void Connection::reopen() {
    // What was prepared would be freed on the new connection, where it is not known, and spoil its first transaction:
    // it has to lose its driver.
    database().close();
    QSqlDatabase::removeDatabase(m_name);
    QSqlDatabase::addDatabase(QStringLiteral("QPSQL"), m_name);
    ++m_reopened;
    openPostgres();
}

void Connection::checkStillThere() const {
    if (!m_file)
        return;
    const auto now = stampOfFile(m_location);
    if (!now || !now->isSameFile(*m_file))
        throw StoreError(StoreFault::Gone, {m_location});
}

void Connection::checkUnchanged() const {
    if (m_alone && (stampOfFile(m_location) != m_file || stampBeside(m_location, "-wal")))
        throw StoreError(StoreFault::ChangedMeanwhile);
}

void Connection::letGoOfLog() const {
    QSqlQuery checkpoint(database());
    checkpoint.exec(QStringLiteral("PRAGMA wal_checkpoint(TRUNCATE)"));
}

/// A record that was closed stands in its file alone, but in write-ahead mode SQLite wants files beside it even to
/// read. Where none can be made it is told that nobody writes. https://www.sqlite.org/uri.html#uriimmutable
QString Connection::nameOf(const std::string& file, bool alone) {
    if (!alone)
        return QString::fromStdString(file);
    auto url = QUrl::fromLocalFile(QFileInfo(QString::fromStdString(file)).absoluteFilePath());
    url.setQuery(QStringLiteral("immutable=1"));
    return url.toString(QUrl::FullyEncoded);
}

void Connection::openSqlite() {
    auto db = database();
    m_file = stampOfFile(m_location);
    m_alone = m_access == Access::ReadOnly && m_file && !isFolderWritable(m_location) &&
              !stampBeside(m_location, "-wal") && !stampBeside(m_location, "-journal");
    db.setDatabaseName(nameOf(m_location, m_alone));
    if (m_access == Access::ReadOnly)
        db.setConnectOptions(m_alone ? QStringLiteral("QSQLITE_OPEN_READONLY;QSQLITE_OPEN_URI")
                                     : QStringLiteral("QSQLITE_OPEN_READONLY"));
    if (!db.open())
        throw StoreError(StoreFault::NotOpened, {driverText(db.lastError()).toStdString()});
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
    if (m_access == Access::ReadOnly)
        return;
    // WAL needs shared memory; where the file system has none SQLite keeps its answer and the older way serves as well.
    static_cast<void>(ask(QStringLiteral("PRAGMA journal_mode = WAL")));
    set("synchronous", "FULL", "2");
    m_file = stampOfFile(m_location);
}

void Connection::openPostgres() const {
    const QUrl url(QString::fromStdString(m_location));
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
        throw StoreError(StoreFault::NotOpened, {driverText(db.lastError()).toStdString()});
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
    connection.checkUnchanged();
    connection.run(connection.dialect() == Dialect::Sqlite
                       ? QStringLiteral("BEGIN DEFERRED")
                       : QStringLiteral("BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY"));
}

ReadTransaction::~ReadTransaction() {
    QSqlQuery end(m_connection.database());
    end.exec(QStringLiteral("ROLLBACK"));
}

void Transaction::commit() {
    m_connection.checkStillThere();
    try {
        m_connection.run(QStringLiteral("COMMIT"));
    } catch (const StoreError& error) {
        if (!error.is(StoreFault::Lost))
            throw;
        throw StoreError(StoreFault::CommitUnknown, error.problem().arguments);
    }
    m_open = false;
}

}
