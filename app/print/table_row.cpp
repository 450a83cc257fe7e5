// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/table_row.h"

#include "print/sheet.h"

#include <QtGui/QPainter>

#include <algorithm>
#include <numeric>

namespace crownring::print {

namespace {

constexpr double padding = points(1.8); ///< above and below the text
constexpr double betweenColumns = millimetres(2.6);

}

std::vector<ColumnPlace> columnPlaces(const std::vector<double>& shares, double width) {
    const double all = std::accumulate(shares.begin(), shares.end(), 0.0);
    const double room = width - betweenColumns * static_cast<double>(shares.size() - 1);
    std::vector<ColumnPlace> places;
    double left = 0;
    for (const double share : shares) {
        places.push_back({left, room * share / all});
        left += places.back().width + betweenColumns;
    }
    return places;
}

TableRow::TableRow(std::vector<TextLines> cells, std::vector<ColumnPlace> places, Rule under)
    : m_cells(std::move(cells)), m_places(std::move(places)), m_under(std::move(under)) {}

double TableRow::textHeight() const {
    double height = 0;
    for (const TextLines& cell : m_cells)
        height = std::max(height, heightOf(cell));
    return height;
}

double TableRow::height() const { return textHeight() + 2 * padding; }

void TableRow::draw(QPainter& painter, QPointF topLeft) const {
    for (std::size_t column = 0; column < m_cells.size(); ++column)
        print::draw(painter, topLeft + QPointF(m_places[column].left, padding), m_cells[column]);
    if (m_under.weight <= 0)
        return;
    const QPointF foot = topLeft + QPointF(0, height());
    painter.setPen(QPen(m_under.colour, m_under.weight, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(foot, foot + QPointF(m_places.back().left + m_places.back().width, 0));
}

std::vector<TableRow> TableRow::split(double most) const {
    std::vector<TableRow> parts;
    std::vector<TextLines> rest = m_cells;
    const auto done = [&] {
        return std::all_of(rest.begin(), rest.end(), [](const TextLines& cell) { return cell.empty(); });
    };
    do {
        std::vector<TextLines> part(rest.size());
        for (std::size_t column = 0; column < rest.size(); ++column) {
            double height = 2 * padding;
            auto line = rest[column].begin();
            for (; line != rest[column].end() && (part[column].empty() || height + line->height() <= most); ++line) {
                height += line->height();
                part[column].push_back(*line);
            }
            rest[column].erase(rest[column].begin(), line);
        }
        parts.emplace_back(std::move(part), m_places, done() ? m_under : Rule{});
    } while (!done());
    return parts;
}

}
