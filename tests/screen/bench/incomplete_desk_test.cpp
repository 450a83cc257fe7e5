// SPDX-License-Identifier: GPL-3.0-or-later

/// The release after incomplete maintenance on the bench, and what is left of it in the closing leaf. All of it is
/// invented.

#include "rules/due/incomplete.h"
#include "screen/bench/bench_hands.h"
#include "screen/next/due_detail.h"
#include "test_class.h"

namespace incomplete_desk_test {

using namespace crownring;
using namespace crownring::screen;
using bench_walk_test::Desks;
using bench_walk_test::Shop;

namespace {

const Signer inspectorA{PersonId("insp. A"), Capacity::IndependentCertifyingStaff};

/// A repair of the burner that is described; its lines stand open.
bool beginsRepair(Desks& desks) {
    if (!desks.choose("part-ml-repair") || !desks.openIt())
        return false;
    desks.works();
    return true;
}

}

class IncompleteDeskTest : public QObject {
    Q_OBJECT
private slots:
    /// ML.A.801(f), from memory: where no check flight can rest on it, that is said before it is signed.
    void whereNoCheckFlightCanRestOnItThatIsSaid() {
        Shop shop;
        QVERIFY(shop.ready());
        Desks desks(shop.house);
        QVERIFY(beginsRepair(desks));
        QVERIFY(desks.release.noCheckFlight().isEmpty());
        desks.release.setOutcome(3);
        QTRY_VERIFY_WITH_TIMEOUT(!desks.release.noCheckFlight().isEmpty(), 10'000);
        QVERIFY2(desks.release.noCheckFlight().contains(QStringLiteral("besides the flight it leaves open")),
                 qPrintable(desks.release.noCheckFlight()));
        desks.release.setOutcome(0);
        QTRY_VERIFY_WITH_TIMEOUT(desks.release.noCheckFlight().isEmpty(), 10'000);
    }
    void itsLimitationsAreNotThoseOfTheClosing() {
        Shop shop;
        QVERIFY(shop.ready());
        Desks desks(shop.house);
        QVERIFY(beginsRepair(desks));
        desks.release.setSigner(inspectorA);
        desks.release.setManuals(QStringLiteral("Flare manual, revision 2"));
        desks.release.setOutcome(3);
        desks.release.setLimitations(QStringLiteral("one check flight, crew only"));
        QTRY_VERIFY_WITH_TIMEOUT(desks.release.maySign(), 10'000);
        QSignalSpy done(&desks.release, &ReleaseDesk::signedNow);
        desks.signs();
        QTRY_COMPARE_WITH_TIMEOUT(done.size(), 1, 30'000);
        QTRY_VERIFY_WITH_TIMEOUT(desks.inspection.file()->inspection.incomplete.has_value(), 10'000);
        QCOMPARE(desks.release.outcome(), 0);
        QCOMPARE(desks.release.limitations(), QString());
        // What it leaves open is no reading of fabric, and is not done by saying so.
        In<DueDetail> detail(shop.house);
        const auto left = incompleteRequirementId(desks.inspection.file()->inspection.id).text();
        QTRY_VERIFY_WITH_TIMEOUT((detail.show(QStringLiteral("BRN-1"), QString::fromStdString(left)), detail.isList()),
                                 20'000);
        QVERIFY(!detail.isFabric());
        QVERIFY2(detail.rule().contains(QStringLiteral("closing release")), qPrintable(detail.rule()));
    }
    void whatWasSignedByIsNamedByItsTitle() {
        Shop shop;
        QVERIFY(shop.ready());
        Desks desks(shop.house);
        QVERIFY(desks.open());
        desks.reads();
        desks.looksAtEverything();
        desks.release.setSigner(inspectorA);
        QStringList reasons;
        for (const auto& each : desks.release.refusals()->choices())
            reasons += each.label;
        QTRY_VERIFY2_WITH_TIMEOUT(desks.release.maySign(), qPrintable(reasons.join(u'\n')), 30'000);
        const auto drafted = desks.release.wording()->choices();
        QVERIFY(!drafted.empty());
        QSignalSpy done(&desks.release, &ReleaseDesk::signedNow);
        desks.signs();
        QTRY_VERIFY_WITH_TIMEOUT(done.size() == 1 && !desks.inspection.isOpen(), 30'000);
        const auto signedBy = desks.release.wording()->choices();
        QCOMPARE(signedBy.size(), drafted.size());
        for (std::size_t i = 0; i < drafted.size(); ++i)
            QCOMPARE(signedBy[i].label, drafted[i].label);
    }
};

CROWNRING_TEST(IncompleteDeskTest, QGuiApplication)

}

#include "incomplete_desk_test.moc"
