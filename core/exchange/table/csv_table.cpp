// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/table/csv_table.h"

#include "exchange/text/plain_text.h"
#include "problem/faults/table_fault.h"

#include <algorithm>
#include <array>
#include <optional>

namespace crownring {

namespace {

constexpr std::array separators = {'\t', ';', '|', ','};

/// "sep=;" alone on the first line names the separator, as some spreadsheets write it.
std::optional<char> statedSeparator(std::string_view text) {
    if (text.size() < 5 || !text.starts_with("sep="))
        return std::nullopt;
    const bool alone = text.size() == 5 || text[5] == '\r' || text[5] == '\n';
    const bool known = std::find(separators.begin(), separators.end(), text[4]) != separators.end();
    return alone && known ? std::optional<char>(text[4]) : std::nullopt;
}

char recognisedSeparator(std::string_view text) {
    std::array<std::size_t, separators.size()> found{};
    bool quoted = false;
    for (const char c : text) {
        if (c == '"')
            quoted = !quoted;
        const auto* at = std::find(separators.begin(), separators.end(), c);
        if (!quoted && at != separators.end())
            ++found[static_cast<std::size_t>(at - separators.begin())];
        const auto* most = std::max_element(found.begin(), found.end());
        if (!quoted && (c == '\n' || c == '\r') && *most > 0)
            break;
    }
    const auto* most = std::max_element(found.begin(), found.end());
    return *most == 0 ? ',' : separators[static_cast<std::size_t>(most - found.begin())];
}

class Reader {
public:
    Reader(std::string_view text, char separator, const std::string& file)
        : m_text(text), m_separator(separator), m_file(file) {}

    [[nodiscard]] bool atEnd() const { return m_at >= m_text.size(); }

    /// Reads one row into the table: a row, a bad row, or nothing when it is blank.
    void readRow(CsvTable& table) {
        CsvRow row{m_line, {}};
        std::optional<Problem> bad;
        do {
            row.fields.emplace_back();
            if (auto wrong = readField(row.fields.back()); wrong && !bad)
                bad = std::move(wrong);
        } while (take(m_separator));
        takeLineEnd();
        const auto blank = [](const std::string& field) { return trimmed(field).empty(); };
        if (bad)
            table.badRows.push_back(std::move(*bad));
        else if (!std::all_of(row.fields.begin(), row.fields.end(), blank))
            table.rows.push_back(std::move(row));
    }

private:
    [[nodiscard]] bool atFieldEnd() const {
        return atEnd() || m_text[m_at] == m_separator || m_text[m_at] == '\n' || m_text[m_at] == '\r';
    }
    bool take(char c) {
        if (atEnd() || m_text[m_at] != c)
            return false;
        ++m_at;
        return true;
    }
    void takeLineEnd() {
        const bool carriageReturn = take('\r');
        if (take('\n') || carriageReturn)
            ++m_line;
    }
    void takePlain(std::string& field) {
        const auto from = m_at;
        while (!atFieldEnd())
            ++m_at;
        field.append(m_text.substr(from, m_at - from));
    }

    std::optional<Problem> readField(std::string& field) {
        if (!take('"')) {
            takePlain(field);
            return std::nullopt;
        }
        const auto openedOn = m_line;
        if (!takeQuoted(field))
            return refusal(openedOn, TableFault::QuoteNeverCloses);
        if (atFieldEnd())
            return std::nullopt;
        takePlain(field);
        return refusal(openedOn, TableFault::TextAfterQuote);
    }

    /// Up to and with the closing quote; false when there is none.
    bool takeQuoted(std::string& field) {
        while (!atEnd()) {
            const char c = m_text[m_at++];
            if (c == '"' && !take('"'))
                return true;
            field.push_back(c);
            if (c == '\n' || (c == '\r' && (atEnd() || m_text[m_at] != '\n')))
                ++m_line;
        }
        return false;
    }

    std::optional<Problem> refusal(int line, TableFault fault) const { return Problem{fault, {}, {m_file, line, {}}}; }

    std::string_view m_text;
    char m_separator;
    const std::string& m_file;
    std::size_t m_at = 0;
    int m_line = 1;
};

}

Result<CsvTable> readCsv(std::string_view bytes, const std::string& file) {
    const auto text = plainText(bytes, file);
    if (!text)
        return tl::unexpected(text.error());
    const auto stated = statedSeparator(text->utf8);
    CsvTable table;
    table.separator = stated.value_or(recognisedSeparator(text->utf8));
    table.converted = text->converted;
    Reader reader(text->utf8, table.separator, file);
    while (!reader.atEnd()) {
        if (table.rows.size() + table.badRows.size() >= mostCsvRows)
            return problem(TableFault::TooManyRows, {}, {file, 0, {}});
        reader.readRow(table);
    }
    if (stated && !table.rows.empty() && table.rows.front().line == 1)
        table.rows.erase(table.rows.begin());
    return table;
}

}
