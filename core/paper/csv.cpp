// SPDX-License-Identifier: GPL-3.0-or-later
#include "paper/csv.h"

#include <string_view>

namespace crownring::paper {

namespace {

/// Would a spreadsheet take it for a formula (OWASP, CSV Injection)? A number with a sign is none.
bool isFormula(std::string_view text) {
    if (text.empty() || std::string_view("=+-@\t\r").find(text.front()) == std::string_view::npos)
        return false;
    const bool isSigned = text.front() == '-' || text.front() == '+';
    const auto rest = text.substr(1);
    return !isSigned || rest.empty() || rest.find_first_not_of("0123456789.") != std::string_view::npos;
}

/// @param alone the only field of its line: empty and without quotes it would be no line at all
std::string field(std::string_view given, bool alone) {
    const auto text = isFormula(given) ? "'" + std::string(given) : std::string(given);
    if (text.find_first_of(",\"\r\n") == std::string::npos && !(alone && text.empty()))
        return text;
    std::string quoted = "\"";
    for (const char letter : text) {
        if (letter == '"')
            quoted += '"';
        quoted += letter;
    }
    return quoted + '"';
}

}

std::string csv(const Table& table) {
    const std::size_t fields = width(table);
    std::string lines;
    const auto addLine = [&](const auto& cells, const auto& textOf) {
        for (std::size_t column = 0; column < fields; ++column) {
            const std::string_view text = column < cells.size() ? std::string_view(textOf(cells[column])) : "";
            lines += field(text, fields == 1) + (column + 1 == fields ? "\r\n" : ",");
        }
    };
    addLine(table.columns, [](const Column& column) -> std::string_view { return column.title; });
    for (const auto& row : table.rows)
        addLine(row, [](const std::string& cell) -> std::string_view { return cell; });
    return lines;
}

}
