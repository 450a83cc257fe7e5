// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A prepared statement with typed binding and reading; what the database refuses is thrown as `StoreError`.
///
/// SQLite is spoken to through the connection's own handle, which Qt hands out for this (`QSqlDriver::handle`): Qt
/// makes a QVariant of every value of every row, and that cost twice what SQLite itself needs. PostgreSQL goes through
/// QSqlQuery.
///
/// A table is no safer than a file: whatever a column says is checked as what comes from outside is, and what cannot be
/// a value of its type is refused with its table, row and column (`StoreFault::ValueUnread`).

#include "civil/moment.h"
#include "measure/amount.h"
#include "measure/count.h"
#include "measure/name.h"
#include "store/connection/connection.h"

#include <QtCore/QByteArray>
#include <QtCore/QStringList>
#include <QtSql/QSqlQuery>

#include <limits>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

struct sqlite3_stmt;
struct sqlite3_value;

namespace crownring {

template <class T>
inline constexpr bool isText = std::is_same_v<T, std::string>;
template <class What>
inline constexpr bool isText<Name<What>> = true;

/// The numbers, from `first` to `last`, by which a table keeps an enum. Said beside the tables for each that they keep.
template <class Enum>
struct Kept;

class Statement {
public:
    /// @param text portable SQL with `?` for each value
    Statement(const Connection& connection, const char* text);
    ~Statement();
    Statement(const Statement&) = delete;
    Statement& operator=(const Statement&) = delete;

    /// Binds all values in order and runs it. Names, texts, counts, numbers, digests (as bytes), and optionals of them.
    template <class... Values>
    Statement& run(const Values&... values) {
        begin();
        (put(values), ...);
        execute();
        return *this;
    }
    /// For statements with a varying number of values: bind one after the other, then `runBound`.
    template <class Value>
    void bind(const Value& value) {
        if (m_bound == 0)
            begin();
        put(value);
    }
    void runBound() { execute(); }

    /// The next row, or false; `read` then starts at its first column again.
    bool next();
    /// The next column of the row. A text or number that is NULL reads as empty or zero; ask for an optional to tell.
    /// @throws StoreError where it is no such value
    template <class T>
    T read() {
        if constexpr (std::is_enum_v<T>)
            return static_cast<T>(within(m_column++, Kept<T>::first, Kept<T>::last));
        else
            return Column<T>::of(*this, m_column++);
    }
    /// The next column, when it is of no interest.
    void skip() { ++m_column; }
    /// The next column of the row, a text, into memory that is there already.
    void into(std::string& text);
    /// Of the first `columns` of the row, whatever was read of it.
    [[nodiscard]] std::uint64_t digest(int columns = std::numeric_limits<int>::max()) const;
    /// Lets go of the rows that were not read.
    void finish();
    /// That nothing can be made of the column that was read last: to be thrown by who asks more of a value than its
    /// type.
    [[nodiscard]] StoreError unread() const { return unread(m_column - 1); }

private:
    template <class T>
    struct Column;

    void prepare();
    void begin();
    void execute();
    void put(std::int64_t value);
    void put(std::uint64_t value) { put(static_cast<std::int64_t>(value)); }
    void put(int value) { put(std::int64_t{value}); }
    void put(bool value) { put(std::int64_t{value ? 1 : 0}); }
    void put(double value);
    void put(const std::string& value);
    void put(const QByteArray& value);
    template <class What>
    void put(const Name<What>& value) {
        put(value.text());
    }
    template <class What>
    void put(Count<What> value) {
        put(value.value());
    }
    template <class What>
    void put(Amount<What> value) {
        put(value.value());
    }
    void put(Celsius value) { put(value.value()); }
    template <class T>
    void put(const std::optional<T>& value) {
        if (value)
            put(*value);
        else
            putNull(isText<T>);
    }
    void putNull(bool ofText);

    [[nodiscard]] sqlite3_value* valueAt(int column) const {
        if (column >= m_valued)
            valueTo(column);
        return m_values[static_cast<std::size_t>(column)];
    }
    void valueTo(int column) const;
    [[nodiscard]] bool isNull(int column) const;
    [[nodiscard]] std::int64_t number(int column) const;
    [[nodiscard]] std::int64_t within(int column, std::int64_t first, std::int64_t last) const;
    [[nodiscard]] double real(int column) const;
    [[nodiscard]] std::string words(int column) const;
    [[nodiscard]] QByteArray bytes(int column) const;
    [[nodiscard]] std::vector<std::string> texts(int column) const;
    [[nodiscard]] StoreError unread(int column) const;
    [[nodiscard]] std::string columnName(int column) const;
    [[nodiscard]] std::string plainly(int column) const;

    const Connection& m_connection;
    QString m_text;
    sqlite3_stmt* m_sqlite = nullptr;
    bool m_rowWaits = false;                      ///< SQLite ran as far as the first row
    mutable std::vector<sqlite3_value*> m_values; ///< of the row: asked of SQLite once
    mutable int m_valued = 0;                     ///< of these, so many are of this row
    std::optional<QSqlQuery> m_query;             ///< PostgreSQL
    int m_reopened = 0;                           ///< of the connection when it was prepared
    QStringList m_places;                         ///< its names of the values
    int m_column = 0;
    int m_bound = 0;
};

template <>
struct Statement::Column<std::int64_t> {
    static std::int64_t of(const Statement& row, int column) { return row.number(column); }
};
/// A digest of a row: all its bits.
template <>
struct Statement::Column<std::uint64_t> {
    static std::uint64_t of(const Statement& row, int column) { return static_cast<std::uint64_t>(row.number(column)); }
};
template <>
struct Statement::Column<int> {
    static int of(const Statement& row, int column) {
        return static_cast<int>(row.within(column, std::numeric_limits<int>::min(), std::numeric_limits<int>::max()));
    }
};
template <>
struct Statement::Column<bool> {
    static bool of(const Statement& row, int column) { return row.within(column, 0, 1) != 0; }
};
template <>
struct Statement::Column<double> {
    static double of(const Statement& row, int column) { return row.real(column); }
};
template <>
struct Statement::Column<std::string> {
    static std::string of(const Statement& row, int column) { return row.words(column); }
};
/// A list of texts, as JSON.
template <>
struct Statement::Column<std::vector<std::string>> {
    static std::vector<std::string> of(const Statement& row, int column) { return row.texts(column); }
};
template <>
struct Statement::Column<CivilDate> {
    static CivilDate of(const Statement& row, int column);
};
template <>
struct Statement::Column<Moment> {
    static Moment of(const Statement& row, int column) {
        const auto most = Moment::endOf(CivilDate::last()).minutes();
        return Moment(row.within(column, -most, most));
    }
};
template <>
struct Statement::Column<QByteArray> {
    static QByteArray of(const Statement& row, int column) { return row.bytes(column); }
};
template <class What>
struct Statement::Column<Count<What>> {
    /// What a whole fleet flew stays below; sums of many such figures still fit.
    static constexpr std::int64_t most = 100'000 * largestCount;
    static Count<What> of(const Statement& row, int column) { return Count<What>(row.within(column, -most, most)); }
};
template <class What>
struct Statement::Column<Amount<What>> {
    static Amount<What> of(const Statement& row, int column) { return Amount<What>(row.real(column)); }
};
template <>
struct Statement::Column<Celsius> {
    static Celsius of(const Statement& row, int column) { return Celsius(row.real(column)); }
};
template <class What>
struct Statement::Column<Name<What>> {
    static Name<What> of(const Statement& row, int column) { return Name<What>(row.words(column)); }
};
template <class T>
struct Statement::Column<std::optional<T>> {
    static std::optional<T> of(const Statement& row, int column) {
        return row.isNull(column) ? std::nullopt : std::optional<T>(Column<T>::of(row, column));
    }
};

}
