// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/map_figure.h"

#include "print/sheet.h"
#include "print/typeface.h"
#include "words/spoken.h"

#include <QtCore/QCoreApplication>
#include <QtGui/QFontMetricsF>
#include <QtGui/QPainter>

#include <algorithm>

namespace crownring::print {

namespace {

constexpr double gutter = millimetres(11);    ///< left of the grid: row numbers, crown and mouth
constexpr double numberBand = millimetres(5); ///< above and below the grid: gore numbers
constexpr double underCaption = millimetres(1.5), signBand = millimetres(8.5);
constexpr double mostRow = millimetres(11);
constexpr double biggest = 8.5, smallest = 4.5; ///< type in a panel, in points
constexpr double legible = 6; ///< below this readings are written up their panels, where they are larger so

/// Light enough under black figures.
QColor shaded(double shade) {
    const double part = std::clamp(shade, 0.0, 1.0) * 0.5;
    const auto mixed = [&](int tone) { return qRound(255 - part * (255 - tone)); };
    return {mixed(accent.red()), mixed(accent.green()), mixed(accent.blue())};
}

QString reading(const paper::Panel& panel) { return QString::fromStdString(readingText(panel)).remove(QChar::Nbsp); }

Face faceOf(const paper::Panel& panel) {
    return panel.verdict == paper::PanelVerdict::Failed ? Face::Bold : Face::Regular;
}

/// The largest size of type, in points, in which the words fit.
double fittingSize(const QString& words, Face face, double width, double height) {
    const QFontMetricsF metrics(typeFont(biggest, face));
    const double across = (width - points(3.5)) / std::max(metrics.horizontalAdvance(words), 1.0);
    return biggest * std::min({1.0, across, (height - points(2)) / metrics.height()});
}

void write(QPainter& painter, const QRectF& place, const QString& words, const QFont& font, bool upright = false) {
    painter.save();
    painter.setFont(font);
    painter.translate(place.center());
    if (upright)
        painter.rotate(-90);
    const QSizeF size = upright ? place.size().transposed() : place.size();
    painter.drawText(QRectF(QPointF(-size.width() / 2, -size.height() / 2), size), Qt::AlignCenter | Qt::TextDontClip,
                     words);
    painter.restore();
}

TextLines footOf(const paper::EnvelopeMapFigure& map, double width) {
    TextLines foot;
    const auto add = [&](const std::string& line) {
        for (const TextLine& set : setText(line, width, {typeFont(smallSize), softInk}))
            foot.push_back(set);
    };
    for (const std::string& line : map.legend)
        add(line);
    for (const paper::Panel& panel : map.panels)
        if (!isOnMap(map, panel))
            add(QCoreApplication::translate("print", "Not on this map: gore %1, row %2: %3 %4")
                    .arg(panel.gore)
                    .arg(panel.row)
                    .arg(reading(panel), QString::fromStdString(verdictText(panel.verdict, words::Spoken())))
                    .trimmed()
                    .toStdString());
    return foot;
}

}

MapFigure::MapFigure(paper::EnvelopeMapFigure map, double width, double most) : m_map(std::move(map)), m_width(width) {
    if (!m_map.caption.empty())
        m_caption = setText(m_map.caption, width, {typeFont(bodySize, Face::Bold), ink});
    m_foot = footOf(m_map, width);
    const double rest = heightOf(m_caption) + underCaption + 2 * numberBand + signBand + heightOf(m_foot);
    m_rowHeight = std::clamp((most - rest) / std::max(m_map.rows, 1), millimetres(3), mostRow);
    fitReadings((width - gutter) / std::max(m_map.gores, 1));
}

void MapFigure::fitReadings(double panelWidth) {
    double along = biggest, up = biggest;
    for (const paper::Panel& panel : m_map.panels) {
        along = std::min(along, fittingSize(reading(panel), faceOf(panel), panelWidth, m_rowHeight));
        up = std::min(up, fittingSize(reading(panel), faceOf(panel), m_rowHeight, panelWidth));
    }
    m_upright = along < legible && up > along;
    m_readingSize = std::max(smallest, m_upright ? up : along);
}

double MapFigure::height() const {
    return heightOf(m_caption) + underCaption + 2 * numberBand + m_map.rows * m_rowHeight + signBand + heightOf(m_foot);
}

QRectF MapFigure::cell(const QRectF& grid, int gore, int row) const {
    const double width = grid.width() / std::max(m_map.gores, 1);
    return {grid.left() + (gore - 1) * width, grid.bottom() - row * m_rowHeight, width, m_rowHeight};
}

void MapFigure::draw(QPainter& painter, QPointF topLeft) const {
    print::draw(painter, topLeft, m_caption);
    const double top = heightOf(m_caption) + underCaption + numberBand;
    const QRectF grid(topLeft + QPointF(gutter, top), QSizeF(m_width - gutter, m_map.rows * m_rowHeight));
    for (const paper::Panel& panel : m_map.panels)
        if (isOnMap(m_map, panel))
            painter.fillRect(cell(grid, panel.gore, panel.row), shaded(panel.shade));
    drawGrid(painter, grid);
    drawNumbers(painter, grid);
    for (const paper::Panel& panel : m_map.panels)
        if (isOnMap(m_map, panel))
            drawPanel(painter, cell(grid, panel.gore, panel.row), panel, m_upright);
    drawSigns(painter, {topLeft.x(), grid.bottom() + numberBand + millimetres(1.5)});
    print::draw(painter, {topLeft.x(), grid.bottom() + numberBand + signBand}, m_foot);
}

void MapFigure::drawGrid(QPainter& painter, const QRectF& grid) const {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(hairline, points(0.35)));
    for (int gore = 2; gore <= m_map.gores; ++gore) {
        const double x = cell(grid, gore, 1).left();
        painter.drawLine(QPointF(x, grid.top()), QPointF(x, grid.bottom()));
    }
    for (int row = 1; row < m_map.rows; ++row) {
        const double y = cell(grid, 1, row).top();
        painter.drawLine(QPointF(grid.left(), y), QPointF(grid.right(), y));
    }
    painter.setPen(QPen(ink, points(0.75)));
    painter.drawRect(grid);
}

void MapFigure::drawNumbers(QPainter& painter, const QRectF& grid) const {
    painter.setPen(softInk);
    const double panelWidth = cell(grid, 1, 1).width();
    const QString widest = QString::number(m_map.gores);
    const QFont gores =
        typeFont(std::max(smallest, std::min(7.5, fittingSize(widest, Face::Regular, panelWidth, numberBand))));
    for (int gore = 1; gore <= m_map.gores; ++gore) {
        const double left = cell(grid, gore, 1).left();
        for (const double top : {grid.top() - numberBand, grid.bottom()})
            write(painter, {left, top, panelWidth, numberBand}, QString::number(gore), gores);
    }
    for (int row = 1; row <= m_map.rows; ++row)
        write(painter, {grid.left() - millimetres(6), cell(grid, 1, row).top(), millimetres(5.5), m_rowHeight},
              QString::number(row), typeFont(7.5));
    painter.setFont(typeFont(6.5));
    const QRectF side(grid.left() - gutter, grid.top() - numberBand, gutter - millimetres(1), numberBand);
    painter.drawText(side, Qt::AlignLeft | Qt::AlignVCenter, QCoreApplication::translate("print", "crown"));
    painter.drawText(side.translated(0, grid.height() + numberBand), Qt::AlignLeft | Qt::AlignVCenter,
                     QCoreApplication::translate("print", "mouth"));
}

void MapFigure::drawPanel(QPainter& painter, const QRectF& place, const paper::Panel& panel, bool upright) const {
    const bool failed = panel.verdict == paper::PanelVerdict::Failed, read = !panel.text.empty();
    const double frame = points(failed ? 1.5 : read ? 0.5 : 0.35);
    const QRectF edge = place.adjusted(frame / 2, frame / 2, -frame / 2, -frame / 2);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(read ? ink : hairline, frame, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    painter.drawRect(edge);
    if (failed) {
        // Struck at the corners only: the figure in the middle stays legible.
        const double length = std::min(edge.width(), edge.height()) * 0.22;
        const QPointF down(length, length), up(length, -length);
        painter.setPen(QPen(ink, points(1)));
        painter.drawLine(edge.topLeft(), edge.topLeft() + down);
        painter.drawLine(edge.bottomRight(), edge.bottomRight() - down);
        painter.drawLine(edge.bottomLeft(), edge.bottomLeft() + up);
        painter.drawLine(edge.topRight(), edge.topRight() - up);
    }
    painter.setPen(ink);
    if (read)
        write(painter, place, reading(panel), typeFont(m_readingSize, faceOf(panel)), upright);
}

void MapFigure::drawSigns(QPainter& painter, QPointF place) const {
    using paper::PanelVerdict;
    const auto sign = [&](const paper::Panel& panel, const QString& words) {
        const QRectF box(place, QSizeF(millimetres(9), millimetres(5)));
        drawPanel(painter, box, panel, false);
        painter.setPen(ink);
        painter.setFont(typeFont(smallSize));
        const double width = QFontMetricsF(painter.font()).horizontalAdvance(words);
        const double left = box.right() + millimetres(1.5);
        painter.drawText(QRectF(left, box.top(), width + 1, box.height()), Qt::AlignVCenter | Qt::TextDontClip, words);
        place.setX(left + width + millimetres(6));
    };
    sign({1, 1, "n", PanelVerdict::Passed, false, 0}, QCoreApplication::translate("print", "measured"));
    sign({1, 1, "n", PanelVerdict::Passed, true, 0}, QCoreApplication::translate("print", "held at this load"));
    sign({1, 1, "n", PanelVerdict::Failed, false, 0}, QCoreApplication::translate("print", "failed"));
    sign({1, 1, "", PanelVerdict::Unjudged, false, 0}, QCoreApplication::translate("print", "not read"));
}

}
