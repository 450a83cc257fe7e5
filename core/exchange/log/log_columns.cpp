// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/log/log_columns.h"

#include "exchange/log/log_phrase.h"
#include "exchange/text/plain_text.h"
#include "problem/faults/table_fault.h"

#include <algorithm>
#include <set>

namespace crownring {

namespace {

std::vector<LogHeading> headingsOf(const CsvRow& row) {
    std::vector<LogHeading> headings;
    for (const auto& field : row.fields)
        headings.push_back(headingFrom(field));
    return headings;
}

std::size_t differentMeanings(const std::vector<LogHeading>& headings) {
    std::set<LogColumn> meanings;
    for (const auto& heading : headings)
        if (heading.meaning)
            meanings.insert(*heading.meaning);
    return meanings.size();
}

std::size_t headerRow(const CsvTable& table) {
    constexpr std::size_t rowsSearched = 20;
    std::size_t best = 0;
    std::size_t most = 0;
    for (std::size_t row = 0; row < std::min(table.rows.size(), rowsSearched); ++row) {
        const auto meanings = differentMeanings(headingsOf(table.rows[row]));
        if (meanings > most) {
            most = meanings;
            best = row;
        }
    }
    return best;
}

std::vector<std::size_t> columnsMeaning(const std::vector<LogHeading>& headings, LogColumn meaning) {
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < headings.size(); ++i)
        if (headings[i].meaning == meaning)
            found.push_back(i);
    return found;
}

/// Takes one column for `meaning`: the only one, or the only one that is sure by name. Two columns of hours and minutes
/// are never chosen between: they may belong together.
void takeOne(LogColumns& columns, LogColumn meaning) {
    auto found = columnsMeaning(columns.headings, meaning);
    auto sure = found;
    std::erase_if(sure, [&](std::size_t i) { return !columns.headings[i].sure; });
    if (found.size() > 1 && sure.size() == 1 && meaning != LogColumn::Duration)
        found = sure;
    if (found.empty())
        return;
    if (found.size() > 1) {
        const auto& headings = columns.headings;
        columns.doubts.push_back(
            {LogPhrase::EitherColumn, {headings[found[0]].text, headings[found[1]].text, termOf(meaning)}});
    }
    columns.at[meaning] = found.front();
    for (std::size_t i = 0; i < columns.headings.size(); ++i)
        if (columns.headings[i].meaning == meaning && i != found.front())
            columns.headings[i].meaning.reset();
}

void choose(LogColumns& columns, const std::map<LogColumn, int>& chosen) {
    for (const auto& [meaning, number] : chosen)
        for (auto& heading : columns.headings)
            if (heading.meaning == meaning)
                heading.meaning.reset();
    for (const auto& [meaning, number] : chosen)
        if (number >= 0 && static_cast<std::size_t>(number) < columns.headings.size())
            columns.headings[static_cast<std::size_t>(number)].meaning = meaning;
}

Listed quotedHeadings(const std::vector<LogHeading>& headings) {
    constexpr std::size_t mostShown = 20;
    Listed all;
    for (std::size_t i = 0; i < std::min(headings.size(), mostShown); ++i)
        all.list.emplace_back("'" + headings[i].text + "'");
    if (headings.size() > mostShown)
        all.list.emplace_back("…");
    return all;
}

}

bool LogColumns::fits(const CsvRow& row) const {
    auto fields = row.fields.size();
    while (fields > headings.size() && trimmed(row.fields[fields - 1]).empty())
        --fields;
    return fields == headings.size();
}

std::string_view LogColumns::cell(const CsvRow& row, LogColumn column) const {
    const auto found = at.find(column);
    return found == at.end() || !fits(row) ? std::string_view{} : trimmed(row.fields[found->second]);
}

const LogHeading* LogColumns::heading(LogColumn column) const {
    const auto found = at.find(column);
    return found == at.end() ? nullptr : &headings[found->second];
}

void LogColumns::forget(LogColumn column) {
    headings[at.at(column)].meaning.reset();
    at.erase(column);
}

LogColumns findColumns(const CsvTable& table, const std::map<LogColumn, int>& chosen) {
    LogColumns columns;
    if (table.rows.empty())
        return columns;
    columns.headerRow = headerRow(table);
    columns.headings = headingsOf(table.rows[columns.headerRow]);
    choose(columns, chosen);
    for (const auto meaning : logColumns())
        takeOne(columns, meaning);
    return columns;
}

std::optional<Problem> missingColumns(const LogColumns& columns, bool balloonGiven, const std::string& file, int line) {
    Listed missing{{}, Listed::Joined::And};
    const auto miss = [&](LogPhrase what) { missing.list.emplace_back(Phrase{what, {}}); };
    if (!columns.has(LogColumn::Date))
        miss(LogPhrase::ADate);
    if (!columns.has(LogColumn::Balloon) && !balloonGiven)
        miss(LogPhrase::ABalloon);
    if (!columns.has(LogColumn::Duration) && !(columns.has(LogColumn::TakeOff) && columns.has(LogColumn::Landing)))
        miss(LogPhrase::ADuration);
    if (missing.list.empty())
        return std::nullopt;
    const Where where{file, line, {}};
    if (columns.headings.empty())
        return Problem{TableFault::EmptyLog, {understoodHeadings()}, where};
    return Problem{TableFault::ColumnsMissing,
                   {understoodHeadings(), quotedHeadings(columns.headings), std::move(missing)},
                   where};
}

}
