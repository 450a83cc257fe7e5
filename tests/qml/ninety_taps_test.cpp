// SPDX-License-Identifier: GPL-3.0-or-later

/// The annual inspection of a balloon with four cylinders, 24 grab tests and 12 permeability readings, entered in the
/// real window from "it came in" to the signature. Every tap and every key is counted, but for the figures themselves;
/// the goal is 90 (tests/README.md keeps the figure).

#include "counting_hand.h"
#include "heard_warnings.h"
#include "program/places.h"
#include "screen/bench/inspection_desk.h"
#include "screen/bench/reading_desk.h"
#include "screen/bench/release_desk.h"
#include "screen/demo_house.h"
#include "screen/envelope/unrolled_envelope.h"
#include "test_class.h"

#include <QApplication>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QTest>

#include <algorithm>
#include <cmath>

namespace ninety_taps_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

/// Taps the panel of the envelope map that the plan asks for next.
bool tapChosenPanel(CountingHand& hand) {
    auto* map = hand.find(QStringLiteral("bench.map"));
    auto* sheet = map == nullptr ? nullptr : map->findChild<UnrolledEnvelope*>();
    if (sheet == nullptr)
        return false;
    const auto area = sheet->property("chosenArea").toRectF();
    return !area.isEmpty() && hand.tapAt(sheet->mapRectToScene(area).center().toPoint());
}

/// A figure that passes by what the type's manual states: a third of the most, or a quarter above the least.
QString passingFigure(const ReadingDesk& reading) {
    const auto& file = *reading.desk()->file();
    for (const auto& limit : file.limitsOf(*file.item(reading.reads().item)))
        if (limit.quantity == reading.reads().quantity)
            return QString::number(limit.most ? std::floor(limit.most->value() / 3)
                                              : std::ceil(limit.least->value() * 1.25));
    return QStringLiteral("1");
}

/// Where somebody stands among those who sign.
int placeOf(ReleaseDesk& release, const Signer& signer) {
    const auto& people = release.people()->choices();
    const auto at = std::ranges::find(people, QVariant::fromValue(signer), &Choice::of);
    return at == people.end() ? -1 : static_cast<int>(at - people.begin());
}

}

class NinetyTapsTest : public QObject {
    Q_OBJECT
private slots:
    void anAnnualTakesAtMostNinetyTaps() {
        QQuickStyle::setStyle(QStringLiteral("Basic"));
        useOwnFont();
        HeardWarnings warnings;
        DemoHouse demo;
        demo.house.habits.setPerson(QStringLiteral("insp. 14"));
        demo.house.habits.setInspector(QStringLiteral("insp. 14"));
        demo.house.habits.setStation(QStringLiteral("Ovelmere Balloon Rides"));
        QQmlApplicationEngine engine;
        QVERIFY(loadFrame(engine, demo.house));
        auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
        QVERIFY(window != nullptr && QTest::qWaitForWindowExposed(window));
        QVERIFY(demo.ready());
        QTest::qWait(300);
        window->requestActivate();
        auto* page = window->findChild<QObject*>(QStringLiteral("bench"));
        QVERIFY(page != nullptr);
        auto* desk = qobject_cast<InspectionDesk*>(page->property("desk").value<QObject*>());
        auto* reading = qobject_cast<ReadingDesk*>(page->property("readings").value<QObject*>());
        auto* release = qobject_cast<ReleaseDesk*>(page->property("release").value<QObject*>());
        QVERIFY(desk != nullptr && reading != nullptr && release != nullptr);
        CountingHand hand(*window);

        // It came in: QE-OVB has four cylinders.
        hand.key(Qt::Key_3, Qt::ControlModifier);
        QVERIFY(hand.tap(QStringLiteral("bench.open")));
        QTest::qWait(300);
        auto* balloons = hand.find(QStringLiteral("bench.visit.balloon"));
        QVERIFY(balloons != nullptr);
        auto* choices = balloons->property("model").value<ChoiceModel*>();
        QVERIFY(hand.pick(QStringLiteral("bench.visit.balloon"), choices->indexOf(QStringLiteral("QE-OVB"))));
        QTRY_VERIFY_WITH_TIMEOUT(hand.find(QStringLiteral("bench.visit.open"))->isEnabled(), 20'000);
        QVERIFY(hand.tap(QStringLiteral("bench.visit.open")));
        QTRY_VERIFY_WITH_TIMEOUT(desk->loaded() && desk->isOpen(), 10'000);
        const auto& items = desk->file()->items;
        QCOMPARE(std::ranges::count(items, ItemKind::Cylinder, &ItemFacts::kind), 4);

        // Readings.
        QVERIFY(hand.tap(QStringLiteral("bench.segment.readings")));
        for (int i = 0; i < 90 && reading->series()->choices().front().number > 0; ++i) {
            const auto before = desk->file()->inspection.readings.size();
            if (reading->asksTester() && reading->tester().isEmpty())
                QVERIFY(hand.pick(QStringLiteral("bench.tester"),
                                  reading->testers()->indexOf(QStringLiteral("reference set OL"))));
            if (reading->held() && reading->placed()) {
                QVERIFY(tapChosenPanel(hand));
            } else if (reading->held()) {
                QVERIFY(hand.tap(QStringLiteral("bench.held.take")));
            } else {
                QVERIFY(hand.into(QStringLiteral("bench.figure")));
                hand.type(reading->stepped() ? QStringLiteral("104") : passingFigure(*reading));
                hand.key(Qt::Key_Return);
                if (reading->stepped()) {
                    hand.type(QStringLiteral("110"));
                    hand.key(Qt::Key_Return);
                }
            }
            QTRY_VERIFY2_WITH_TIMEOUT(desk->file()->inspection.readings.size() == before + 1 && !desk->saving(),
                                      qPrintable(reading->title() + u' ' + reading->problem() + reading->question()),
                                      10'000);
            QTest::qWait(40);
        }
        const auto taken = [&](std::string_view quantity) {
            return std::ranges::count_if(desk->file()->inspection.readings,
                                         [&](const auto& said) { return said.body.quantity == quantity; });
        };
        QCOMPARE(taken("grab-strength"), 24);
        QCOMPARE(taken("air-permeability"), 12);
        const int withReadings = hand.count();

        // The checklist, part by part.
        QVERIFY(hand.tap(QStringLiteral("bench.segment.checklist")));
        for (int i = 0; i < 40 && desk->linesOpen() > 0; ++i) {
            QVERIFY(hand.tap(QStringLiteral("bench.rest")));
            QTRY_VERIFY_WITH_TIMEOUT(!desk->saving(), 10'000);
            QTest::qWait(60);
        }
        QCOMPARE(desk->linesOpen(), 0);
        const int withLines = hand.count();

        // The release.
        if (hand.find(QStringLiteral("bench.signer")) == nullptr)
            QVERIFY(hand.tap(QStringLiteral("bench.segment.release")));
        QTest::qWait(200);
        QVERIFY(hand.pick(QStringLiteral("bench.signer"),
                          placeOf(*release, {PersonId("insp. 14"), Capacity::OrganisationCertifyingStaff})));
        QTRY_VERIFY2_WITH_TIMEOUT(release->maySign(),
                                  qPrintable(release->refusals()->choices().empty()
                                                 ? QString()
                                                 : release->refusals()->choices().front().label),
                                  10'000);
        QTest::qWait(100);
        QVERIFY(hand.tap(QStringLiteral("bench.sign")));
        QTest::qWait(300);
        QVERIFY(hand.tap(QStringLiteral("bench.sign.confirm")));
        QTRY_VERIFY_WITH_TIMEOUT(desk->loaded() && !desk->isOpen(), 10'000);
        QVERIFY(desk->file()->inspection.closed->body.outcome == Outcome::Released);

        qInfo("taps and keys beyond the figures: %d (%d with the readings, %d with the lines)", hand.count(),
              withReadings, withLines);
        QVERIFY2(hand.count() <= 90, qPrintable(QString::number(hand.count())));
        QTest::qWait(300);
        QCOMPARE(HeardWarnings::all(), QStringList());
    }
};

CROWNRING_TEST(NinetyTapsTest, QApplication)

}

#include "ninety_taps_test.moc"
