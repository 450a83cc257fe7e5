// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A database connection with the settings that a record needs, asserted rather than hoped for. SQLite by file name,
/// PostgreSQL by URL. Belongs to the thread that made it.

#include "problem/faults/store_fault.h"
#include "problem/problem.h"
#include "store/connection/file_stamp.h"

#include <QtSql/QSqlDatabase>

#include <cstdint>
#include <stdexcept>
#include <string>

namespace crownring {

/// The database refused or was lost. Thrown inside `store`; its border gives the problem.
class StoreError : public std::runtime_error {
public:
    explicit StoreError(StoreFault fault, Arguments arguments = {})
        : StoreError(Problem{fault, std::move(arguments)}) {}
    explicit StoreError(Problem problem) : std::runtime_error(text(problem)), m_problem(std::move(problem)) {}
    [[nodiscard]] const Problem& problem() const { return m_problem; }
    [[nodiscard]] Code code() const { return m_problem.code(); }
    [[nodiscard]] bool is(StoreFault fault) const { return m_problem.fault == Fault(fault); }

private:
    Problem m_problem;
};

enum class Dialect { Sqlite, Postgres };
enum class Access { ReadWrite, ReadOnly };

class Connection {
public:
    /// @throws StoreError when it cannot be opened or a setting is not taken
    /// @param access `ReadOnly` also opens what stands in a folder that cannot be written; it is not asked of a server
    /// @param location a file name, or
    /// "postgresql://[user[:password]@][host[:port]]/name[?host=/socket/folder&user=name&sslmode=verify-full…]":
    /// further keys are those of libpq
    Connection(const std::string& location, Access access);
    ~Connection();
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    [[nodiscard]] QSqlDatabase database() const { return QSqlDatabase::database(m_name, false); }
    [[nodiscard]] Dialect dialect() const { return m_dialect; }
    /// The file of an SQLite record, as it was named.
    [[nodiscard]] const std::string& location() const { return m_location; }
    /// Opens it again after it was lost. Statements are prepared anew when they are run next. @throws StoreError
    void reopen();
    /// How often it was opened again.
    [[nodiscard]] int reopened() const { return m_reopened; }
    /// @throws StoreError where the name no longer leads to the file that was opened
    void checkStillThere() const;
    /// Of a file in a folder that cannot be written, which is read without the locks that are kept there.
    /// @throws StoreError where somebody else has written to it since
    void checkUnchanged() const;
    /// Gives the room on the disk back that what was not written took.
    void letGoOfLog() const;
    /// Runs one statement that returns nothing of interest. @throws StoreError
    void run(const QString& statement) const;
    /// The first column of the first row as text. @throws StoreError
    [[nodiscard]] QString ask(const QString& statement) const;
    /// A number that has changed when another connection has written to the file since it was last asked for; inside a
    /// write transaction nobody can write any more. SQLite only. https://www.sqlite.org/pragma.html#pragma_data_version
    [[nodiscard]] std::int64_t writtenByOthers() const;

private:
    [[nodiscard]] static QString nameOf(const std::string& file, bool alone);
    void openSqlite();
    void openPostgres() const;

    QString m_name;
    std::string m_location;
    Dialect m_dialect;
    std::optional<FileStamp> m_file; ///< nothing where it is no file
    Access m_access;
    bool m_alone = false; ///< read without locks
    int m_reopened = 0;
};

[[nodiscard]] bool isPostgres(const std::string& location);

/// A write transaction: takes the write lock at once, rolls back unless committed.
class Transaction {
public:
    explicit Transaction(const Connection& connection);
    ~Transaction();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;
    /// @throws StoreError `Gone` where the file is no longer there, `CommitUnknown` where the server's answer was lost
    void commit();

private:
    const Connection& m_connection;
    bool m_open = true;
};

/// Reads within it see one state, whoever writes meanwhile. Nothing can be written while it lives.
class ReadTransaction {
public:
    /// @throws StoreError when the database is gone
    explicit ReadTransaction(const Connection& connection);
    ~ReadTransaction();
    ReadTransaction(const ReadTransaction&) = delete;
    ReadTransaction& operator=(const ReadTransaction&) = delete;

private:
    const Connection& m_connection;
};

/// Turns what the database says into an error. @param statement that it refused
[[nodiscard]] StoreError errorOf(const QSqlError& error, const QString& statement);

}
