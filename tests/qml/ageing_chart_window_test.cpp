// SPDX-License-Identifier: GPL-3.0-or-later

/// The chart of ageing and its table in a window, drawn without a graphics card: readings lie where the chart's own
/// lines say, what it is saved to is not blank, and pictures for people to look at.

#include "heard_warnings.h"
#include "program/places.h"
#include "screen/fabric/ageing_field.h"
#include "screen/fabric/sample_curves.h"
#include "test_class.h"

#include <QAccessible>
#include <QApplication>
#include <QDir>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QQuickStyle>
#include <QQuickView>
#include <QTemporaryDir>
#include <QTest>

namespace ageing_chart_window_test {

using namespace crownring::screen;

namespace {

int pixelsOf(const QImage& picture, const QColor& tone) {
    int found = 0;
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x)
            found += picture.pixel(x, y) == tone.rgb() ? 1 : 0;
    return found;
}

/// The names of all that a screen reader meets below.
void namesBelow(QAccessibleInterface* at, QStringList& names) {
    if (at == nullptr || at->state().invisible)
        return;
    names += at->text(QAccessible::Name);
    for (int child = 0; child < at->childCount(); ++child)
        namesBelow(at->child(child), names);
}

AgeingCurve curveNamed(const QString& name) {
    if (name == QStringLiteral("strength"))
        return sample::strength();
    if (name == QStringLiteral("runaway"))
        return sample::runaway();
    return name == QStringLiteral("bare") ? sample::bare() : sample::longLived();
}

}

class AgeingChartWindowTest : public QObject {
    Q_OBJECT

private:
    std::unique_ptr<HeardWarnings> m_warnings;
    AgeingChart m_chart;
    std::unique_ptr<QQuickView> m_view;

    QObject* theme() const {
        QQmlComponent reach(m_view->engine());
        reach.setData("import QtQml\nimport Crownring.Theme\nQtObject { property QtObject theme: Theme }", QUrl());
        const std::unique_ptr<QObject> holder(reach.create());
        return holder->property("theme").value<QObject*>();
    }
    QColor tone(const char* name) const { return theme()->property(name).value<QColor>(); }
    void open(const QString& file, const QSize& size, bool dark = false) {
        m_view = std::make_unique<QQuickView>();
        addModules(*m_view->engine());
        m_view->setResizeMode(QQuickView::SizeRootObjectToView);
        m_view->setInitialProperties({{QStringLiteral("chart"), QVariant::fromValue<AgeingChart*>(&m_chart)}});
        m_view->setSource(QUrl(QStringLiteral("qrc:/qt/qml/Crownring/Fabric/%1.qml").arg(file)));
        QCOMPARE(m_view->errors(), QList<QQmlError>());
        QVERIFY(theme()->setProperty("dark", dark));
        m_view->setColor(tone("paper"));
        m_view->resize(size);
        m_view->show();
        QVERIFY(QTest::qWaitForWindowExposed(m_view.get()));
    }
    QImage grab() {
        QTest::qWait(150);
        return m_view->grabWindow();
    }
    /// The plot in the window.
    QRectF plot() const {
        const auto* field = m_view->rootObject()->findChild<AgeingField*>();
        const double over = field->overhang();
        return field->mapRectToScene(field->boundingRect()).adjusted(over, over, -over, -over);
    }
    QPointF placeOf(double hours, double value) const {
        const auto area = plot();
        return {area.left() + m_chart.hoursAxis().share(hours) * area.width(),
                area.bottom() - m_chart.valueAxis().share(value) * area.height()};
    }
    /// Within the plot, over a few pixels beside each other: there, the limit's line as Qt Charts drew it.
    int darkestRow(const QImage& picture, int from) const {
        const auto area = plot().toRect().adjusted(0, 2, 0, -2);
        int darkest = 255;
        int row = -1;
        for (int y = area.top(); y <= area.bottom(); ++y)
            for (int x = from; x < from + 12; ++x)
                if (const int tone = qGray(picture.pixel(x, y)); tone < darkest) {
                    darkest = tone;
                    row = y;
                }
        return row;
    }
    QColor seen(const QImage& picture, double hours, double value) const {
        const auto at = placeOf(hours, value).toPoint();
        return picture.pixelColor(at);
    }

private slots:
    void initTestCase() {
        QQuickStyle::setStyle(QStringLiteral("Basic"));
        useOwnFont();
        QAccessible::setActive(true);
        m_warnings = std::make_unique<HeardWarnings>();
    }
    void cleanup() {
        theme()->setProperty("dark", false);
        m_view.reset();
    }
    void cleanupTestCase() { QCOMPARE(HeardWarnings::all(), QStringList()); }

    void readingsLieWhereTheLinesOfTheChartSay() {
        m_chart.show(sample::strength());
        open(QStringLiteral("AgeingPane"), {1100, 640});
        const auto picture = grab();
        const auto line = darkestRow(picture, placeOf(150, 0).toPoint().x());
        QVERIFY2(std::abs(line - placeOf(150, 133).y()) <= 2, qPrintable(QString::number(line)));
        QCOMPARE(seen(picture, 20, 330), tone("ink"));
        QCOMPARE(seen(picture, 412, 168), tone("ink"));
        QCOMPARE(seen(picture, 360, 240), tone("sheet")); // of other fabric: hollow
        QCOMPARE(seen(picture, 412, 126), tone("ember"));
    }
    void theBandIsLighterBeyondNow() {
        m_chart.show(sample::strength());
        open(QStringLiteral("AgeingPane"), {1100, 640});
        const auto picture = grab();
        const int solid = seen(picture, 350, 220).lightness();
        const int light = seen(picture, 650, 90).lightness();
        const int outside = seen(picture, 650, 350).lightness();
        QVERIFY2(solid + 10 < light && light + 10 < outside,
                 qPrintable(QStringLiteral("%1 %2 %3").arg(solid).arg(light).arg(outside)));
    }
    void anotherCurveIsDrawnInPlace() {
        m_chart.show(sample::strength());
        open(QStringLiteral("AgeingPane"), {1100, 640});
        const auto before = grab();
        m_chart.show(sample::bare());
        const auto after = grab();
        QVERIFY(after != before);
        QVERIFY(pixelsOf(before, tone("ember")) > 20);
        QCOMPARE(pixelsOf(after, tone("ember")), 0);
        m_chart.show(sample::strength());
        QCOMPARE(grab(), before);
    }
    void theSavedPictureIsTheChartTwiceAsLarge() {
        m_chart.show(sample::strength());
        open(QStringLiteral("AgeingPane"), {360, 640});
        const QTemporaryDir folder;
        const auto path = folder.filePath(QStringLiteral("chart.png"));
        QMetaObject::invokeMethod(m_view->rootObject(), "savePicture", Q_ARG(QUrl, QUrl::fromLocalFile(path)));
        QTRY_VERIFY_WITH_TIMEOUT(!m_chart.told().isEmpty(), 30'000);
        QVERIFY2(!m_chart.trouble(), qPrintable(m_chart.told()));
        const QImage picture(path);
        QCOMPARE(picture.width(), 2000); // however narrow the window is
        QVERIFY(picture.height() > 900);
        QVERIFY(pixelsOf(picture, tone("ink")) > 4000);
        QVERIFY(pixelsOf(picture, tone("ember")) > 200);
        QVERIFY(pixelsOf(picture, tone("paper")) > 100'000);
        QDir().mkpath(QStringLiteral(PICTURES));
        QFile::remove(QStringLiteral(PICTURES "/ageing-saved.png"));
        QVERIFY(QFile::copy(path, QStringLiteral(PICTURES "/ageing-saved.png")));
    }
    void whatIsDrawnIsSaidToo() {
        m_chart.show(sample::strength());
        open(QStringLiteral("AgeingPane"), {360, 800});
        grab();
        QStringList names;
        namesBelow(QAccessible::queryAccessibleInterface(m_view.get()), names);
        for (const auto& name : {m_chart.title(), m_chart.valueTitle(), m_chart.nowSays(), m_chart.limitSays(),
                                 m_chart.caution(), QStringLiteral("Save picture …"),
                                 QStringLiteral("Save table (CSV) …"), QStringLiteral("at least this much")})
            QVERIFY2(names.contains(name), qPrintable(name + u'|' + names.join(u',')));
        const auto all = m_view->rootObject()->findChildren<QQuickItem*>();
        QVERIFY(std::ranges::any_of(all, [&](QQuickItem* item) {
            auto* met = QAccessible::queryAccessibleInterface(item);
            return met != nullptr && met->text(QAccessible::Description) == m_chart.spoken();
        }));
    }
    void theTableIsReadRowByRow() {
        m_chart.show(sample::strength());
        for (const int width : {360, 1100}) {
            open(QStringLiteral("AgeingTable"), {width, 1200});
            grab();
            QStringList names;
            namesBelow(QAccessible::queryAccessibleInterface(m_view.get()), names);
            for (int row = 0; row < m_chart.readings()->count(); ++row) {
                const auto at = m_chart.readings()->index(row);
                const auto spoken = at.data(AgeingReadingModel::SpokenRole).toString();
                QVERIFY2(names.contains(spoken), qPrintable(spoken + u'|' + names.join(u',')));
            }
        }
    }

    void pictures_data() {
        QTest::addColumn<QString>("file");
        QTest::addColumn<QString>("curve");
        QTest::addColumn<QSize>("size");
        QTest::addColumn<bool>("dark");
        for (const QString curve : {"strength", "runaway", "bare", "longLived"})
            for (const QSize size : {QSize(1100, 640), QSize(360, 640)})
                for (const bool dark : {false, true})
                    QTest::addRow("chart-%s-%d-%s", qPrintable(curve), size.width(), dark ? "dark" : "light")
                        << QStringLiteral("AgeingPane") << curve << size << dark;
        for (const QSize size : {QSize(1100, 640), QSize(360, 640)})
            for (const bool dark : {false, true})
                QTest::addRow("table-%d-%s", size.width(), dark ? "dark" : "light")
                    << QStringLiteral("AgeingTable") << QStringLiteral("strength") << size << dark;
    }
    void pictures() {
        QFETCH(QString, file);
        QFETCH(QString, curve);
        QFETCH(QSize, size);
        QFETCH(bool, dark);
        m_chart.show(curveNamed(curve));
        open(file, size, dark);
        const auto picture = grab();
        QCOMPARE(picture.size(), size);
        QDir().mkpath(QStringLiteral(PICTURES));
        QVERIFY(
            picture.save(QStringLiteral(PICTURES "/ageing-%1.png").arg(QString::fromLatin1(QTest::currentDataTag()))));
    }
};

CROWNRING_TEST(AgeingChartWindowTest, QApplication)

}

#include "ageing_chart_window_test.moc"
