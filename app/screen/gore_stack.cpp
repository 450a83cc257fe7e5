// SPDX-License-Identifier: GPL-3.0-or-later
#include "gore_stack.h"

#include "gore_sign.h"

#include <QPainter>

#include <algorithm>
#include <numeric>

namespace crownring::screen {

namespace {
constexpr double signWidth = 11;
constexpr double signHeight = 18;
constexpr double gap = 1;
}

GoreStack::GoreStack(QQuickItem* parent) : QQuickPaintedItem(parent) { setAntialiasing(true); }

QList<int> GoreStack::thinned(const QList<int>& tally, int room) {
    const int total = std::accumulate(tally.begin(), tally.end(), 0);
    if (total <= room)
        return tally;
    QList<int> signs;
    int given = 0;
    for (const int n : tally) {
        const int share = n == 0 ? 0 : std::max(1, n * room / total);
        const int taken = std::min(share, room - given);
        signs += std::max(0, taken);
        given += std::max(0, taken);
    }
    return signs;
}

void GoreStack::paint(QPainter* painter) {
    const int across = std::max(1, static_cast<int>((width() + gap) / (signWidth + gap)));
    const int up = std::max(1, static_cast<int>((height() + gap) / (signHeight + gap)));
    const auto signs = thinned(m_tally, across * up);
    painter->setRenderHint(QPainter::Antialiasing);
    int at = 0;
    const int total = std::accumulate(signs.begin(), signs.end(), 0);
    const int inRow = std::min(across, std::max(1, total));
    const double left = (width() - inRow * (signWidth + gap) + gap) / 2;
    for (qsizetype standing = 0; standing < signs.size() && standing < m_tones.size(); ++standing)
        for (int n = 0; n < signs[standing]; ++n, ++at) {
            const QRectF area(left + (at % across) * (signWidth + gap),
                              height() - (at / across + 1) * (signHeight + gap) + gap, signWidth, signHeight);
            drawGore(*painter, area, static_cast<Standing>(standing), 0.4, m_tones[standing]);
        }
}

void GoreStack::setTally(const QList<int>& tally) {
    if (tally == m_tally)
        return;
    m_tally = tally;
    emit tallyChanged();
    update();
}

void GoreStack::setTones(const QList<QColor>& tones) {
    if (tones == m_tones)
        return;
    m_tones = tones;
    emit tonesChanged();
    update();
}

}
