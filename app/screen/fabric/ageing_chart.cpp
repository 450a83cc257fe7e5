// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/fabric/ageing_chart.h"

#include "screen/fabric/ageing_files.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace crownring::screen {

namespace {

QString shortFigure(double value) { return QLocale().toString(value, 'g', 4); }
QString wholeHours(double hours) { return QLocale().toString(hours, 'f', 0); }

AgeingPoint between(const AgeingPoint& before, const AgeingPoint& after, double hours) {
    const double part = (hours - before.hours) / (after.hours - before.hours);
    const auto at = [part](double from, double to) { return from + (to - from) * part; };
    return {hours, at(before.low, after.low), at(before.middle, after.middle), at(before.high, after.high)};
}

/// The band at these hours; only within it.
AgeingPoint bandAt(const std::vector<AgeingPoint>& band, double hours) {
    const auto after = std::ranges::lower_bound(band, hours, {}, &AgeingPoint::hours);
    if (after == band.end())
        return band.back();
    if (after == band.begin() || after->hours == hours)
        return *after;
    return between(*std::prev(after), *after, hours);
}

std::vector<AgeingPoint> stretch(const std::vector<AgeingPoint>& band, double now, bool ahead) {
    std::vector<AgeingPoint> part;
    if (band.empty())
        return part;
    const bool split = band.front().hours < now && now < band.back().hours;
    if (split && ahead)
        part.push_back(bandAt(band, now));
    for (const auto& point : band)
        if (ahead ? point.hours > now : point.hours <= now)
            part.push_back(point);
    if (split && !ahead && part.back().hours < now)
        part.push_back(bandAt(band, now));
    return part;
}

AgeingChart::Sign signOf(ageing::Kind kind) {
    switch (kind) {
    case ageing::Kind::AtLeast:
        return AgeingChart::AtLeast;
    case ageing::Kind::AtMost:
        return AgeingChart::AtMost;
    case ageing::Kind::Between:
        return AgeingChart::Between;
    case ageing::Kind::Value:
        break;
    }
    return AgeingChart::Value;
}

}

AgeingChart::AgeingChart(QObject* parent)
    : QObject(parent), m_hours(crownring::screen::hoursAxis(m_curve)), m_values(crownring::screen::valueAxis(m_curve)) {
}

void AgeingChart::show(AgeingCurve curve) {
    m_curve = std::move(curve);
    m_hours = crownring::screen::hoursAxis(m_curve);
    m_values = crownring::screen::valueAxis(m_curve);
    m_readings.show(m_curve.readings);
    emit shown();
    tell(QString(), false);
}

void AgeingChart::fillBand(QXYSeries* low, QXYSeries* middle, QXYSeries* high, bool ahead) const {
    // Far out of the chart it is all the same, and painters lose points that are too far.
    const double far = 20 * m_values.span();
    const auto drawn = [&](double value) {
        return std::isnan(value) ? m_values.minimum : std::clamp(value, m_values.minimum - far, m_values.maximum + far);
    };
    QList<QPointF> lows;
    QList<QPointF> middles;
    QList<QPointF> highs;
    for (const auto& point : stretch(m_curve.band, m_curve.hoursNow, ahead)) {
        lows.append({point.hours, drawn(point.low)});
        middles.append({point.hours, drawn(point.middle)});
        highs.append({point.hours, drawn(point.high)});
    }
    low->replace(lows);
    middle->replace(middles);
    high->replace(highs);
}

void AgeingChart::fillLines(QXYSeries* limit, QXYSeries* now) const {
    QList<QPointF> across;
    if (hasLimit())
        across = {{m_hours.minimum, m_curve.limit}, {m_hours.maximum, m_curve.limit}};
    limit->replace(across);
    now->replace(QList<QPointF>{{m_curve.hoursNow, m_values.minimum}, {m_curve.hoursNow, m_values.maximum}});
}

bool AgeingChart::hasLimit() const { return std::isfinite(m_curve.limit); }

QString AgeingChart::valueTitle() const {
    return m_curve.unit.isEmpty() ? m_curve.quantity : tr("%1 [%2]").arg(m_curve.quantity, m_curve.unit);
}

bool AgeingChart::limitAtRight() const {
    return std::ranges::none_of(m_curve.readings,
                                [&](const auto& reading) { return m_hours.share(reading.hours) > 2.0 / 3; });
}

QString AgeingChart::limitShort() const {
    return hasLimit() ? tr("limit %1 %2").arg(shortFigure(m_curve.limit), m_curve.unit).trimmed() : QString();
}

QString AgeingChart::nowSays() const { return tr("now: %1 h").arg(wholeHours(m_curve.hoursNow)); }

QString AgeingChart::clippedSays() const {
    const bool above = std::ranges::any_of(m_curve.band, [&](const auto& at) { return at.high > m_values.maximum; });
    return above ? tr("The band runs higher than the chart, which ends at %1 %2.")
                       .arg(shortFigure(m_values.maximum), m_curve.unit)
                       .trimmed()
                 : QString();
}

QString AgeingChart::spoken() const {
    QStringList says;
    says += tr("%1 against hours flown.").arg(valueTitle());
    says += tr("Readings: %1, beyond the limit: %2.")
                .arg(m_curve.readings.size())
                .arg(std::ranges::count_if(m_curve.readings, &AgeingReading::fails));
    if (hasLimit())
        says += tr("%1.").arg(limitSays());
    if (hasBand()) {
        const auto now = bandAt(m_curve.band, m_curve.hoursNow);
        says += tr("Now, at %1 h, the band reaches from %2 to %3 with its middle at %4 %5.")
                    .arg(wholeHours(m_curve.hoursNow), shortFigure(now.low), shortFigure(now.high),
                         shortFigure(now.middle), m_curve.unit);
    } else {
        says += tr("No curve is drawn.");
    }
    return says.join(u' ');
}

AgeingChart::Signs AgeingChart::signs() const {
    Signs drawn;
    for (const auto& reading : m_curve.readings) {
        drawn.setFlag(Fails, drawn.testFlag(Fails) || reading.fails);
        drawn.setFlag(Other, drawn.testFlag(Other) || !reading.ofThisPlace);
        // A value that fails is a cross and no disc.
        if (reading.kind != ageing::Kind::Value || !reading.fails)
            drawn.setFlag(signOf(reading.kind));
    }
    drawn.setFlag(Forecast, hasBand() && m_curve.band.back().hours > m_curve.hoursNow);
    return drawn;
}

QUrl AgeingChart::proposedFile(const QString& ending) const { return crownring::screen::proposedFile(m_curve, ending); }

void AgeingChart::savePicture(const QImage& picture, const QUrl& file) { tellSaved(file, writePicture(picture, file)); }

void AgeingChart::tellNoPicture() { tell(tr("The picture cannot be drawn."), true); }

void AgeingChart::saveTable(const QUrl& file) { tellSaved(file, writeTable(m_curve, file)); }

void AgeingChart::tellSaved(const QUrl& file, const QString& trouble) {
    tell(trouble.isEmpty() ? tr("Written: %1").arg(pathOf(file)) : trouble, !trouble.isEmpty());
}

void AgeingChart::tell(const QString& text, bool trouble) {
    if (m_told == text && m_trouble == trouble)
        return;
    m_told = text;
    m_trouble = trouble;
    emit toldChanged();
}

}
