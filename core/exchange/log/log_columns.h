// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Which column of a flight log is which. Inside the exchange room only.

#include "exchange/log/log_heading.h"
#include "exchange/table/csv_table.h"

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace crownring {

struct LogColumns {
    std::size_t headerRow = 0;        ///< its index in the table
    std::vector<LogHeading> headings; ///< one for each column of the file; `meaning` is what it is taken for
    std::map<LogColumn, std::size_t> at;
    std::vector<Phrase> doubts; ///< two columns of one meaning, neither surer by name

    [[nodiscard]] bool has(LogColumn column) const { return at.contains(column); }
    /// As many fields as headings; blank ones may follow.
    [[nodiscard]] bool fits(const CsvRow& row) const;
    /// The cell, without blanks at its ends; empty when there is no such column, or the row does not fit.
    [[nodiscard]] std::string_view cell(const CsvRow& row, LogColumn column) const;
    [[nodiscard]] const LogHeading* heading(LogColumn column) const;
    void forget(LogColumn column);
};

/// The header is the row, among the first twenty, with the most known names.
/// @param chosen what the user says, see `FlightLogChoices::columns`
[[nodiscard]] LogColumns findColumns(const CsvTable& table, const std::map<LogColumn, int>& chosen);

/// CsvNoHeader when what a flight needs has no column.
[[nodiscard]] std::optional<Problem> missingColumns(const LogColumns& columns, bool balloonGiven,
                                                    const std::string& file, int line);

}
