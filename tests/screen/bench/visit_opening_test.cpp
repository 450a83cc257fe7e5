// SPDX-License-Identifier: GPL-3.0-or-later

/// What a visit asks when it is opened: an inspection after an event what happened, work the items that it touches.

#include "acts/post.h"
#include "record/entry_json.h"
#include "record/new_id.h"
#include "screen/balloons/subject_page.h"
#include "screen/bench/bench_hands.h"
#include "screen/form/entry_form.h"
#include "test_class.h"

namespace visit_opening_test {

using namespace crownring;
using namespace crownring::screen;
using bench_walk_test::Desks;
using bench_walk_test::Shop;

namespace {

constexpr const char* hardLanding =
    R"({"entry":"event.reported","on":"2026-11-20","balloon":"QE-SML","event":"hard-landing"})";
constexpr const char* looseBurner =
    R"({"entry":"item.entered","on":"2024-01-01","item":"BRN-9","kind":"burner","serial":"S9","type":"Flare"})";
constexpr const char* strengthTest =
    R"({"entry":"programme.adopted","on":"2024-01-01","programme":"fabric-strength","balloons":["QE-SML"]})";
constexpr const char* americanBalloon =
    R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QN1","operations":["private"]})";
constexpr const char* americanEnvelope =
    R"({"entry":"item.entered","on":"2024-01-01","item":"ENV-9","kind":"envelope","serial":"S9","type":"Heron 60"})";
constexpr const char* americanFitting = R"({"entry":"item.fitted","on":"2024-01-01","balloon":"QN1","item":"ENV-9"})";
constexpr const char* europeanRules =
    R"({"entry":"entry.corrected","on":"2024-01-01","by":"x","note":"y","replaces":"e6","with":{"everything":null,"balloons":["QE-SML"]}})";
constexpr const char* americanRules =
    R"({"entry":"programme.adopted","on":"2024-01-01","programme":"us-14cfr","balloons":["QN1"]})";

QStringList itemsAsked(InspectionDesk& desk) {
    QStringList items;
    for (int part = 0; part < desk.parts()->count(); ++part) {
        desk.setPartAt(part);
        for (const auto& row : desk.lines()->rows())
            if (!row.item.isEmpty() && !items.contains(row.item))
                items += row.item;
    }
    return items;
}

}

class VisitOpeningTest : public QObject {
    Q_OBJECT
private slots:
    /// What is fitted is no component by itself (ML.A.502, read in part): it is not offered for such a visit.
    void aComponentVisitOffersWhatIsLoose() {
        Shop shop;
        QVERIFY(shop.ready() && isPosted(shop.house, looseBurner));
        In<VisitOpening> opening(shop.house);
        const auto offers = [&](const char* item) { return opening.items()->indexOf(QLatin1String(item)) >= 0; };
        opening.begin();
        opening.setWords(QStringLiteral("burner"));
        QTRY_VERIFY_WITH_TIMEOUT(offers("BRN-1") && offers("BRN-9"), 10'000);
        opening.toggleItem(QStringLiteral("BRN-1"));
        QCOMPARE(opening.chosenItems(), 1);
        opening.setVisit(QStringLiteral("part-ml-component"));
        QVERIFY(offers("BRN-9") && !offers("BRN-1"));
        QCOMPARE(opening.chosenItems(), 0);
        opening.begin();
        QCOMPARE(opening.words(), QString());
        QVERIFY(!offers("BRN-1"));
    }
    /// A list is answered by readings in a visit of its own, which is proposed with what it is for.
    void whatAListAsksToBeReadOpensARectification() {
        Shop shop;
        QVERIFY(shop.ready() && isPosted(shop.house, strengthTest));
        In<VisitOpening> opening(shop.house);
        opening.beginRectification(QStringLiteral("QE-SML"), QStringLiteral("ENV-1"),
                                   QStringLiteral("fabric.strength-test"));
        QTRY_COMPARE_WITH_TIMEOUT(opening.visit(), QStringLiteral("part-ml-rectification"), 10'000);
        QTRY_VERIFY_WITH_TIMEOUT(opening.known() && opening.canOpen(), 10'000);
        QCOMPARE(opening.chosenWork(), 1); // nothing else is done in a rectification unasked
        Desks desks(shop.house);
        QSignalSpy opened(&opening, &VisitOpening::opened);
        opening.openIt();
        QTRY_COMPARE_WITH_TIMEOUT(opened.size(), 1, 10'000);
        desks.inspection.setInspection(opened.first().first().toString());
        QTRY_VERIFY_WITH_TIMEOUT(desks.inspection.loaded(), 10'000);
        QVERIFY(desks.reading.series()->count() > 0); // and its readings are asked
        // Afterwards another visit is again what is due.
        opening.begin(QStringLiteral("QE-SML"));
        QTRY_VERIFY_WITH_TIMEOUT(opening.known(), 10'000);
        QCOMPARE(opening.visit(), QStringLiteral("part-ml-inspection"));
    }
    void aSpecialInspectionWaitsForWhatHappened() {
        Shop shop;
        QVERIFY(shop.ready());
        In<VisitOpening> opening(shop.house);
        opening.begin(QStringLiteral("QE-SML"));
        QTRY_VERIFY_WITH_TIMEOUT(opening.known(), 10'000);
        opening.setVisit(QStringLiteral("part-ml-special"));
        QTRY_VERIFY_WITH_TIMEOUT(opening.isEventUnknown(), 10'000);
        QVERIFY(!opening.canOpen());
        QCOMPARE(opening.proposals()->count(), 0);
        QVERIFY(isPosted(shop.house, hardLanding));
        QTRY_VERIFY_WITH_TIMEOUT(opening.known() && !opening.isEventUnknown() && opening.canOpen(), 10'000);
        QVERIFY(opening.chosenWork() > 0);
    }
    void workAsksOfWhatItTouches() {
        Shop shop;
        QVERIFY(shop.ready());
        Desks desks(shop.house);
        QVERIFY(desks.choose("part-ml-repair"));
        QCOMPARE(desks.opening.chosenWork(), 0);
        for (const auto& proposal : desks.opening.proposals()->choices())
            QVERIFY2(!proposal.label.contains(QStringLiteral("review"), Qt::CaseInsensitive),
                     qPrintable(proposal.label));
        QVERIFY(desks.openIt());
        QCOMPARE(itemsAsked(desks.inspection), QStringList());
        QVERIFY(desks.inspection.untouched().contains(QStringLiteral("ENV-1, BRN-1")));
        desks.works();
        QTRY_COMPARE_WITH_TIMEOUT(itemsAsked(desks.inspection), QStringList(QStringLiteral("BRN-1")), 10'000);
        QVERIFY(!desks.inspection.untouched().contains(QStringLiteral("BRN-1")));
    }
    // ML Appendix II(b): what a pilot-owner may release is a list of tasks, so the task is chosen and not written.
    void anOwnersWorkSaysWhichTaskItIs() {
        Shop shop;
        QVERIFY(shop.ready());
        Desks desks(shop.house);
        QVERIFY(desks.choose("part-ml-owner-tasks"));
        QVERIFY(desks.openIt());
        QVERIFY(desks.inspection.ownerTasks()->count() > 3);

        In<EntryForm> form(shop.house);
        for (const char* kind : {"part.replaced", "repair.made", "work.performed"}) {
            form.beginAtBench(QLatin1String(kind), desks.inspection.inspection(), {}, {}, desks.inspection.scope());
            form.offerTasks(desks.inspection.ownerTasks());
            const auto* task = form.fields()->field("line");
            QVERIFY(task && task->required);
            QCOMPARE(task->choices, desks.inspection.ownerTasks()->choices());
        }
        form.beginAtBench(QStringLiteral("defect.found"), desks.inspection.inspection(), {}, {},
                          desks.inspection.scope());
        form.offerTasks(desks.inspection.ownerTasks());
        QVERIFY(!form.fields()->field("line"));
        QVERIFY(desks.open());
        QCOMPARE(desks.inspection.ownerTasks()->count(), 0);
    }
    void underTheRulesOfTheUnitedStatesNoReviewIsOffered() {
        Shop shop;
        QVERIFY(shop.ready());
        for (const char* each : {europeanRules, americanBalloon, americanEnvelope, americanFitting, americanRules})
            QVERIFY2(isPosted(shop.house, each), each);
        In<SubjectPage> page(shop.house);
        page.showBalloon(QStringLiteral("QN1"));
        QTRY_VERIFY_WITH_TIMEOUT(page.found() && page.dues()->count() > 0, 20'000);
        QVERIFY(!page.isReviewed());
        page.showBalloon(QStringLiteral("QE-SML"));
        QTRY_VERIFY_WITH_TIMEOUT(page.found() && page.isReviewed(), 20'000);
    }
};

CROWNRING_TEST(VisitOpeningTest, QGuiApplication)

}

#include "visit_opening_test.moc"
