// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The reference cases of tests/reference: what was put in, what is to come out, and how near.

#include <QtCore/QFile>
#include <QtCore/QStringList>

#include <cmath>
#include <limits>
#include <map>
#include <stdexcept>
#include <string>
#include <vector>

namespace crownring::reference {

struct Expected {
    std::string quantity;
    double value = 0;
    double relative = 0;
    double absolute = 0;

    [[nodiscard]] bool holds(double found) const {
        return std::abs(found - value) <= absolute + relative * std::abs(value);
    }
};

inline std::vector<QStringList> rowsOf(const std::string& file) {
    QFile source(QStringLiteral(CROWNRING_SOURCE_DIR "/tests/reference/") + QString::fromStdString(file));
    if (!source.open(QIODevice::ReadOnly | QIODevice::Text))
        throw std::runtime_error("no reference file " + file);
    std::vector<QStringList> rows;
    for (const auto& line : QString::fromUtf8(source.readAll()).split('\n', Qt::SkipEmptyParts))
        rows.push_back(line.split(','));
    return rows;
}

/// Everything that is expected of a case; the note at the end of a row may hold commas and is not read.
inline const std::vector<Expected>& expectedOf(const std::string& name) {
    static const auto all = [] {
        std::map<std::string, std::vector<Expected>> cases;
        const auto rows = rowsOf("expected.csv");
        for (std::size_t row = 1; row < rows.size(); ++row)
            cases[rows[row][0].toStdString()].push_back({rows[row][1].toStdString(), rows[row][2].toDouble(),
                                                         rows[row][3].toDouble(), rows[row][4].toDouble()});
        return cases;
    }();
    return all.at(name);
}

inline const Expected& expected(const std::string& name, const std::string& quantity) {
    for (const auto& one : expectedOf(name))
        if (one.quantity == quantity)
            return one;
    throw std::out_of_range(name + " has no " + quantity);
}

/// What is wrong with the quantities found for a case; empty when all that is expected was found, and near enough.
inline QString mismatches(const std::string& name, const std::map<std::string, double>& found) {
    QString wrong;
    for (const auto& one : expectedOf(name)) {
        const auto at = found.find(one.quantity);
        if (at == found.end())
            wrong += QStringLiteral("%1: not found\n").arg(QString::fromStdString(one.quantity));
        else if (!one.holds(at->second))
            wrong += QStringLiteral("%1: %2 for %3\n")
                         .arg(QString::fromStdString(one.quantity))
                         .arg(at->second, 0, 'g', 16)
                         .arg(one.value, 0, 'g', 16);
    }
    return wrong;
}

/// Columns by name; what is no number (`NA`) is NaN.
using Table = std::map<std::string, std::vector<double>>;

inline Table table(const std::string& file) {
    const auto rows = rowsOf("data/" + file);
    Table columns;
    for (qsizetype column = 0; column < rows.at(0).size(); ++column) {
        auto& values = columns[rows[0][column].toStdString()];
        for (std::size_t row = 1; row < rows.size(); ++row) {
            bool isNumber = false;
            const double value = rows[row].at(column).toDouble(&isNumber);
            values.push_back(isNumber ? value : std::numeric_limits<double>::quiet_NaN());
        }
    }
    return columns;
}

}
