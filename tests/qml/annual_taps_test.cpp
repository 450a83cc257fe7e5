// SPDX-License-Identifier: GPL-3.0-or-later

/// The annual inspection of a balloon with four cylinders, 24 grab tests and 12 permeability readings, entered in the
/// real window from "it came in" to the signature. Every tap and every key is counted, but for the figures themselves
/// and the registration; the goal is 70 (tests/README.md keeps the figure).

#include "acts/own_code.h"
#include "acts/post.h"
#include "counting_hand.h"
#include "heard_warnings.h"
#include "program/places.h"
#include "record/entry_json.h"
#include "record/new_id.h"
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

namespace annual_taps_test {

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

class AnnualTapsTest : public QObject {
    Q_OBJECT
private slots:
    void anAnnualTakesAtMostSoManyTaps() {
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
        // The shop has equipment for altimeters too, which the demo lacks.
        const auto shop = entryFrom(std::string_view(
            R"({"entry":"tester.calibrated","on":"2026-10-13","by":"calibration house 2","tester":"altimeter set OL",)"
            R"("what":"altimeter and variometer test set","until":"2027-10-31"})"));
        QVERIFY(shop.has_value());
        auto posted = demo.house.desk.ask([entry = *shop](Record& record) {
            auto numbered = entry;
            numbered.id = newEntryId();
            CodeSetting code;
            code.signatory = PersonId("insp. 14");
            code.code = "basket wire 7";
            code.on = CivilDate::parse("2026-10-13").value();
            return crownring::post(record, record, {{numbered, 0}}, {}).has_value() &&
                   setCode(record, record, code).has_value();
        });
        posted.waitForFinished();
        QVERIFY(posted.result());
        QTest::qWait(300);
        window->requestActivate();
        auto* page = window->findChild<QObject*>(QStringLiteral("bench"));
        QVERIFY(page != nullptr);
        QTRY_VERIFY_WITH_TIMEOUT(page->property("release").value<QObject*>() != nullptr, 30'000);
        auto* desk = qobject_cast<InspectionDesk*>(page->property("desk").value<QObject*>());
        auto* reading = qobject_cast<ReadingDesk*>(page->property("readings").value<QObject*>());
        auto* release = qobject_cast<ReleaseDesk*>(page->property("release").value<QObject*>());
        QVERIFY(desk != nullptr && reading != nullptr && release != nullptr);
        CountingHand hand(*window);

        // It came in: QE-OVB has four cylinders. Its registration leads to its page, and from there.
        hand.key(Qt::Key_K, Qt::ControlModifier);
        auto* search = window->findChild<QObject*>(QStringLiteral("search"));
        QTRY_VERIFY_WITH_TIMEOUT(search != nullptr && search->property("opened").toBool(), 30'000);
        hand.type(QStringLiteral("QE-OVB"));
        QTest::qWait(600);
        hand.key(Qt::Key_Return);
        QTRY_VERIFY_WITH_TIMEOUT(hand.find(QStringLiteral("balloon.inspect")) != nullptr, 30'000);
        QTest::qWait(300);
        QVERIFY(hand.tap(QStringLiteral("balloon.inspect")));
        QTRY_VERIFY_WITH_TIMEOUT(hand.find(QStringLiteral("bench.visit.open")) != nullptr &&
                                     hand.find(QStringLiteral("bench.visit.open"))->isEnabled(),
                                 30'000);
        QTest::qWait(300);
        QVERIFY(hand.tap(QStringLiteral("bench.visit.open")));
        QTRY_VERIFY_WITH_TIMEOUT(desk->loaded() && desk->isOpen(), 30'000);
        const auto& items = desk->file()->items;
        QCOMPARE(std::ranges::count(items, ItemKind::Cylinder, &ItemFacts::kind), 4);

        const int withOpening = hand.count();

        // Part by part: its readings, each series leading to the next and the last one back to the lines; the rest of
        // the lines, then what wants a look of its own, each by itself.
        auto* pane = page->findChild<QObject*>(QStringLiteral("bench.inspection"));
        QVERIFY(pane != nullptr);
        const auto leaf = [&] { return pane->property("leaf").toInt(); };
        const auto read = [&] {
            const auto before = desk->file()->inspection.readings.size();
            bool handed = true;
            if (reading->needsTester() && reading->tester().isEmpty())
                handed = hand.pick(QStringLiteral("bench.tester"),
                                   reading->testers()->indexOf(QStringLiteral("reference set OL")));
            if (reading->held() && reading->placed()) {
                handed = handed && tapChosenPanel(hand);
            } else if (reading->held()) {
                const auto all = QStringLiteral("bench.held.all");
                handed = handed && hand.tap(hand.find(all) ? all : QStringLiteral("bench.held.take"));
            } else if (handed && hand.into(QStringLiteral("bench.figure"))) {
                hand.type(reading->stepped() ? QStringLiteral("104-110") : passingFigure(*reading));
                // Relief valves of one delivery are of one age.
                hand.key(Qt::Key_Return,
                         reading->reads().quantity == "relief-valve-age" ? Qt::ControlModifier : Qt::NoModifier);
            }
            return handed &&
                   QTest::qWaitFor([&] { return desk->file()->inspection.readings.size() > before && !desk->saving(); },
                                   30'000);
        };
        const auto looks = [&] {
            for (const auto& row : std::vector(desk->lines()->rows()))
                if (row.state == 0 && row.apart == QStringLiteral("wants a look of its own")) {
                    const auto cell = QStringLiteral("bench.cell.%1").arg(row.at);
                    const auto done = QStringLiteral("bench.line.%1.done").arg(row.at);
                    if (!hand.tap(hand.find(cell) ? cell : done))
                        return false;
                }
            return QTest::qWaitFor([&] { return !desk->saving(); }, 30'000);
        };
        int readings = 0;
        for (int i = 0; i < 200 && leaf() != 3; ++i) {
            const int before = hand.count();
            if (leaf() == 1) {
                QVERIFY2(read(), qPrintable(reading->title() + u' ' + reading->problem() + reading->question()));
                QTest::qWait(150);
                readings += hand.count() - before;
                continue;
            }
            QVERIFY(hand.tap(QStringLiteral("bench.rest")));
            QTRY_VERIFY_WITH_TIMEOUT(!desk->saving(), 30'000);
            QTest::qWait(60);
            if (leaf() == 0)
                QVERIFY(looks());
            QTest::qWait(60);
        }
        const auto taken = [&](std::string_view quantity) {
            return std::ranges::count_if(desk->file()->inspection.readings,
                                         [&](const auto& said) { return said.body.quantity == quantity; });
        };
        QCOMPARE(taken("grab-strength"), 24);
        QCOMPARE(taken("air-permeability"), 12);
        QCOMPARE(taken("relief-valve-age"), 4);
        QTRY_COMPARE(desk->linesOpen(), 0);
        const int withLooks = hand.count();

        // The release.
        if (hand.find(QStringLiteral("bench.signer")) == nullptr)
            QVERIFY(hand.tap(QStringLiteral("bench.segment.release")));
        QTest::qWait(200);
        const int signer = placeOf(*release, {PersonId("insp. 14"), Capacity::OrganisationCertifyingStaff});
        if (release->signerAt() != signer) // the bench's inspector is proposed
            QVERIFY(hand.pick(QStringLiteral("bench.signer"), signer));
        QTRY_VERIFY2_WITH_TIMEOUT(release->maySign(),
                                  qPrintable(release->refusals()->choices().empty()
                                                 ? QString()
                                                 : release->refusals()->choices().front().label),
                                  30'000);
        QTest::qWait(100);
        QVERIFY(hand.tap(QStringLiteral("bench.sign")));
        // The keyboard stands in the field of the code, which was set long before; it is not counted, as no figure is.
        QTRY_VERIFY_WITH_TIMEOUT(hand.find(QStringLiteral("code.own")) != nullptr &&
                                     hand.find(QStringLiteral("code.own"))->hasActiveFocus(),
                                 30'000);
        hand.type(QStringLiteral("basket wire 7"));
        QTRY_VERIFY_WITH_TIMEOUT(release->code()->isReady(), 30'000);
        QTest::qWait(300);
        const auto* confirm = hand.find(QStringLiteral("bench.sign.confirm"));
        QTRY_VERIFY_WITH_TIMEOUT(confirm != nullptr && confirm->isEnabled(), 30'000); // it may be asked anew
        QVERIFY(hand.tap(QStringLiteral("bench.sign.confirm")));
        QTRY_VERIFY_WITH_TIMEOUT(desk->loaded() && !desk->isOpen(), 30'000);
        QVERIFY(desk->file()->inspection.closed->body.outcome == Outcome::Released);

        qInfo("taps and keys beyond the figures: %d (%d to open it, %d for the readings, %d before the release); %s",
              hand.count(), withOpening, readings, withLooks, qPrintable(hand.whereTo()));
        QVERIFY2(hand.count() <= 70, qPrintable(QString::number(hand.count())));
        QTest::qWait(300);
        QCOMPARE(HeardWarnings::all(), QStringList());
    }
};

CROWNRING_TEST(AnnualTapsTest, QApplication)

}

#include "annual_taps_test.moc"
