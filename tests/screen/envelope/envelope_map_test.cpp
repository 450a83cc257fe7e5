// SPDX-License-Identifier: GPL-3.0-or-later

/// The envelope map without a window: where a tap lands, where the keys lead, what a panel says, and that its signs can
/// be told in grey.

#include "screen/envelope/drawn_panel.h"
#include "screen/envelope/sample_panels.h"
#include "screen/envelope/unrolled_envelope.h"
#include "screen/told_in_grey.h"
#include "test_class.h"

#include <QAbstractItemModelTester>
#include <QImage>
#include <QPainter>
#include <QSignalSpy>
#include <QTest>
#include <rapidcheck.h>

#include <set>

namespace envelope_map_test {

using namespace crownring::screen;
using sample::difference;
using sample::drawn;

namespace {

constexpr PanelStep allSteps[] = {PanelStep::Left,      PanelStep::Right,    PanelStep::ToCrown, PanelStep::ToMouth,
                                  PanelStep::FirstGore, PanelStep::LastGore, PanelStep::Crown,   PanelStep::Mouth};

PanelGrid anyGrid() {
    PanelGrid grid;
    grid.gores = *rc::gen::inRange(1, UnrolledEnvelope::mostGores + 1);
    grid.rows = *rc::gen::inRange(1, UnrolledEnvelope::mostRows + 1);
    grid.panel = QSizeF(*rc::gen::inRange(28, 97), *rc::gen::inRange(28, 97));
    grid.vent = *rc::gen::inRange(0, 30);
    return grid;
}

Panel anyPanel(const PanelGrid& grid) {
    return {*rc::gen::inRange(1, grid.gores + 1), *rc::gen::inRange(1, grid.rows + 1)};
}

/// The same figure with every sign that there is.
std::vector<PanelMark> everySign() {
    auto held = sample::held(1, 1, 133, 1.2);
    auto value = sample::broke(1, 1, 133, 1.2);
    auto fails = sample::broke(1, 1, 133, 0.8);
    auto repaired = value;
    repaired.repaired = true;
    auto defect = value;
    defect.defect = true;
    auto again = value;
    again.asked = true;
    auto often = value;
    often.count = 3;
    return {held, value, fails, repaired, defect, again, often, sample::wanted(1, 1), PanelMark{}};
}

}

class EnvelopeMapTest : public QObject {
    Q_OBJECT

private:
    PanelModel m_panels;
    std::unique_ptr<UnrolledEnvelope> m_map;

    void press(int key, Qt::KeyboardModifiers modifiers = {}) {
        QKeyEvent event(QEvent::KeyPress, key, modifiers);
        QCoreApplication::sendEvent(m_map.get(), &event);
    }
    Panel chosen() const { return {m_map->chosenGore(), m_map->chosenRow()}; }

private slots:
    void init() {
        m_panels.show(sample::halfDone());
        m_map = std::make_unique<UnrolledEnvelope>();
        m_map->setPanels(&m_panels);
        m_map->setGores(sample::gores);
        m_map->setRows(sample::rows);
    }

    // --- where things are

    void everyPointOfAPanelIsThatPanel() {
        QVERIFY(rc::check("a point inside a panel's area finds it", [] {
            const auto grid = anyGrid();
            const auto panel = anyPanel(grid);
            const auto area = grid.area(panel);
            const QPointF point(area.left() + area.width() * *rc::gen::inRange(1, 100) / 100.0,
                                area.top() + area.height() * *rc::gen::inRange(1, 100) / 100.0);
            RC_ASSERT(grid.at(point) == std::optional(panel));
            RC_ASSERT(grid.field().contains(area));
        }));
    }
    void besideTheFieldTheNearestPanelCountsWithinAFingersSlop() {
        const PanelGrid grid{24, 14, {44, 44}, 24};
        QCOMPARE(grid.at({-5, 30}), std::nullopt);
        QVERIFY(grid.at({-5, 30}, 8) == std::optional(Panel{1, 14}));
        QVERIFY(grid.at({24 * 44 + 5, 24 + 14 * 44 + 5}, 8) == std::optional(Panel{24, 1}));
        QCOMPARE(grid.at({500, 10}, 8), std::nullopt); // the vent is no panel
    }
    void theMouthIsBelowAndTheCrownAbove() {
        const PanelGrid grid{24, 14, {44, 44}, 24};
        QCOMPARE(grid.area({1, 14}).topLeft(), QPointF(0, 24));
        QCOMPARE(grid.area({24, 1}).bottomRight(), QPointF(grid.size().width(), grid.size().height()));
    }
    void anEnvelopeOfNoGoresHasNoPanels() {
        const PanelGrid grid{0, 14, {44, 44}, 24};
        QCOMPARE(grid.size(), QSizeF(0, 0));
        QCOMPARE(grid.at({1, 1}, 100), std::nullopt);
    }
    void panelsFillTheRoomUntilTheyWouldBeTooSmallToHit() {
        QCOMPARE(panelLength(900, 24, 28, 88), 37.0);
        QCOMPARE(panelLength(360, 24, 44, 88), 44.0);
        QCOMPARE(panelLength(900, 8, 28, 88), 88.0);
        QCOMPARE(panelLength(0, 0, 44, 88), 44.0);
        m_map->setLeastPanel(44);
        m_map->setRoomWidth(360);
        QCOMPARE(m_map->panelWidth(), 44.0);
        QCOMPARE(m_map->implicitWidth(), 24 * 44.0);
    }

    // --- keys

    void noKeyLeavesTheEnvelope() {
        QVERIFY(rc::check("any walk stays inside", [] {
            const auto grid = anyGrid();
            auto at = anyPanel(grid);
            for (const int number : *rc::gen::container<std::vector<int>>(30, rc::gen::inRange(0, 8))) {
                at = grid.moved(at, allSteps[number]);
                RC_ASSERT(grid.holds(at));
            }
        }));
    }
    void sidewaysGoesRoundAsTheEnvelopeDoes() {
        m_map->choose(1, 5);
        press(Qt::Key_Left);
        QCOMPARE(chosen(), (Panel{24, 5}));
        press(Qt::Key_Right);
        QCOMPARE(chosen(), (Panel{1, 5}));
    }
    void upEndsAtTheCrownAndDownAtTheMouth() {
        m_map->choose(3, 13);
        press(Qt::Key_Up);
        press(Qt::Key_Up);
        QCOMPARE(chosen(), (Panel{3, 14}));
        press(Qt::Key_PageDown);
        press(Qt::Key_Down);
        QCOMPARE(chosen(), (Panel{3, 1}));
    }
    void returnAndSpaceTapTheChosenPanel() {
        QSignalSpy tapped(m_map.get(), &UnrolledEnvelope::tapped);
        press(Qt::Key_Return);
        QCOMPARE(tapped.size(), 0); // nothing is chosen
        m_map->choose(3, 12);
        press(Qt::Key_Return);
        press(Qt::Key_Space);
        press(Qt::Key_Enter, Qt::KeypadModifier);
        QCOMPARE(tapped.size(), 3);
        QCOMPARE(tapped.at(0), (QVariantList{3, 12}));
    }
    void keysOfOthersPassBy() {
        m_map->choose(3, 12);
        QKeyEvent event(QEvent::KeyPress, Qt::Key_Left, Qt::AltModifier);
        QCoreApplication::sendEvent(m_map.get(), &event);
        QVERIFY(!event.isAccepted());
        QCOMPARE(chosen(), (Panel{3, 12}));
    }

    // --- what it says

    void aPanelSaysWhereItIsAndWhatWasRead() {
        m_map->choose(1, 14);
        QCOMPARE(m_map->chosenText(), QStringLiteral("gore 1, row 14: held at 133 N"));
        m_map->choose(4, 13);
        QCOMPARE(m_map->chosenText(), QStringLiteral("gore 4, row 13: broke at 98 N, fails its limit"));
        m_map->choose(9, 9);
        QCOMPARE(m_map->chosenText(), QStringLiteral("gore 9, row 9: not read, a reading is asked for, repaired"));
        m_map->choose(2, 1);
        QCOMPARE(m_map->chosenText(), QStringLiteral("gore 2, row 1: not read"));
        m_map->choose(25, 1);
        QCOMPARE(m_map->chosenText(), QString());
    }
    void aNewReadingIsSaidAtOnce() {
        m_map->choose(15, 14);
        QSignalSpy said(m_map.get(), &UnrolledEnvelope::chosenTextChanged);
        auto marks = m_panels.marks();
        for (auto& mark : marks)
            if (mark.gore == 15 && mark.row == 14)
                mark = sample::held(15, 14, 140, 140 / 133.0);
        const int before = m_map->asked();
        m_panels.show(marks);
        QVERIFY(!said.isEmpty());
        QCOMPARE(m_map->chosenText(), QStringLiteral("gore 15, row 14: held at 140 N"));
        QCOMPARE(m_map->asked(), before - 1);
    }
    void whatThePlanAsksForIsVisitedOnceAndRound() {
        std::set<std::pair<int, int>> visited;
        const int asked = m_map->asked();
        QCOMPARE(asked, 6); // every other gore from 15 to 23 at the crown, and the repair
        for (int n = 0; n < asked; ++n) {
            QVERIFY(m_map->chooseNextAsked());
            visited.emplace(m_map->chosenGore(), m_map->chosenRow());
        }
        QCOMPARE(static_cast<int>(visited.size()), asked);
        const auto last = chosen();
        QVERIFY(m_map->chooseNextAsked());
        QVERIFY(!(chosen() == last));
        m_panels.show({});
        QVERIFY(!m_map->chooseNextAsked());
    }
    void marksThatTheEnvelopeHasNoPanelForAreCountedNotDrawn() {
        m_panels.show({sample::held(25, 1, 133, 1), sample::held(1, 15, 133, 1), sample::held(0, 1, 133, 1),
                       sample::held(24, 14, 133, 1)});
        QCOMPARE(m_map->outside(), 3);
    }
    void fewerGoresLetGoOfAChosenPanelThatIsGone() {
        m_map->choose(24, 14);
        m_map->setGores(12);
        QCOMPARE(chosen(), Panel{});
        QVERIFY(m_map->chosenText().isEmpty());
    }
    void theListKeepsTheRulesOfModelsAndOneMarkAPanel() {
        const QAbstractItemModelTester tester(&m_panels, QAbstractItemModelTester::FailureReportingMode::QtTest);
        m_panels.show({sample::held(1, 1, 133, 1), sample::held(1, 1, 99, 0.7)});
        QCOMPARE(m_panels.count(), 1);
        QCOMPARE(m_panels.data(m_panels.index(0), PanelModel::TextRole).toString(), QStringLiteral("133"));
    }
    void aModelThatGoesAwayLeavesAnEmptyMap() {
        auto passing = std::make_unique<PanelModel>();
        passing->show(sample::halfDone());
        m_map->setPanels(passing.get());
        m_map->choose(1, 14);
        passing.reset();
        QCOMPARE(m_map->chosenText(), QStringLiteral("gore 1, row 14: not read"));
        QCOMPARE(m_map->asked(), 0);
    }

    // --- its signs

    void everyTwoSignsDifferInGrey_data() {
        QTest::addColumn<QSize>("size");
        QTest::newRow("the least on a desk") << QSize(28, 28);
        QTest::newRow("on a phone") << QSize(44, 44);
        QTest::newRow("in the legend") << QSize(32, 28);
    }
    void everyTwoSignsDifferInGrey() {
        QFETCH(QSize, size);
        const auto signs = everySign();
        for (std::size_t a = 0; a < signs.size(); ++a)
            for (std::size_t b = a + 1; b < signs.size(); ++b) {
                const double share = difference(drawn(signs[a], size), drawn(signs[b], size));
                QVERIFY2(share > 0.012, qPrintable(QStringLiteral("%1 and %2: %3").arg(a).arg(b).arg(share)));
            }
    }
    void theGroundFadesTowardTheLimitAndPaperMeansNotRead() {
        MapTones tones;
        tones.weak = QColor(220, 220, 220);
        tones.strong = QColor(120, 120, 120);
        const auto ground = [&](double share) { return panelGround(sample::broke(1, 1, 1, share), tones); };
        int before = 256;
        for (const double share : {1.0, 1.25, 1.5, 1.75, 2.0}) {
            QVERIFY(ground(share).red() < before);
            before = ground(share).red();
        }
        QCOMPARE(ground(1.0), tones.weak);
        QCOMPARE(ground(7.0), tones.strong);
        QCOMPARE(ground(0.5), tones.weak);
        QCOMPARE(ground(std::nan("")), tones.weak);
        QCOMPARE(panelGround(sample::wanted(1, 1), tones), tones.paper);
    }
    void aLongFigureStaysInsideItsPanel() {
        auto mark = sample::broke(1, 1, 1, 1.5);
        mark.text = QStringLiteral("1 234.5678");
        QImage image(QSize(48, 48), QImage::Format_Grayscale8);
        image.fill(Qt::white);
        QPainter painter(&image);
        drawPanelSigns(painter, QRectF(10, 10, 28, 28), mark, MapTones{});
        painter.end();
        for (int y = 0; y < 48; ++y)
            for (int x = 0; x < 48; ++x)
                if (x < 10 || x >= 38)
                    QCOMPARE(qGray(image.pixel(x, y)), 255);
    }
};

CROWNRING_TEST(EnvelopeMapTest, QGuiApplication)

}

#include "envelope_map_test.moc"
