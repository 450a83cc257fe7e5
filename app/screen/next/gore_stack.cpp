// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/gore_stack.h"

#include "screen/parts/gore_sign.h"

#include <QPainter>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace crownring::screen {

namespace {

constexpr double gap = 1;

int fit(double length, double sign) { return std::max(1, static_cast<int>((length + gap) / (sign + gap))); }

int sum(const QList<int>& numbers) { return std::accumulate(numbers.begin(), numbers.end(), 0); }

}

GoreStack::GoreStack(QQuickItem* parent) : QQuickPaintedItem(parent) { setAntialiasing(true); }

QList<int> GoreStack::thinned(const QList<int>& tally, int room) {
    const int total = sum(tally);
    if (total <= room)
        return tally;
    QList<int> signs;
    int given = 0;
    for (const int n : tally) {
        const int share = n == 0 ? 0 : std::max(1, n * room / total);
        const int taken = std::max(0, std::min(share, room - given));
        signs += taken;
        given += taken;
    }
    return signs;
}

double GoreStack::signWidth() const {
    // Two side by side in a week, within what still shows its shape.
    return std::clamp(std::floor(m_measureWidth / 2) - gap, 8.0, 12.0);
}

double GoreStack::signHeight() const { return std::round(signWidth() * 1.7); }

QList<int> GoreStack::signs() const {
    const int up = fit(height(), signHeight());
    const int roomOfTallest = fit(m_measureWidth > 0 ? m_measureWidth : width(), signWidth()) * up;
    const double each = std::max(1.0, static_cast<double>(m_tallest) / roomOfTallest);
    const int wanted = static_cast<int>(std::ceil(sum(m_tally) / each));
    return thinned(m_tally, std::min(wanted, fit(width(), signWidth()) * up));
}

double GoreStack::stacked() const {
    const int total = sum(signs());
    const int across = fit(width(), signWidth());
    return std::ceil(static_cast<double>(total) / across) * (signHeight() + gap);
}

void GoreStack::paint(QPainter* painter) {
    const int across = fit(width(), signWidth());
    const auto drawn = signs();
    const int inRow = std::min(across, std::max(1, sum(drawn)));
    const double left = (width() - inRow * (signWidth() + gap) + gap) / 2;
    painter->setRenderHint(QPainter::Antialiasing);
    int at = 0;
    for (qsizetype standing = 0; standing < drawn.size() && standing < m_tones.size(); ++standing)
        for (int n = 0; n < drawn[standing]; ++n, ++at) {
            const QRectF area(left + (at % across) * (signWidth() + gap),
                              height() - (at / across + 1) * (signHeight() + gap) + gap, signWidth(), signHeight());
            drawGore(*painter, area, static_cast<Reckoned>(standing), 0.4, m_tones[standing]);
        }
}

void GoreStack::restack() {
    emit stackedChanged();
    update();
}

void GoreStack::geometryChange(const QRectF& now, const QRectF& before) {
    QQuickPaintedItem::geometryChange(now, before);
    if (now.size() != before.size())
        restack();
}

void GoreStack::setTally(const QList<int>& tally) {
    if (tally == m_tally)
        return;
    m_tally = tally;
    emit tallyChanged();
    restack();
}

void GoreStack::setTallest(int tallest) {
    if (tallest == m_tallest)
        return;
    m_tallest = tallest;
    emit tallestChanged();
    restack();
}

void GoreStack::setMeasureWidth(double width) {
    if (width == m_measureWidth)
        return;
    m_measureWidth = width;
    emit measureWidthChanged();
    restack();
}

void GoreStack::setTones(const QList<QColor>& tones) {
    if (tones == m_tones)
        return;
    m_tones = tones;
    emit tonesChanged();
    update();
}

}
