// SPDX-License-Identifier: GPL-3.0-or-later

/// The envelope map in a window, drawn without a graphics card: what changes is what was changed, and pictures for
/// people to look at.

#include "envelope_node.h"
#include "heard_warnings.h"
#include "places.h"
#include "qml/sample_panels.h"
#include "unrolled_envelope.h"

#include <QApplication>
#include <QDir>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QQuickItem>
#include <QQuickStyle>
#include <QQuickView>
#include <QTest>

using namespace crownring::screen;

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

private slots:
    void initTestCase() {
        QQuickStyle::setStyle(QStringLiteral("Basic"));
        useOwnFont();
        m_warnings = std::make_unique<HeardWarnings>();
    }
    void init() {
        m_panels.show(sample::halfDone());
        m_view = std::make_unique<QQuickView>();
        addPlaces(*m_view->engine());
        m_view->setResizeMode(QQuickView::SizeRootObjectToView);
        m_view->setInitialProperties({{QStringLiteral("panels"), QVariant::fromValue<PanelModel*>(&m_panels)},
                                      {QStringLiteral("gores"), sample::gores},
                                      {QStringLiteral("rows"), sample::rows}});
        m_view->setSource(QUrl(QStringLiteral("qrc:/qt/qml/Crownring/Parts/EnvelopeMap.qml")));
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
    void imagesThatNoPanelShowsAnyMoreAreLetGo() {
        const PanelGrid grid{sample::gores, sample::rows, {28, 28}, 24};
        const qsizetype panels = grid.gores * grid.rows;
        EnvelopeNode node(*m_view, grid, MapTones{});
        qsizetype most = 0;
        // Every panel shows another figure at each step, as a forecast that slides.
        for (int step = 0; step < 12; ++step) {
            for (int gore = 1; gore <= grid.gores; ++gore)
                for (int row = 1; row <= grid.rows; ++row) {
                    const auto mark = sample::broke(gore, row, 1000 * step + gore * grid.rows + row, 1.5);
                    node.show({gore, row}, &mark);
                }
            node.forgetUnused();
            most = std::max(most, node.imagesKept());
        }
        QVERIFY2(most <= panels + EnvelopeNode::imagesSpare, qPrintable(QString::number(most)));
        QVERIFY(most >= panels);
    }
    void panelsWithTheSameSignsShareAnImage() {
        EnvelopeNode node(*m_view, PanelGrid{10, 1, {28, 28}, 0}, MapTones{});
        for (int gore = 1; gore <= 10; ++gore) {
            const auto mark = sample::held(gore, 1, 133, 1 + gore / 10.0); // the ground differs, the signs do not
            node.show({gore, 1}, &mark);
        }
        QCOMPARE(node.imagesKept(), 1);
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
};

int main(int argc, char** argv) {
    QApplication application(argc, argv);
    EnvelopeMapWindowTest test;
    return QTest::qExec(&test, argc, argv);
}
#include "envelope_map_window_test.moc"
