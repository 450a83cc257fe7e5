// SPDX-License-Identifier: GPL-3.0-or-later

/// On the release leaf wording that nobody confirmed says so, with the text and its source in view; where it is read it
/// is adopted and confirmed, and then it can be signed by. All of it is invented.

#include "screen/bench/release_desk.h"
#include "screen/bench/small_bench.h"
#include "screen/bench/visit_opening.h"
#include "screen/demo_house.h"
#include "screen/wording/wording_desk.h"
#include "test_class.h"

#include <QSignalSpy>
#include <QTemporaryDir>
#include <QtTest>

namespace wording_desk_test {

using namespace crownring;
using namespace crownring::screen;

class WordingDeskTest : public QObject {
    Q_OBJECT

    static constexpr int patience = 60'000;

    static QString detailOf(const ChoiceModel& list, const QString& value) {
        for (const auto& each : list.choices())
            if (each.value == value)
                return each.detail;
        return {};
    }
    static QString releaseKey() { return WordingDesk::keyOf(named(shipped(StatementText::PartMlRelease).wording)); }

private slots:
    void unconfirmedWordingSaysSoAndIsConfirmedWhereItIsRead() {
        QTemporaryDir folder;
        House house(*CivilDate::parse("2026-11-25"), false);
        house.habits.setPerson(QStringLiteral("insp. A"));
        house.desk.open(folder.filePath(QStringLiteral("record.sqlite")), QByteArray(smallShop));
        QVERIFY(QTest::qWaitFor([&] { return house.fleet.ready(); }, patience));
        WordingDesk desk;
        desk.moveInto(house);
        QTRY_VERIFY_WITH_TIMEOUT(desk.texts()->count() > 0, patience);
        QVERIFY(detailOf(*desk.texts(), releaseKey()).contains("adopted by nobody"));
        QVERIFY(detailOf(*desk.texts(), releaseKey()).contains("not confirmed against the current rule"));

        desk.show(releaseKey());
        QVERIFY(desk.lacking().contains("No organisation has adopted it"));
        QVERIFY(desk.body().contains("{aircraft} is considered ready for release to service"));
        QVERIFY(desk.source().contains("from memory"));
        QVERIFY(!desk.mayBeConfirmed() && desk.mayBeAdopted());

        desk.adopt(QStringLiteral("Lakeside"), {}, {});
        QTRY_VERIFY_WITH_TIMEOUT(desk.adopted().contains("Lakeside"), patience);
        QVERIFY(desk.lacking().contains("Nobody has confirmed it"));
        QVERIFY(desk.mayBeConfirmed());
        // Who may sign such a visit is offered, an owner among them; whose licence has ended is not.
        QStringList people;
        for (const auto& each : desk.people()->choices())
            people += each.value;
        QCOMPARE(people, (QStringList{"insp. A", "pilot B"}));

        desk.confirm(QStringLiteral("ML.A.801, an invented amendment"));
        QCOMPARE(desk.confirmations()->count(), 0); // nobody is chosen
        desk.setPersonAt(0);
        QSignalSpy confirmed(&desk, &WordingDesk::confirmedNow);
        desk.confirm(QStringLiteral(" "));
        QTRY_VERIFY_WITH_TIMEOUT(!desk.problem().isEmpty(), patience); // against nothing
        desk.confirm(QStringLiteral("ML.A.801, an invented amendment"));
        QTRY_COMPARE_WITH_TIMEOUT(desk.confirmations()->count(), 1, patience);
        QCOMPARE(confirmed.count(), 1);
        QVERIFY(desk.confirmations()->choices().front().label.contains("L-A"));
        QVERIFY(desk.confirmations()->choices().front().detail.contains("ML.A.801, an invented amendment"));
        QCOMPARE(desk.lacking(), QString());
        QVERIFY(detailOf(*desk.texts(), releaseKey()).contains("confirmed by insp. A on 2026-11-25"));
    }
    void theReleaseLeafLeadsThere() {
        QTemporaryDir folder;
        House house(*CivilDate::parse("2026-11-25"), false);
        house.habits.setPerson(QStringLiteral("insp. A"));
        house.habits.setInspector(QStringLiteral("insp. A"));
        house.desk.open(folder.filePath(QStringLiteral("record.sqlite")), QByteArray(smallShop));
        QVERIFY(QTest::qWaitFor([&] { return house.fleet.ready(); }, patience));
        auto opened = house.desk.ask([](Record& record) -> Results<InspectionId> {
            Opening opening;
            opening.visit = Visit::PartMlInspection;
            opening.balloon = Registration("QE-SML");
            opening.items = {ItemId("ENV-1")};
            opening.on = *CivilDate::parse("2026-11-25");
            opening.by = "insp. A";
            return openInspection(record, record, opening);
        });
        opened.waitForFinished();
        QVERIFY(opened.result().has_value());
        InspectionDesk desk;
        desk.moveInto(house);
        ReleaseDesk release;
        release.moveInto(house);
        release.setDesk(&desk);
        desk.setInspection(QString::fromStdString(opened.result()->text()));
        QTRY_COMPARE_WITH_TIMEOUT(release.wording()->count(), 2, patience); // the statement, the checklist
        QCOMPARE(release.wording()->valueAt(0), releaseKey());
        for (const auto& each : release.wording()->choices()) {
            QVERIFY(!each.chosen);
            QVERIFY2(each.detail.contains("not confirmed against the current rule"), qPrintable(each.detail));
        }
        QVERIFY(!release.maySign());
        const auto before = release.refusals()->count();
        auto said = house.desk.ask([](Record& record) {
            return postText(record, record,
                            testing::adoptedAsShipped("2026-01-01") +
                                testing::confirmedBy("insp. A", Capacity::IndependentCertifyingStaff, "2026-01-02"),
                            {})
                .has_value();
        });
        said.waitForFinished();
        QVERIFY(said.result());
        QTRY_VERIFY_WITH_TIMEOUT(release.wording()->count() == 2 && release.wording()->choices().front().chosen,
                                 patience);
        QVERIFY(release.wording()->choices().front().detail.contains("by insp. A, L-A, on 2026-01-02"));
        QCOMPARE(release.refusals()->count(), before - 2);
    }
};

CROWNRING_TEST(WordingDeskTest, QCoreApplication)

}

#include "wording_desk_test.moc"
