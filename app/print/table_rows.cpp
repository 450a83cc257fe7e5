// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/table_rows.h"

#include "paper/paper_phrase.h"
#include "print/sheet.h"
#include "print/table_row.h"
#include "print/typeface.h"
#include "words/spoken.h"

#include <algorithm>

namespace crownring::print {

namespace {

constexpr double above = points(3), below = points(2);
constexpr int factsThatKeepTogether = 12;

Rule headRule() { return {points(0.9), ink}; }
Rule rowRule() { return {points(0.35), hairline}; }
Rule lastRule() { return {points(0.6), ink}; }

Qt::Alignment alignment(paper::Align align) {
    return align == paper::Align::Right    ? Qt::AlignRight
           : align == paper::Align::Centre ? Qt::AlignHCenter
                                           : Qt::AlignLeft;
}

TextStyle cellStyle(paper::Align align = paper::Align::Left, Face face = Face::Regular) {
    return {typeFont(tableSize, face), ink, alignment(align)};
}

TextStyle headStyle(paper::Align align) { return {typeFont(smallSize, Face::Bold), ink, alignment(align)}; }

TextStyle quietStyle(double size) { return {typeFont(size), softInk}; }

/// Adds the rows of one table: those that are too high in parts, the first kept to the head, the last two together.
class Rows {
public:
    Rows(Flow& flow, QSizeF body, PiecePtr head) : m_flow(flow), m_most(body.height() / 3), m_head(std::move(head)) {
        m_first = m_flow.size();
        if (m_head)
            m_flow.push_back({.piece = m_head, .before = above, .keepsToNext = true});
    }

    void add(const TableRow& row) {
        m_lastRow = m_flow.size();
        for (TableRow& part : row.split(m_most))
            m_flow.push_back({.piece = std::make_shared<TableRow>(std::move(part)),
                              .before = m_flow.size() == m_first ? above : 0,
                              .head = m_flow.size() > m_first + 1 ? m_head : nullptr});
    }

    void end() {
        if (m_lastRow > m_first)
            m_flow[m_lastRow - 1].keepsToNext = true;
    }

    /// Where that is less than a third of a page.
    void keepAll() {
        double height = 0;
        for (std::size_t slab = m_first; slab < m_flow.size(); ++slab)
            height += m_flow[slab].piece->height();
        if (height > m_most)
            return;
        for (std::size_t slab = m_first; slab + 1 < m_flow.size(); ++slab)
            m_flow[slab].keepsToNext = true;
    }

private:
    Flow& m_flow;
    double m_most;
    PiecePtr m_head;
    std::size_t m_first = 0, m_lastRow = 0;
};

/// A table with its columns in place.
class Grid {
public:
    Grid(const paper::Table& table, double width) : m_columns(table.columns) {
        m_columns.resize(paper::width(table));
        std::vector<double> shares;
        for (const paper::Column& column : m_columns)
            shares.push_back(std::max(column.share, 0.01));
        m_places = columnPlaces(shares, width);
    }

    PiecePtr head() const {
        std::vector<TextLines> cells;
        for (std::size_t column = 0; column < m_columns.size(); ++column)
            cells.push_back(
                setText(m_columns[column].title, m_places[column].width, headStyle(m_columns[column].align)));
        return std::make_shared<TableRow>(std::move(cells), m_places, headRule());
    }

    TableRow row(const std::vector<std::string>& texts, bool last) const {
        std::vector<TextLines> cells;
        for (std::size_t column = 0; column < m_columns.size(); ++column)
            cells.push_back(setText(column < texts.size() ? texts[column] : "", m_places[column].width,
                                    cellStyle(m_columns[column].align)));
        return {std::move(cells), m_places, last ? lastRule() : rowRule()};
    }

    const std::vector<ColumnPlace>& places() const { return m_places; }

private:
    std::vector<paper::Column> m_columns;
    std::vector<ColumnPlace> m_places;
};

}

void addTable(Flow& flow, const paper::Table& table, QSizeF body) {
    if (paper::width(table) == 0)
        return;
    const Grid grid(table, body.width());
    Rows rows(flow, body, grid.head());
    for (std::size_t row = 0; row < table.rows.size(); ++row)
        rows.add(grid.row(table.rows[row], row + 1 == table.rows.size()));
    rows.end();
    if (table.note.empty())
        return;
    flow.back().keepsToNext = true;
    double before = below;
    for (const TextLine& line : setText(table.note, body.width(), quietStyle(smallSize))) {
        flow.push_back({.piece = std::make_shared<TextLine>(line), .before = before});
        before = 0;
    }
}

void addChecks(Flow& flow, const paper::Checks& checks, QSizeF body) {
    using paper::Align;
    const words::Spoken in;
    const bool items = paper::namesItems(checks);
    std::vector<paper::Column> columns{{in.say(PaperPhrase::Number), Align::Right, 0.7},
                                       {in.say(PaperPhrase::Line), Align::Left, items ? 5.4 : 6.4},
                                       {in.say(PaperPhrase::Items), Align::Left, 2.4},
                                       {in.say(PaperPhrase::Source), Align::Left, 1.4},
                                       {in.say(PaperPhrase::Mark), Align::Left, 1.0},
                                       {in.say(PaperPhrase::Finding), Align::Left, items ? 5.6 : 7.0},
                                       {in.say(PaperPhrase::By), Align::Left, 0.9}};
    if (!items)
        columns.erase(columns.begin() + 2);
    const Grid grid({std::move(columns), {}, ""}, body.width());
    const std::vector<ColumnPlace>& places = grid.places();
    Rows rows(flow, body, grid.head());
    for (std::size_t number = 0; number < checks.lines.size(); ++number) {
        const paper::CheckLine& line = checks.lines[number];
        std::vector<TextLines> cells;
        const auto put = [&](const std::string& text, const TextStyle& style) {
            cells.push_back(setText(text, places[cells.size()].width, style));
        };
        put(std::to_string(number + 1), cellStyle(Align::Right));
        put(line.text, cellStyle());
        if (items)
            put(line.items, cellStyle());
        put(line.source, quietStyle(smallSize));
        put(checkMarkText(line.mark, in),
            cellStyle(Align::Left, line.mark == paper::CheckMark::Open ? Face::Bold : Face::Regular));
        put(line.finding, cellStyle());
        put(line.by, cellStyle());
        rows.add({std::move(cells), places, number + 1 == checks.lines.size() ? lastRule() : rowRule()});
    }
    rows.end();
}

void addFacts(Flow& flow, const paper::Facts& facts, QSizeF body) {
    const int columns = std::clamp(facts.columns, 1, 2), count = static_cast<int>(facts.facts.size());
    const int rowCount = (count + columns - 1) / columns;
    const double label = facts.labelShare > 0 ? facts.labelShare : columns == 1 ? 0.3 : 0.38;
    std::vector<double> shares;
    for (int column = 0; column < columns; ++column) {
        const double part = columns == 1 || facts.firstShare <= 0 ? 1
                            : column == 0                         ? 2 * facts.firstShare
                                                                  : 2 * (1 - facts.firstShare);
        shares.insert(shares.end(), {label, part - label});
    }
    const auto places = columnPlaces(shares, body.width());
    const double size = facts.small ? smallSize : tableSize, leading = facts.small ? 1.02 : 1.15;
    const TextStyle labelStyle{typeFont(size), softInk, Qt::AlignLeft, leading};
    const TextStyle valueStyle{typeFont(size), ink, Qt::AlignLeft, leading};
    Rows rows(flow, body, nullptr);
    for (int row = 0; row < rowCount; ++row) {
        std::vector<TextLines> cells;
        for (int number = row; number < rowCount * columns; number += rowCount) {
            const paper::Fact fact = number < count ? facts.facts[static_cast<std::size_t>(number)] : paper::Fact{};
            cells.push_back(setText(fact.label, places[cells.size()].width, labelStyle));
            cells.push_back(setText(fact.value, places[cells.size()].width, valueStyle));
        }
        rows.add({std::move(cells), places, rowRule()});
    }
    if (rowCount <= factsThatKeepTogether)
        rows.keepAll();
}

}
