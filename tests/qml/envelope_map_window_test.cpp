// SPDX-License-Identifier: GPL-3.0-or-later

/// The envelope map in a window, drawn without a graphics card: what changes is what was changed, and pictures for
/// people to look at.

#include "heard_warnings.h"
#include "program/places.h"
#include "screen/envelope/drawn_panel.h"
#include "screen/envelope/envelope_node.h"
#include "screen/envelope/sample_panels.h"
#include "screen/envelope/unrolled_envelope.h"
#include "screen/told_in_grey.h"
#include "test_class.h"

#include <QApplication>
#include <QDir>
#include <QPainter>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QQuickItem>
#include <QQuickStyle>
#include <QQuickView>
#include <QSignalSpy>
#include <QTest>

namespace envelope_map_window_test {

using namespace crownring::screen;
using sample::difference;
using sample::drawn;

namespace {

int inkIn(const QImage& image, const QRect& part) {
    int ink = 0;
    for (int y = part.top(); y <= part.bottom(); ++y)
        for (int x = part.left(); x <= part.right(); ++x)
            ink += qGray(image.pixel(x, y)) < 255 ? 1 : 0;
    return ink;
}

}

class EnvelopeMapWindowTest : public QObject {
    Q_OBJECT

private:
    std::unique_ptr<HeardWarnings> m_warnings;
    PanelModel m_panels;
    std::unique_ptr<QQuickView> m_view;

    UnrolledEnvelope* field() const { return m_view->findChild<UnrolledEnvelope*>(); }
    QObject* theme() const {
        QQmlComponent reach(m_view->engine());
        reach.setData("import QtQml\nimport Crownring.Theme\nQtObject { property QtObject theme: Theme }", QUrl());
        const std::unique_ptr<QObject> holder(reach.create());
        return holder->property("theme").value<QObject*>();
    }
    QImage grab() {
        QTest::qWait(60);
        return m_view->grabWindow();
    }
    /// A panel's part of the picture, its seams left out.
    QImage of(const QImage& picture, int gore, int row) const {
        field()->choose(gore, row);
        const auto area = field()->mapRectToScene(field()->chosenArea()).toRect().adjusted(1, 1, -1, -1);
        field()->choose(0, 0);
        return picture.copy(area);
    }

    static void sizes() {
        QTest::addColumn<QSize>("size");
        QTest::newRow("the least on a desk") << QSize(28, 28);
        QTest::newRow("on a phone") << QSize(44, 44);
        QTest::newRow("in the legend") << QSize(32, 28);
    }

private slots:
    void initTestCase() {
        QQuickStyle::setStyle(QStringLiteral("Basic"));
        useOwnFont();
        m_warnings = std::make_unique<HeardWarnings>();
    }
    void init() {
        m_panels.show(sample::halfDone());
        m_view = std::make_unique<QQuickView>();
        addModules(*m_view->engine());
        m_view->setResizeMode(QQuickView::SizeRootObjectToView);
        m_view->setInitialProperties({{QStringLiteral("panels"), QVariant::fromValue<PanelModel*>(&m_panels)},
                                      {QStringLiteral("gores"), sample::gores},
                                      {QStringLiteral("rows"), sample::rows}});
        m_view->setSource(QUrl(QStringLiteral("qrc:/qt/qml/Crownring/Envelope/EnvelopeMap.qml")));
        QCOMPARE(m_view->errors(), QList<QQmlError>());
        m_view->resize(900, 500);
        m_view->show();
        QVERIFY(QTest::qWaitForWindowExposed(m_view.get()));
    }
    void cleanup() { m_view.reset(); }
    void cleanupTestCase() { QCOMPARE(HeardWarnings::all(), QStringList()); }

    void aNewReadingChangesItsPanelAndNoOther() {
        const auto before = grab();
        auto marks = m_panels.marks();
        marks.push_back(sample::held(20, 3, 133, 1.4));
        m_panels.show(marks);
        const auto after = grab();
        QVERIFY(of(before, 20, 3) != of(after, 20, 3));
        for (int gore = 1; gore <= sample::gores; ++gore)
            for (int row = 1; row <= sample::rows; ++row)
                if (gore != 20 || row != 3)
                    QVERIFY2(of(before, gore, row) == of(after, gore, row),
                             qPrintable(QStringLiteral("gore %1, row %2").arg(gore).arg(row)));
        marks.pop_back();
        m_panels.show(marks);
        QCOMPARE(grab(), before); // and taken back, the map is as it was
    }
    void theChosenPanelIsFramedAndTheKeyboardFramesItMore() {
        m_view->requestActivate();
        QVERIFY(QTest::qWaitForWindowActive(m_view.get()));
        const auto bare = grab();
        field()->choose(10, 5);
        const auto chosen = grab();
        QVERIFY(chosen != bare);
        field()->forceActiveFocus(Qt::TabFocusReason);
        const auto focused = grab();
        QVERIFY(focused != chosen);
    }
    void aLotThatBecomesKnownChangesItsPanelAndNoOther() {
        const auto before = grab();
        auto marks = m_panels.marks();
        marks.push_back(sample::ofLot(2, 3, 1));
        m_panels.show(marks);
        const auto after = grab();
        QVERIFY(of(before, 2, 3) != of(after, 2, 3));
        QCOMPARE(of(after, 3, 3), of(before, 3, 3));
        const auto strip = QRect(0, 0, 8, of(after, 2, 3).height());
        const auto rest = of(after, 2, 3).rect().adjusted(strip.width(), 0, 0, 0);
        QCOMPARE(of(after, 2, 3).copy(rest), of(before, 2, 3).copy(rest));
    }
    void imagesThatNoPanelShowsAnyMoreAreLetGo() {
        const PanelGrid grid{sample::gores, sample::rows, {28, 28}, 24};
        const qsizetype panels = grid.gores * grid.rows;
        EnvelopeNode node(*m_view, grid, MapTones{});
        qsizetype most = 0;
        // Every panel shows another figure at each step, as a forecast that slides.
        for (int step = 0; step < 12; ++step) {
            for (int gore = 1; gore <= grid.gores; ++gore)
                for (int row = 1; row <= grid.rows; ++row) {
                    const auto mark = sample::expected(gore, row, 1000 * step + gore * grid.rows + row, 1.5);
                    node.show({gore, row}, &mark);
                }
            node.draw();
            most = std::max(most, node.imagesKept());
        }
        QVERIFY2(most <= panels + EnvelopeNode::imagesSpare, qPrintable(QString::number(most)));
        QVERIFY(most >= panels);
    }
    void panelsWithTheSameSignsShareTheirImages() {
        EnvelopeNode node(*m_view, PanelGrid{10, 2, {28, 28}, 0}, MapTones{});
        for (int gore = 1; gore <= 10; ++gore) {
            const auto mark = sample::held(gore, 1, 133, 1 + gore / 10.0); // the ground differs, the signs do not
            node.show({gore, 1}, &mark);
            QCOMPARE(node.imagesKept(), 2); // an arrow and a figure
        }
        for (int gore = 1; gore <= 10; ++gore) {
            auto mark = sample::held(gore, 2, 133, 1);
            mark.count = 2;
            node.show({gore, 2}, &mark);
            QCOMPARE(node.imagesKept(), 3); // the figure is the same, the shapes have a dot
        }
    }
    void whatIsExpectedAndTheLotAreSaid() {
        m_panels.show(sample::allExpected(5));
        QCOMPARE(field()->textOf({1, 1}),
                 QStringLiteral("gore 1, row 1: expected 249 N, readings taken there: 1, lot A-17"));
        QCOMPARE(field()->textOf({15, 14}),
                 QStringLiteral("gore 15, row 14: expected 87 N, expected beyond its limit, lot A-21"));
        m_panels.show({sample::ofLot(2, 1, 3)});
        QCOMPARE(field()->textOf({2, 1}), QStringLiteral("gore 2, row 1: not read, lot A-19"));
        QCOMPARE(m_panels.data(m_panels.index(0), PanelModel::LotRole), QVariant(3));
        QCOMPARE(m_panels.data(m_panels.index(0), PanelModel::LotNameRole), QVariant(QStringLiteral("A-19")));
    }
    void everyMarkAtOnceIsOneChangeToTheMap() {
        m_panels.show(sample::allExpected(5));
        QSignalSpy read(field(), &UnrolledEnvelope::marksChanged);
        auto marks = m_panels.marks();
        for (std::size_t number = 0; number < marks.size(); number += 2)
            marks[number].text = QStringLiteral("77");
        m_panels.show(marks);
        QCOMPARE(read.size(), 1);
    }

    // --- lots and forecasts, as they are drawn

    void everyTwoLotsDifferInGreyAndFurtherOnesBeginAnew_data() { sizes(); }
    void everyTwoLotsDifferInGreyAndFurtherOnesBeginAnew() {
        QFETCH(QSize, size);
        const auto strip = [&](int lot) { return drawn(sample::ofLot(1, 1, lot), size).copy(0, 0, 8, size.height()); };
        for (int a = 0; a <= lotTextures; ++a)
            for (int b = a + 1; b <= lotTextures; ++b) {
                const double share = difference(strip(a), strip(b));
                QVERIFY2(share > 0.08, qPrintable(QStringLiteral("%1 and %2: %3").arg(a).arg(b).arg(share)));
            }
        QCOMPARE(strip(lotTextures + 1), strip(1));
    }
    void theFigureKeepsClearOfTheStripAndInsideItsPanel_data() { sizes(); }
    void theFigureKeepsClearOfTheStripAndInsideItsPanel() {
        QFETCH(QSize, size);
        for (const int newtons : {133, 77, 888, 1888}) {
            auto mark = sample::expected(1, 1, newtons, 1.2);
            mark.lot = 1;
            QImage image(size + QSize(20, 20), QImage::Format_Grayscale8);
            image.fill(Qt::white);
            QPainter painter(&image);
            const QRect panel(QPoint(10, 10), size);
            drawPanelFigure(painter, panel, mark, MapTones{});
            painter.end();
            QVERIFY(inkIn(image, panel.adjusted(8, 1, 0, 0)) > 0);
            QCOMPARE(inkIn(image, image.rect()), inkIn(image, panel.adjusted(8, 1, 0, 0)));
        }
    }
    void aForecastIsNoReading_data() { sizes(); }
    void aForecastIsNoReading() {
        QFETCH(QSize, size);
        const auto kept = drawn(sample::expected(1, 1, 133, 1.2), size);
        const auto below = drawn(sample::expected(1, 1, 133, 0.8), size);
        QVERIFY(kept != drawn(sample::broke(1, 1, 133, 1.2), size)); // slanted
        QVERIFY(difference(below, kept) > 0.02);
        const auto solid = drawn(sample::broke(1, 1, 133, 0.8), size);
        const auto corner = [&](const QImage& panel) {
            return panel.copy(0, size.height() / 2, size.width() / 2, size.height() / 2);
        };
        QVERIFY(difference(corner(below), corner(solid)) > 0.02); // dashed
    }
    void aForecastsGroundIsOnTheScaleOfReadings() {
        const MapTones tones;
        for (const double share : {0.5, 1.0, 1.3, 2.0, 3.0})
            QCOMPARE(panelGround(sample::expected(1, 1, 1, share), tones),
                     panelGround(sample::broke(1, 1, 1, share), tones));
    }

    void pictures_data() {
        QTest::addColumn<QSize>("size");
        QTest::addColumn<bool>("dark");
        for (const QSize size : {QSize(900, 500), QSize(360, 420)})
            for (const bool dark : {false, true})
                QTest::addRow("%dx%d %s", size.width(), size.height(), dark ? "dark" : "light") << size << dark;
    }
    void pictures() {
        QFETCH(QSize, size);
        QFETCH(bool, dark);
        QVERIFY(theme()->setProperty("dark", dark));
        m_view->setColor(theme()->property("paper").value<QColor>());
        m_view->rootObject()->setProperty("phone", size.width() < 760);
        m_view->resize(size);
        m_view->requestActivate();
        QVERIFY(QTest::qWaitForWindowActive(m_view.get()));
        field()->forceActiveFocus(Qt::TabFocusReason);
        field()->choose(4, 13);
        const auto picture = grab();
        QCOMPARE(picture.size(), size);
        QDir().mkpath(QStringLiteral(PICTURES));
        const auto tone = dark ? QStringLiteral("dark") : QStringLiteral("light");
        QVERIFY(picture.save(
            QStringLiteral(PICTURES "/envelope-map-%1x%2-%3.png").arg(size.width()).arg(size.height()).arg(tone)));
        if (size.width() < 760) {
            m_view->rootObject()->setProperty("legendShown", true);
            QVERIFY(grab().save(QStringLiteral(PICTURES "/envelope-map-signs-%1.png").arg(tone)));
        }
        theme()->setProperty("dark", false);
    }
    void picturesOfAForecast_data() { pictures_data(); }
    void picturesOfAForecast() {
        QFETCH(QSize, size);
        QFETCH(bool, dark);
        QVERIFY(theme()->setProperty("dark", dark));
        m_view->setColor(theme()->property("paper").value<QColor>());
        const bool phone = size.width() < 760;
        auto* map = m_view->rootObject();
        map->setProperty("phone", phone);
        map->setProperty("forecast", true);
        QStringList lots;
        for (int lot = 1; lot <= lotTextures; ++lot)
            lots += QStringLiteral("A-%1").arg(16 + lot);
        QVERIFY(map->setProperty("lots", lots));
        m_panels.show(sample::allExpected(lotTextures));
        m_view->resize(size);
        field()->choose(4, 13);
        const auto tone = dark ? QStringLiteral("dark") : QStringLiteral("light");
        const auto file = [&](const QString& what) {
            return QStringLiteral(PICTURES "/envelope-forecast%1-%2-%3.png").arg(what).arg(size.width()).arg(tone);
        };
        QDir().mkpath(QStringLiteral(PICTURES));
        QVERIFY(grab().save(file({})));
        map->setProperty("legendShown", true);
        QVERIFY(!phone || grab().save(file(QStringLiteral("-signs"))));
        theme()->setProperty("dark", false);
    }
};

CROWNRING_TEST(EnvelopeMapWindowTest, QApplication)

}

#include "envelope_map_window_test.moc"
