// SPDX-License-Identifier: GPL-3.0-or-later
#include "paper/csv.h"

#include <string_view>

namespace crownring::paper {

namespace {

/// @param alone the only field of its line: empty and without quotes it would be no line at all
std::string field(std::string_view text, bool alone) {
    if (text.find_first_of(",\"\r\n") == std::string_view::npos && !(alone && text.empty()))
        return std::string(text);
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
