// SPDX-License-Identifier: GPL-3.0-or-later

/// The desks of the bench, driven as a hand would: one inspection from its opening to the signature; and random walks
/// over everything that can be pressed, none of which may end in a release while a defect is open that bars flight.

#include "answers/bench_file.h"
#include "bench_hands.h"
#include "rules/due/defects.h"
#include "screen/bench/bench_place.h"
#include "screen/bench/inspection_desk.h"
#include "screen/bench/reading_desk.h"
#include "screen/bench/release_desk.h"
#include "screen/bench/small_bench.h"
#include "screen/bench/visit_opening.h"
#include "screen/demo_house.h"
#include "test_class.h"

#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <random>

namespace bench_walk_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

const Signer inspector{PersonId("insp. A"), Capacity::IndependentCertifyingStaff};

bool mayNotBeReleased(const BenchFile& file) {
    for (const auto& item : file.items)
        for (const auto& defect : openDefects(item))
            if (bars(defect, item, file.on))
                return true;
    return false;
}

/// What a foreman does now and then: every defect mended, every line looked at, the right person asked to sign.
void tidy(Desks& desks) {
    std::vector<Body> cleared;
    const auto visit = desks.inspection.file()->inspection.id;
    for (const auto& item : desks.inspection.file()->items)
        for (const auto& open : openDefects(item)) {
            cleared.emplace_back(RepairMade{item.id, "a new panel", {}, {}, {}, {}, open.found->defect, visit});
            for (const auto& read : desks.inspection.file()->inspection.readings)
                if (read.id == open.found->failed) { // in its place again, and well
                    auto again = read.body;
                    again.held = false;
                    again.confirmed = true;
                    again.value = again.quantity == "grab-strength" ? 180 : again.quantity == "tell-tale" ? 104 : 8;
                    again.below = again.quantity == "tell-tale" ? std::optional(110.0) : std::nullopt;
                    cleared.emplace_back(std::move(again));
                }
            cleared.emplace_back(DefectCleared{open.found->defect, item.id, "mended", {}, visit});
        }
    desks.inspection.post(std::move(cleared));
    desks.settle();
    desks.looksAtEverything();
    desks.release.setOutcome(0);
    desks.release.setSigner(inspector);
    static_cast<void>(QTest::qWaitFor([&] { return desks.release.maySign(); }, 3000));
}

/// Presses one thing at random.
/// @param reads figures too: a wrong one that nobody takes back bars every release
void press(Desks& desks, std::mt19937& dice, bool reads) {
    const auto roll = [&](int sides) { return static_cast<int>(dice() % static_cast<unsigned>(sides)); };
    const auto some = [&](const ChoiceModel& model) {
        return model.choices().empty() ? QString()
                                       : model.choices()[static_cast<std::size_t>(roll(model.count()))].value;
    };
    const auto file = desks.inspection.file();
    auto which = roll(14);
    if (!reads && which >= 3 && which <= 7)
        which += 6;
    switch (which) {
    case 0:
        if (roll(3) == 0)
            return desks.inspection.leaveOut(roll(12), roll(whyNotCount), QStringLiteral("page 6"));
        return desks.inspection.settle(roll(12), roll(2));
    case 1:
        return desks.inspection.settleRest();
    case 2:
        return desks.inspection.setPartAt(roll(std::max(1, desks.inspection.parts()->count())));
    case 3:
        return desks.reading.setCurrent(roll(std::max(1, desks.reading.series()->count())));
    case 4:
        return desks.reading.tap(1 + roll(12), 1 + roll(10));
    case 5:
        return desks.reading.enter(QString::number(roll(200)), roll(2) == 0 ? QString() : QString::number(roll(300)));
    case 6:
        return roll(2) == 0 ? desks.reading.stand() : desks.reading.letGo();
    case 7:
        return desks.reading.takeBack();
    case 8: {
        DefectFound found;
        found.item = file->items.front().id;
        found.what = "torn";
        found.severity = roll(2) == 0 ? Severity::Barring : Severity::Minor;
        found.inspection = file->inspection.id;
        return desks.inspection.post({std::move(found)});
    }
    case 9:
        if (const auto defect = some(*desks.inspection.defects()); !defect.isEmpty())
            return desks.inspection.post({DefectCleared{
                DefectId(defect.toStdString()), file->items.front().id, "mended", {}, file->inspection.id}});
        return;
    case 10:
        if (const auto defect = some(*desks.inspection.defects()); !defect.isEmpty()) {
            const char* who = std::array{"insp. A", "pilot B", "insp. C"}[static_cast<std::size_t>(roll(3))];
            return desks.inspection.post({DefectDeferred{DefectId(defect.toStdString()),
                                                         file->items.front().id,
                                                         "waits",
                                                         CivilDate::parse("2026-12-24").value(),
                                                         {},
                                                         PersonId(who),
                                                         file->inspection.id}});
        }
        return;
    case 11:
        return desks.release.setSignerAt(roll(std::max(1, desks.release.people()->count())));
    case 12:
        return desks.release.setOutcome(roll(2));
    default:
        return desks.signs();
    }
}

}

class BenchWalkTest : public QObject {
    Q_OBJECT
private slots:
    void anInspectionFromOpeningToSignature() {
        Shop shop;
        shop.house.habits.setInspector(QStringLiteral("a mate")); // whom the record lets sign nothing
        QVERIFY(shop.ready());
        Desks desks(shop.house);
        QVERIFY(desks.open());
        QCOMPARE(desks.opening.visit(), QStringLiteral("part-ml-inspection"));
        QVERIFY(desks.inspection.linesOpen() > 30);
        desks.reads();
        desks.looksAtEverything();
        QCOMPARE(desks.inspection.linesOpen(), 0);
        QVERIFY(!desks.release.maySign()); // nobody is named yet
        const auto nobodySigns = [&] {
            const auto& sections = desks.release.sections()->choices();
            return std::ranges::any_of(sections,
                                       [](const Choice& section) {
                                           return section.detail == QStringLiteral("nobody is chosen yet");
                                       }) &&
                   std::ranges::none_of(sections, [](const Choice& section) {
                       return section.detail.contains(QStringLiteral("Signing as"));
                   });
        };
        QTRY_VERIFY_WITH_TIMEOUT(nobodySigns(), 30'000);
        desks.release.setSigner(Signer{PersonId("pilot B"), Capacity::PilotOwner});
        // Part-ML Appendix II(b)(9), read: the 100-h/annual check is not the pilot-owner's to release.
        const auto isForbidden = [&] {
            return std::ranges::any_of(desks.release.refusals()->choices(), [](const Choice& refusal) {
                return refusal.detail.contains(QStringLiteral("(b)(9)"));
            });
        };
        QTRY_VERIFY_WITH_TIMEOUT(isForbidden(), 30'000);
        QVERIFY(!desks.release.maySign());
        desks.release.setSigner(inspector);
        QTRY_VERIFY2(desks.release.maySign(), qPrintable(desks.release.refusals()->choices().empty()
                                                             ? QString()
                                                             : desks.release.refusals()->choices().front().label));
        QVERIFY(desks.release.statement().startsWith(QStringLiteral("Certifies that the work specified")));
        QSignalSpy done(&desks.release, &ReleaseDesk::signedNow);
        desks.signs();
        QTRY_COMPARE_WITH_TIMEOUT(done.size(), 1, 30'000);
        QTRY_VERIFY_WITH_TIMEOUT(!desks.inspection.isOpen(), 30'000);
        QTRY_VERIFY_WITH_TIMEOUT(desks.release.dueNext()->count() > 0, 30'000);
        // Locked: another word on a line is refused, and nothing of it is kept.
        const auto lines = desks.inspection.file()->inspection.lines.size();
        desks.inspection.settle(0, 2);
        desks.settle();
        QCOMPARE(desks.inspection.file()->inspection.lines.size(), lines);
    }

    void aFailingReadingBringsADefectThatBarsTheRelease() {
        Shop shop;
        QVERIFY(shop.ready());
        Desks desks(shop.house);
        QVERIFY(desks.open());
        desks.reading.setCurrent(0);
        QVERIFY(desks.reading.canHold());
        desks.reading.setHeld(false);
        desks.reading.tap(3, 10);
        desks.reading.enter(QStringLiteral("98"));
        desks.settle();
        QCOMPARE(desks.inspection.barring(), 1);
        QTRY_COMPARE_WITH_TIMEOUT(shop.house.fleet.sheet()->headlineOf(Registration("QE-SML")).row->state.standing,
                                  Standing::Lapsed, 30'000);
        // A slip of the decimal is questioned, and not kept until somebody stands by it.
        desks.reading.setHeld(false);
        desks.reading.tap(4, 10);
        desks.reading.enter(QStringLiteral("1334"));
        QVERIFY(desks.reading.question().contains(QStringLiteral("133.4")));
        const auto taken = desks.inspection.file()->inspection.readings.size();
        desks.reading.letGo();
        desks.settle();
        QCOMPARE(desks.inspection.file()->inspection.readings.size(), taken);
    }

    void theBenchWritesAsItsInspector() {
        Shop shop;
        shop.house.habits.setPerson(QStringLiteral("pilot 7")); // who filled another form last
        QVERIFY(shop.ready());
        shop.house.habits.setInspector(QStringLiteral("insp. A"));
        Desks desks(shop.house);
        QVERIFY(desks.open());
        desks.reading.setCurrent(0);
        QVERIFY2(desks.reading.terms().startsWith(
                     QStringLiteral("by insp. A · grab 1 (what it measures is not said) · held at 133.4 N")),
                 qPrintable(desks.reading.terms()));
        desks.reading.tap(3, 10);
        desks.settle();
        const auto& readings = desks.inspection.file()->inspection.readings;
        QCOMPARE(readings.size(), std::size_t{1});
        const auto written = shop.ask([id = readings.front().id](Record& record) { return record.line(id); });
        QVERIFY(written && *written);
        QCOMPARE(nowOf(**written).by, std::string("insp. A"));
    }

    void nothingIsWrittenAtABenchWithoutAnInspector() {
        Shop shop;
        QVERIFY(shop.ready());
        shop.house.habits.setInspector({});
        Desks desks(shop.house);
        QVERIFY(desks.open());
        desks.reading.setCurrent(0);
        desks.reading.tap(3, 10);
        QCOMPARE(desks.reading.problem(), InspectionDesk::whoFirst());
        desks.inspection.settle(0, 1);
        desks.settle();
        QCOMPARE(desks.inspection.problem(), InspectionDesk::whoFirst());
        QVERIFY(desks.inspection.file()->inspection.readings.empty());
        QVERIFY(desks.inspection.file()->inspection.lines.empty());
        desks.inspection.setInspector(QStringLiteral("insp. A"));
        QVERIFY(desks.inspection.problem().isEmpty());
        desks.inspection.settle(0, 1);
        desks.settle();
        QCOMPARE(desks.inspection.file()->inspection.lines.size(), std::size_t{1});
    }

    void aFigureAndItsUnitAreOneValue() {
        Shop shop;
        QVERIFY(shop.ready());
        Desks desks(shop.house);
        QVERIFY(desks.open());
        desks.reading.setCurrent(0);
        QVERIFY(desks.reading.canHold());
        const auto newtons = desks.reading.proof().toDouble();
        desks.reading.setUnit(QStringLiteral("lbf"));
        QVERIFY(std::abs(desks.reading.proof().toDouble() * 4.4482216 - newtons) < 0.01);
        desks.reading.setProof(QString::number(newtons)); // the digits of the other unit
        desks.reading.tap(3, 10);
        QVERIFY(!desks.reading.question().isEmpty());
    }

    void theRestIsNotWhereSomethingWasFound() {
        Shop shop;
        QVERIFY(shop.ready());
        Desks desks(shop.house);
        QVERIFY(desks.open());
        const auto rest = desks.inspection.restOpen();
        desks.inspection.setFinding(1, QStringLiteral("scuffed")); // the first line wants a look of its own
        QCOMPARE(desks.inspection.restOpen(), rest - 1);
        desks.inspection.settleRest(); // while the finding is on its way
        desks.settle();
        const auto& row = desks.inspection.lines()->rows()[1];
        QCOMPARE(row.finding, QStringLiteral("scuffed"));
        QCOMPARE(row.state, 0);
    }

    void noWalkEndsInAReleaseWithABarringDefect() {
        std::mt19937 dice(20261125);
        int released = 0;
        int refusedForADefect = 0;
        for (int walk = 0; walk < 4; ++walk) {
            Shop shop;
            QVERIFY(shop.ready());
            Desks desks(shop.house);
            QVERIFY(desks.open());
            if (walk % 2 == 1) { // begins where a release is near
                desks.reads();
                desks.looksAtEverything();
                desks.release.setSigner(inspector);
                QTest::qWait(50);
            }
            for (int step = 0; step < 80 && desks.inspection.isOpen(); ++step) {
                const bool barred = mayNotBeReleased(*desks.inspection.file());
                const bool asked = desks.release.maySign() && desks.release.outcome() == 0;
                QVERIFY2(!(barred && asked && desks.release.refusals()->count() > 0), "signable beside refusals");
                refusedForADefect += barred && desks.release.outcome() == 0 && !desks.release.maySign() ? 1 : 0;
                if (walk % 2 == 1 && step % 12 == 11) {
                    tidy(desks);
                    if (dice() % 2 == 0)
                        desks.signs();
                }
                press(desks, dice, walk % 2 == 0);
                desks.settle();
            }
            const auto file = shop.ask([id = desks.inspection.file()->inspection.id](Record& record) {
                return benchFile(record, id, CivilDate::parse("2026-11-25").value());
            });
            QVERIFY(file.has_value());
            const auto& closed = file->inspection.closed;
            if (closed && closed->body.outcome == Outcome::Released) {
                ++released;
                QVERIFY(!mayNotBeReleased(*file));
            }
        }
        QVERIFY2(released > 0 && refusedForADefect > 0,
                 qPrintable(QStringLiteral("%1 released, %2 barred").arg(released).arg(refusedForADefect)));
    }
};

CROWNRING_TEST(BenchWalkTest, QGuiApplication)

}

#include "bench_walk_test.moc"
