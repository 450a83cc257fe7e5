// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A prepared statement with typed binding and reading; what the database refuses is thrown as `StoreError`.

#include <QtCore/QStringList>
#include <QtSql/QSqlQuery>
#include <optional>
#include <string>
#include <string_view>

#include "measure/count.h"
#include "measure/name.h"
#include "store/connection.h"

namespace crownring {

class Statement {
public:
    /// @param text portable SQL with `?` for each value
    Statement(const Connection& connection, const char* text);

    /// Binds all values in order and runs it. Names, texts, counts, numbers, digests (as bytes), and optionals of them.
    template <class... Values>
    Statement& run(const Values&... values) {
        qsizetype place = 0;
        (m_query.bindValue(m_places[place++], variant(values)), ...);
        execute();
        m_column = 0;
        return *this;
    }
    /// For statements with a varying number of values: bind one after the other, then `runBound`.
    template <class Value>
    void bind(const Value& value) {
        m_query.bindValue(m_places[m_bound++], variant(value));
    }
    void runBound() {
        m_bound = 0;
        m_column = 0;
        execute();
    }
    /// The next row, or false; `read` then starts at its first column again.
    bool next() {
        m_column = 0;
        return m_query.next();
    }
    /// The next column of the row.
    template <class T>
    T read() {
        return convert<T>(m_query.value(m_column++));
    }
    void finish() { m_query.finish(); }
    [[nodiscard]] std::int64_t changed() const { return m_query.numRowsAffected(); }

private:
    static QVariant variant(std::int64_t value) { return QVariant(qlonglong{value}); }
    static QVariant variant(int value) { return QVariant(qlonglong{value}); }
    static QVariant variant(bool value) { return QVariant(qlonglong{value ? 1 : 0}); }
    static QVariant variant(const std::string& value) { return QVariant(QString::fromStdString(value)); }
    static QVariant variant(const QByteArray& value) { return QVariant(value); }
    template <class What>
    static QVariant variant(const Name<What>& value) {
        return variant(value.text());
    }
    template <class What>
    static QVariant variant(Count<What> value) {
        return variant(value.value());
    }
    template <class T>
    static QVariant variant(const std::optional<T>& value) {
        return value ? variant(*value) : QVariant(variant(T{}).metaType());
    }

    template <class T>
    static T convert(const QVariant& value) {
        if constexpr (std::is_same_v<T, std::int64_t>)
            return value.toLongLong();
        else if constexpr (std::is_same_v<T, int>)
            return static_cast<int>(value.toLongLong());
        else if constexpr (std::is_same_v<T, bool>)
            return value.toLongLong() != 0;
        else if constexpr (std::is_same_v<T, std::string>)
            return value.toString().toStdString();
        else if constexpr (std::is_same_v<T, QByteArray>)
            return value.toByteArray();
        else
            return Convert<T>::from(value);
    }
    template <class T>
    struct Convert;

    void execute();

    QSqlQuery m_query;
    QString m_text;
    QStringList m_places; ///< names of the values: Qt makes such a name anew at every bind by position
    int m_column = 0;
    qsizetype m_bound = 0;
};

template <class What>
struct Statement::Convert<Count<What>> {
    static Count<What> from(const QVariant& value) { return Count<What>(value.toLongLong()); }
};
template <class What>
struct Statement::Convert<Name<What>> {
    static Name<What> from(const QVariant& value) { return Name<What>(value.toString().toStdString()); }
};
template <class T>
struct Statement::Convert<std::optional<T>> {
    static std::optional<T> from(const QVariant& value) {
        return value.isNull() ? std::nullopt : std::optional<T>(convert<T>(value));
    }
};

}
