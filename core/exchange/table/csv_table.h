// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Comma-separated values as RFC 4180 has them, with what the world makes of it: any of , ; tab | between the fields,
/// lines that end in LF, CR LF or CR, a byte order mark, a first line "sep=;".

#include "problem/problem.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace crownring {

struct CsvRow {
    int line = 0; ///< where it begins, from 1
    std::vector<std::string> fields;
};

struct CsvTable {
    char separator = ',';
    bool converted = false;       ///< the text was not UTF-8, see `PlainText`
    std::vector<CsvRow> rows;     ///< rows of blank fields are left out
    std::vector<Problem> badRows; ///< CsvBadRow: rows that break the quoting, not among `rows`
};

inline constexpr std::size_t mostCsvRows = 1'000'000;

/// Quotes hold separators, line ends and doubled quotes (RFC 4180 section 2, rules 5 to 7); a quote inside a field that
/// does not begin with one is a plain letter. A quote that never closes ends the reading: the lines after it belong to
/// it and are not guessed at. The separator is the one that is most frequent outside quotes in the first line that has
/// any of them; on a tie tab, then ; then | then the comma, which also stands inside numbers.
/// @return FileUnreadable as `plainText` says, or for more than `mostCsvRows` rows.
[[nodiscard]] Result<CsvTable> readCsv(std::string_view bytes, const std::string& file);

}
