// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/fabric/ageing_field.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace crownring::screen {

void AgeingField::setChart(AgeingChart* chart) {
    if (m_chart == chart)
        return;
    if (m_chart != nullptr)
        m_chart->disconnect(this);
    m_chart = chart;
    if (m_chart != nullptr) {
        connect(m_chart, &AgeingChart::shown, this, [this] { update(); });
        connect(m_chart, &QObject::destroyed, this, [this] { setChart(nullptr); });
    }
    emit chartChanged();
    update();
}

void AgeingField::setTones(const QList<QColor>& tones) {
    if (m_tones == tones)
        return;
    m_tones = tones;
    emit tonesChanged();
    update();
}

void AgeingField::setSize(double size) {
    if (m_size == size)
        return;
    m_size = size;
    emit sizeChanged();
    update();
}

void AgeingField::setOverhang(double overhang) {
    if (m_overhang == overhang)
        return;
    m_overhang = overhang;
    emit overhangChanged();
    update();
}

double AgeingField::heightOf(double value) const {
    return m_overhang + (1 - m_chart->valueAxis().share(value)) * (height() - 2 * m_overhang);
}

void AgeingField::draw(QPainter& painter, const AgeingReading& reading, const AgeingTones& tones) const {
    if (!std::isfinite(reading.hours) || !std::isfinite(reading.value))
        return;
    const bool between = reading.kind == ageing::Kind::Between;
    const double upper = between && !std::isnan(reading.upper)
                             ? std::clamp(reading.upper, reading.value, m_chart->valueAxis().maximum)
                             : reading.value;
    const QPointF exact(m_overhang + m_chart->hoursAxis().share(reading.hours) * (width() - 2 * m_overhang),
                        heightOf(reading.value));
    // On whole pixels, for the sake of sharp edges.
    drawAgeingMark(painter, {reading.kind, reading.fails, !reading.ofThisPlace}, exact.toPoint(),
                   std::round(heightOf(upper)), m_size, tones);
}

void AgeingField::paint(QPainter* painter) {
    if (m_chart == nullptr)
        return;
    const auto tones = AgeingTones::of(m_tones);
    for (const bool fails : {false, true})
        for (const auto& reading : m_chart->curve().readings)
            if (reading.fails == fails)
                draw(*painter, reading, tones);
}

}
