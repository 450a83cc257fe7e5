// SPDX-License-Identifier: GPL-3.0-or-later

/// The chart of ageing without a window: what its axes hold, where its lines run, and the table it is saved to.

#include "screen/fabric/ageing_chart.h"
#include "screen/fabric/ageing_files.h"
#include "screen/fabric/sample_curves.h"
#include "test_class.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QTemporaryDir>
#include <QTest>
#include <QtCharts/QLineSeries>
#include <rapidcheck.h>

#include <limits>

namespace ageing_chart_test {

using namespace crownring::screen;
using ageing::Kind;

namespace {

struct Lines {
    QLineSeries low, middle, high;

    void fill(const AgeingChart& chart, bool ahead) { chart.fillBand(&low, &middle, &high, ahead); }
};

bool isNice(double interval) {
    const double power = std::pow(10.0, std::floor(std::log10(interval) + 1e-9));
    const double lead = interval / power;
    return std::abs(lead - 1) < 1e-6 || std::abs(lead - 2) < 1e-6 || std::abs(lead - 5) < 1e-6;
}

QByteArray contentOf(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("not to be read");
}

}

class AgeingChartTest : public QObject {
    Q_OBJECT

private slots:
    void init() { QLocale::setDefault(QLocale::c()); }

    void anAxisHoldsBothAndHasNiceTicks() {
        QVERIFY(rc::check("axes", [] {
            const double low = *rc::gen::inRange(-5000, 1) / 7.0;
            const double high = low + *rc::gen::inRange(1, 900000) / 13.0;
            const int most = *rc::gen::inRange(3, 9);
            const auto axis = AgeingAxis::around(low, high, most);
            const double slack = axis.interval * 1e-6;
            RC_ASSERT(axis.minimum <= low + slack);
            RC_ASSERT(axis.maximum >= high - slack);
            RC_ASSERT(axis.ticks - 1 <= most);
            RC_ASSERT(std::abs(axis.span() - (axis.ticks - 1) * axis.interval) < slack);
            RC_ASSERT(isNice(axis.interval));
            // Neither end has an interval to spare.
            RC_ASSERT(axis.minimum + axis.interval > low - slack);
            RC_ASSERT(axis.maximum - axis.interval < high + slack);
        }));
    }
    void anAxisIsAsLongAsItMustBe_data() {
        QTest::addColumn<double>("high");
        QTest::addColumn<double>("maximum");
        QTest::addColumn<double>("interval");
        QTest::addColumn<QString>("format");
        QTest::newRow("on a tick") << 600.0 << 600.0 << 100.0 << "%.0f";
        QTest::newRow("just above one") << 601.0 << 800.0 << 200.0 << "%.0f";
        QTest::newRow("below one") << 0.55 << 0.6 << 0.1 << "%.1f";
        QTest::newRow("small") << 0.12 << 0.12 << 0.02 << "%.2f";
        QTest::newRow("nothing") << 0.0 << 1.0 << 0.2 << "%.1f";
    }
    void anAxisIsAsLongAsItMustBe() {
        QFETCH(double, high);
        const auto axis = AgeingAxis::around(0, high, 6);
        QCOMPARE(axis.minimum, 0.0);
        QTEST(axis.maximum, "maximum");
        QTEST(axis.interval, "interval");
        QTEST(axis.format, "format");
    }
    void theAxesHoldEveryReadingAndTheLimit() {
        auto curve = sample::strength();
        curve.readings.push_back(sample::reading(Kind::Value, 950, 910));
        auto between = sample::reading(Kind::Between, 10, 900);
        between.upper = 1130;
        curve.readings.push_back(between);
        QCOMPARE(hoursAxis(curve).maximum, 1000.0);
        QCOMPARE(valueAxis(curve).maximum, 1200.0);
        curve.limit = 1900;
        QVERIFY(valueAxis(curve).maximum >= 1900);
        QCOMPARE(valueAxis(curve).minimum, 0.0);
    }
    void aBandThatRunsAwayIsCutAndSaysSo() {
        AgeingChart chart;
        chart.show(sample::runaway());
        QCOMPARE(chart.valueAxis().maximum, 60.0); // twice the limit, which is the most that is known
        QVERIFY2(chart.clippedSays().contains(QStringLiteral("60 l/m²/s")), qPrintable(chart.clippedSays()));
        chart.show(sample::strength());
        QVERIFY(chart.valueAxis().maximum >= sample::strength().band.front().high);
        QCOMPARE(chart.clippedSays(), QString());
    }
    void whatIsNoNumberMovesNoAxis() {
        auto curve = sample::strength();
        const auto before = valueAxis(curve);
        curve.limit = std::numeric_limits<double>::quiet_NaN();
        curve.band.back().high = std::numeric_limits<double>::infinity();
        curve.readings.front().value = std::numeric_limits<double>::quiet_NaN();
        QCOMPARE(valueAxis(curve), before);
        AgeingChart chart;
        chart.show(curve);
        QVERIFY(!chart.hasLimit());
        QLineSeries limit;
        QLineSeries now;
        chart.fillLines(&limit, &now);
        QCOMPARE(limit.count(), 0);
        QCOMPARE(now.count(), 2);
    }

    void theBandIsCutInTwoAtNow() {
        AgeingChart chart;
        chart.show(sample::strength());
        Lines until;
        Lines ahead;
        until.fill(chart, false);
        ahead.fill(chart, true);
        const auto& band = chart.curve().band;
        QCOMPARE(until.middle.count() + ahead.middle.count(), static_cast<int>(band.size()) + 2);
        QCOMPARE(until.middle.at(until.middle.count() - 1).x(), 412.0);
        QCOMPARE(ahead.middle.at(0), until.middle.at(until.middle.count() - 1));
        QCOMPARE(ahead.low.at(0), until.low.at(until.low.count() - 1));
        QCOMPARE(ahead.high.at(0), until.high.at(until.high.count() - 1));
        // 412 lies between the points at 400 and 450.
        QCOMPARE(ahead.middle.at(0).y(), band[8].middle + (band[9].middle - band[8].middle) * 12 / 50);
        for (int at = 0; at < 9; ++at) {
            const auto point = static_cast<std::size_t>(at);
            QCOMPARE(until.low.at(at), QPointF(band[point].hours, band[point].low));
            QCOMPARE(until.high.at(at), QPointF(band[point].hours, band[point].high));
        }
    }
    void nowOnAPointOfTheBandIsNoSecondPoint() {
        auto curve = sample::strength();
        curve.hoursNow = 400;
        AgeingChart chart;
        chart.show(curve);
        Lines until;
        Lines ahead;
        until.fill(chart, false);
        ahead.fill(chart, true);
        QCOMPARE(until.middle.count(), 9);
        QCOMPARE(ahead.middle.count(), 7);
        QCOMPARE(ahead.middle.at(0).x(), 400.0);
    }
    void aBandThatEndsBeforeNowHasNoForecast() {
        auto curve = sample::strength();
        curve.hoursNow = 900;
        AgeingChart chart;
        chart.show(curve);
        Lines ahead;
        ahead.fill(chart, true);
        QCOMPARE(ahead.middle.count(), 0);
        QVERIFY(!chart.signs().testFlag(AgeingChart::Forecast));
    }
    void linesAreTakenAwayWithTheirCurve() {
        AgeingChart chart;
        chart.show(sample::strength());
        Lines until;
        until.fill(chart, false);
        chart.show(sample::bare());
        until.fill(chart, false);
        QCOMPARE(until.low.count() + until.middle.count() + until.high.count(), 0);
        QVERIFY(!chart.hasBand());
    }
    void noPointIsTooFarToBePainted() {
        auto curve = sample::runaway();
        curve.band.back().high = std::numeric_limits<double>::infinity();
        AgeingChart chart;
        chart.show(curve);
        Lines ahead;
        ahead.fill(chart, true);
        for (const auto& point : ahead.high.points())
            QVERIFY(std::abs(point.y()) <= 21 * 60.0);
    }
    void theLimitLiesAcrossAndNowUpright() {
        AgeingChart chart;
        chart.show(sample::strength());
        QLineSeries limit;
        QLineSeries now;
        chart.fillLines(&limit, &now);
        QCOMPARE(limit.points(), (QList<QPointF>{{0, 133}, {chart.hoursAxis().maximum, 133}}));
        QCOMPARE(now.points(), (QList<QPointF>{{412, 0}, {412, chart.valueAxis().maximum}}));
        QCOMPARE(chart.nowShare(), 412 / chart.hoursAxis().maximum);
        QCOMPARE(chart.limitShare(), 133 / chart.valueAxis().maximum);
    }

    void theLimitIsNamedWhereNoReadingStands() {
        AgeingChart chart;
        chart.show(sample::strength());
        QVERIFY(chart.limitAtRight());
        QCOMPARE(chart.limitShort(), QStringLiteral("limit 133 N"));
        chart.show(sample::longLived());
        QVERIFY(!chart.limitAtRight());
    }
    void longFiguresAreFewer() {
        AgeingCurve curve;
        curve.hoursNow = 700;
        QCOMPARE(hoursAxis(curve).ticks, 8);
        curve.hoursNow = 1400;
        QCOMPARE(hoursAxis(curve).ticks, 4);
    }

    void theLegendKnowsWhatIsDrawn() {
        AgeingChart chart;
        chart.show(sample::bare());
        QCOMPARE(chart.signs(), AgeingChart::Signs(AgeingChart::Value | AgeingChart::AtLeast));
        auto curve = sample::bare();
        curve.readings = {sample::reading(Kind::Value, 10, 100, true)};
        chart.show(curve);
        QCOMPARE(chart.signs(), AgeingChart::Signs(AgeingChart::Fails)); // a cross, and no disc
        chart.show(sample::strength());
        QCOMPARE(chart.signs(), AgeingChart::Signs(AgeingChart::Value | AgeingChart::AtLeast | AgeingChart::AtMost |
                                                   AgeingChart::Between | AgeingChart::Fails | AgeingChart::Other |
                                                   AgeingChart::Forecast));
    }
    void theChartIsToldInASentence() {
        AgeingChart chart;
        chart.show(sample::strength());
        for (const auto* part : {"Tear strength [N]", "Readings: 12, beyond the limit: 2", "at least 133 N", "412 h"})
            QVERIFY2(chart.spoken().contains(QString::fromLatin1(part)), qPrintable(chart.spoken()));
        chart.show(sample::bare());
        QVERIFY2(chart.spoken().contains(QStringLiteral("No curve")), qPrintable(chart.spoken()));
    }

    void theTableHoldsTheReadingsEvenTwiceTheSame() {
        AgeingReadingModel model;
        const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
        const auto a = sample::reading(Kind::Value, 10, 100);
        const auto b = sample::reading(Kind::AtMost, 20, 90, true, true);
        model.show({a, a, b});
        model.show({b, a});
        model.show({a, b, a, a});
        QCOMPARE(model.count(), 4);
        const auto row = model.index(1, 0);
        QCOMPARE(row.data(AgeingReadingModel::HoursRole).toString(), QStringLiteral("20.0"));
        QCOMPARE(row.data(AgeingReadingModel::FailsRole).toBool(), true);
        QCOMPARE(row.data(AgeingReadingModel::OtherRole).toBool(), true);
        const auto spoken = row.data(AgeingReadingModel::SpokenRole).toString();
        for (const auto& part : {b.day, b.place, b.lot, b.says, b.judgement})
            QVERIFY2(spoken.contains(part), qPrintable(spoken));
    }

    void theTableIsWrittenWithQuotesAndPoints() {
        QLocale::setDefault(QLocale(QLocale::German)); // figures in a file are the same everywhere
        AgeingCurve curve;
        curve.unit = QStringLiteral("N");
        auto reading = sample::reading(Kind::Between, 305.5, 1180.25);
        reading.upper = 1200;
        reading.day = QStringLiteral("2026-05-26");
        reading.place = QStringLiteral("gore 3, \"upper\" panel");
        reading.lot = QStringLiteral("L-7\nrelabelled");
        reading.says = QStringLiteral("1.180,25 to 1.200 N");
        auto other = sample::reading(Kind::AtMost, 20, 90, true, true);
        other.says = QStringLiteral("at most 90 N");
        curve.readings = {reading, other};
        const auto text = tableText(curve);
        const auto lines = text.split('\r');
        QCOMPARE(lines.size(), 4); // the head, two readings, nothing after the last end of line
        QCOMPARE(lines[0],
                 QByteArray("day,hours flown,place,lot,kind,value,upper value,unit,reading,judgement,set of fabric"));
        QCOMPARE(lines[1], QByteArray("\n2026-05-26,305.5,\"gore 3, \"\"upper\"\" panel\",\"L-7\nrelabelled\",between,"
                                      "1180.25,1200,N,\"1.180,25 to 1.200 N\",passes,the same"));
        QCOMPARE(lines[2], "\n" + other.day.toUtf8() + ",20," + '"' + other.place.toUtf8() + '"' +
                               ",L-2019-07,at most,90,,N,at most 90 N,fails,another");
    }
    void theTableIsSaved() {
        const QTemporaryDir folder;
        const auto path = folder.filePath(QStringLiteral("readings.csv"));
        AgeingChart chart;
        chart.show(sample::strength());
        chart.saveTable(QUrl::fromLocalFile(path));
        QVERIFY2(!chart.trouble() && chart.told().contains(path), qPrintable(chart.told()));
        QCOMPARE(contentOf(path), tableText(chart.curve()));
    }
    void whatCannotBeWrittenIsTold() {
        const QTemporaryDir folder;
        const auto path = folder.filePath(QStringLiteral("no such folder/readings.csv"));
        AgeingChart chart;
        chart.show(sample::strength());
        chart.saveTable(QUrl::fromLocalFile(path));
        QVERIFY(chart.trouble());
        QVERIFY2(chart.told().contains(path), qPrintable(chart.told()));
        chart.savePicture(QImage(4, 4, QImage::Format_RGB32),
                          QUrl::fromLocalFile(folder.path())); // a folder is no file
        QVERIFY(chart.trouble());
    }
    void aPictureOfNothingLeavesTheFileAlone() {
        const QTemporaryDir folder;
        const auto path = folder.filePath(QStringLiteral("chart.png"));
        AgeingChart chart;
        chart.saveTable(QUrl::fromLocalFile(path));
        const auto before = contentOf(path);
        chart.savePicture(QImage(), QUrl::fromLocalFile(path));
        QVERIFY(chart.trouble());
        QCOMPARE(contentOf(path), before);
    }
    void theNameThatIsProposedIsAFileName() {
        AgeingChart chart;
        auto curve = sample::strength();
        curve.title = QStringLiteral("Tear strength: upper/lower «Ä», warp ");
        chart.show(curve);
        QCOMPARE(chart.proposedFile(QStringLiteral("png")).fileName(),
                 QStringLiteral("Tear-strength-upper-lower-Ä-warp.png"));
    }
};

CROWNRING_TEST(AgeingChartTest, QApplication)

}

#include "ageing_chart_test.moc"
