// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The chart of how a fabric ages: its axes, its lines, its readings, and the two files it can be saved to. What it
/// says is a curve that was computed elsewhere.

#include "screen/fabric/ageing_axis.h"
#include "screen/fabric/ageing_reading_model.h"

#include <QImage>
#include <QUrl>
#include <QtCharts/QXYSeries>

namespace crownring::screen {

class AgeingChart : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the places")
    Q_PROPERTY(QString title READ title NOTIFY shown FINAL)
    Q_PROPERTY(QString unit READ unit NOTIFY shown FINAL)
    Q_PROPERTY(QString valueTitle READ valueTitle NOTIFY shown FINAL)
    /// "limit 133 N" for the line, and all that is to be said of it.
    Q_PROPERTY(QString limitShort READ limitShort NOTIFY shown FINAL)
    Q_PROPERTY(QString limitSays READ limitSays NOTIFY shown FINAL)
    Q_PROPERTY(QString nowSays READ nowSays NOTIFY shown FINAL)
    Q_PROPERTY(QString caution READ caution NOTIFY shown FINAL)
    /// That the band runs out of the chart; empty when it does not.
    Q_PROPERTY(QString clippedSays READ clippedSays NOTIFY shown FINAL)
    /// The chart in a sentence, for who does not see it.
    Q_PROPERTY(QString spoken READ spoken NOTIFY shown FINAL)
    Q_PROPERTY(double hoursNow READ hoursNow NOTIFY shown FINAL)
    Q_PROPERTY(bool hasBand READ hasBand NOTIFY shown FINAL)
    Q_PROPERTY(bool hasLimit READ hasLimit NOTIFY shown FINAL)
    Q_PROPERTY(bool limitIsLeast READ limitIsLeast NOTIFY shown FINAL)
    Q_PROPERTY(crownring::screen::AgeingAxis hoursAxis READ hoursAxis NOTIFY shown FINAL)
    Q_PROPERTY(crownring::screen::AgeingAxis valueAxis READ valueAxis NOTIFY shown FINAL)
    /// How far from the left "now" lies, and how far from the foot the limit, of the width and the height of the plot.
    Q_PROPERTY(double nowShare READ nowShare NOTIFY shown FINAL)
    Q_PROPERTY(double limitShare READ limitShare NOTIFY shown FINAL)
    /// At which end of its line the limit is named: at the right, unless readings stand there.
    Q_PROPERTY(bool limitAtRight READ limitAtRight NOTIFY shown FINAL)
    /// The signs that are drawn, for the legend.
    Q_PROPERTY(Signs signs READ signs NOTIFY shown FINAL)
    Q_PROPERTY(crownring::screen::AgeingReadingModel* readings READ readings CONSTANT FINAL)
    /// What came of the last saving.
    Q_PROPERTY(QString told READ told NOTIFY toldChanged FINAL)
    Q_PROPERTY(bool trouble READ trouble NOTIFY toldChanged FINAL)

public:
    enum Sign { Value = 1, AtLeast = 2, AtMost = 4, Between = 8, Fails = 16, Other = 32, Forecast = 64 };
    Q_DECLARE_FLAGS(Signs, Sign)
    Q_FLAG(Signs)

    explicit AgeingChart(QObject* parent = nullptr);
    void show(AgeingCurve curve);
    [[nodiscard]] const AgeingCurve& curve() const { return m_curve; }

    /// The band's three lines until now, or from now on; together they meet at now.
    Q_INVOKABLE void fillBand(QXYSeries* low, QXYSeries* middle, QXYSeries* high, bool ahead) const;
    /// The limit across the chart and now from foot to top; a limit that is none leaves its line empty.
    Q_INVOKABLE void fillLines(QXYSeries* limit, QXYSeries* now) const;

    /// Where files are kept, named after the title.
    Q_INVOKABLE QUrl proposedFile(const QString& ending) const;
    Q_INVOKABLE void savePicture(const QImage& picture, const QUrl& file);
    /// A picture was asked for and none could be drawn.
    Q_INVOKABLE void tellNoPicture();
    Q_INVOKABLE void saveTable(const QUrl& file);

    [[nodiscard]] QString title() const { return m_curve.title; }
    [[nodiscard]] QString unit() const { return m_curve.unit; }
    [[nodiscard]] QString valueTitle() const;
    [[nodiscard]] QString limitShort() const;
    [[nodiscard]] QString limitSays() const { return m_curve.limitSays.isEmpty() ? limitShort() : m_curve.limitSays; }
    [[nodiscard]] QString nowSays() const;
    [[nodiscard]] QString caution() const { return m_curve.caution; }
    [[nodiscard]] QString clippedSays() const;
    [[nodiscard]] QString spoken() const;
    [[nodiscard]] double hoursNow() const { return m_curve.hoursNow; }
    [[nodiscard]] bool hasBand() const { return !m_curve.band.empty(); }
    [[nodiscard]] bool hasLimit() const;
    [[nodiscard]] bool limitIsLeast() const { return m_curve.limitIsLeast; }
    [[nodiscard]] AgeingAxis hoursAxis() const { return m_hours; }
    [[nodiscard]] AgeingAxis valueAxis() const { return m_values; }
    [[nodiscard]] double nowShare() const { return m_hours.share(m_curve.hoursNow); }
    [[nodiscard]] double limitShare() const { return hasLimit() ? m_values.share(m_curve.limit) : 0; }
    [[nodiscard]] bool limitAtRight() const;
    [[nodiscard]] Signs signs() const;
    [[nodiscard]] AgeingReadingModel* readings() { return &m_readings; }
    [[nodiscard]] QString told() const { return m_told; }
    [[nodiscard]] bool trouble() const { return m_trouble; }

signals:
    void shown();
    void toldChanged();

private:
    void tellSaved(const QUrl& file, const QString& trouble);
    void tell(const QString& text, bool trouble);

    AgeingCurve m_curve;
    AgeingAxis m_hours;
    AgeingAxis m_values;
    AgeingReadingModel m_readings;
    QString m_told;
    bool m_trouble = false;
};

Q_DECLARE_OPERATORS_FOR_FLAGS(AgeingChart::Signs)

}
