// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/verify/table_rows.h"

#include "record/chain/chain.h"

#include <QtCore/QRegularExpression>
#include <QtSql/QSqlError>
#include <QtSql/QSqlQuery>
#include <QtSql/QSqlRecord>

#include <algorithm>
#include <cstring>

namespace crownring {

namespace {

/// A column that holds the number of a name.
bool isName(const QString& column) {
    return column.endsWith(QStringLiteral("_no")) && column != QStringLiteral("entry_no");
}

bool isEntry(const QString& column) {
    return column == QStringLiteral("entry_id") || column == QStringLiteral("from_id") ||
           column == QStringLiteral("root_id");
}

std::string textOf(const QVariant& value, bool name, const NameTexts& names) {
    if (value.isNull())
        return "null";
    if (name) {
        const auto known = names.find(value.toLongLong());
        return known == names.end() ? "? " + value.toString().toStdString() : known->second;
    }
    if (value.typeId() == QMetaType::Bool)
        return value.toBool() ? "1" : "0";
    return value.toString().toStdString();
}

/// Gives each row to `take`.
template <class Take>
void eachRow(const Connection& connection, const std::string& table, const NameTexts& names, const Take& take) {
    QSqlQuery query(connection.database());
    query.setForwardOnly(true);
    const auto statement = QStringLiteral("SELECT * FROM ") + QString::fromStdString(table);
    if (!query.exec(statement))
        throw errorOf(query.lastError(), statement);
    const auto record = query.record();
    std::vector<int> order(static_cast<std::size_t>(record.count()));
    for (int column = 0; column < record.count(); ++column)
        order[static_cast<std::size_t>(column)] = column;
    std::ranges::sort(order, {}, [&](int column) { return record.fieldName(column); });
    ProjectedRow row;
    while (query.next()) {
        row = {};
        for (const int column : order) {
            const auto name = record.fieldName(column);
            auto text = textOf(query.value(column), isName(name), names);
            if (isEntry(name) && row.entry.empty())
                row.entry = text;
            row.text +=
                (row.text.empty() ? "" : " ") + name.toStdString() + "=" + std::to_string(text.size()) + ":" + text;
        }
        take(row);
    }
    if (query.lastError().isValid())
        throw errorOf(query.lastError(), statement);
}

}

NameTexts nameTexts(const Connection& connection) {
    NameTexts names;
    QSqlQuery query(connection.database());
    query.setForwardOnly(true);
    const auto statement = QStringLiteral("SELECT name_no, sort, text FROM name");
    if (!query.exec(statement))
        throw errorOf(query.lastError(), statement);
    while (query.next())
        names.emplace(query.value(0).toLongLong(),
                      query.value(1).toString().toStdString() + "/" + query.value(2).toString().toStdString());
    if (query.lastError().isValid())
        throw errorOf(query.lastError(), statement);
    return names;
}

std::string plainly(const ProjectedRow& row) {
    std::string said;
    std::string_view rest = row.text;
    while (!rest.empty()) {
        const auto equals = rest.find('=');
        const auto colon = rest.find(':', equals);
        auto column = QString::fromUtf8(rest.data(), static_cast<qsizetype>(equals));
        const auto length = std::stoul(std::string(rest.substr(equals + 1, colon - equals - 1)));
        auto value = rest.substr(colon + 1, length);
        if (isName(column))
            value.remove_prefix(std::min(value.find('/') + 1, value.size()));
        column.remove(QRegularExpression(QStringLiteral("_(no|id)$"))).replace(u'_', u' ');
        if (!value.empty() && value != "null")
            said += (said.empty() ? "" : ", ") + column.toStdString() + " " + std::string(value);
        rest.remove_prefix(std::min(colon + 1 + length + 1, rest.size()));
    }
    return said;
}

TableDigest digestOf(const Connection& connection, const std::string& table, const NameTexts& names) {
    TableDigest digest;
    eachRow(connection, table, names, [&](const ProjectedRow& row) {
        const auto hash = sha256(row.text);
        std::array<std::uint64_t, 2> words{};
        std::memcpy(words.data(), hash.data(), sizeof words);
        ++digest.rows;
        digest.sum[0] += words[0];
        digest.sum[1] += words[1];
    });
    return digest;
}

std::vector<ProjectedRow> rowsOf(const Connection& connection, const std::string& table, const NameTexts& names) {
    std::vector<ProjectedRow> rows;
    eachRow(connection, table, names, [&](const ProjectedRow& row) { rows.push_back(row); });
    std::ranges::sort(rows);
    return rows;
}

}
