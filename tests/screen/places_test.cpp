// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo_house.h"
#include "screen/balloons/balloons_place.h"
#include "screen/balloons/subject_page.h"
#include "screen/frame/search.h"
#include "screen/next/due_detail.h"
#include "screen/next/next_place.h"
#include "screen/next/rig_up_check.h"
#include "screen/rules/rules_place.h"
#include "test_class.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QTest>

namespace places_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

using Tester = QAbstractItemModelTester;
constexpr auto strict = QAbstractItemModelTester::FailureReportingMode::Fatal;

QString text(const QAbstractItemModel& model, int row, int role) {
    return model.data(model.index(row, 0), role).toString();
}

constexpr const char* aLineWithdrawn =
    R"({"entry":"entry.corrected","on":"2026-11-25","by":"insp. 14","note":"never looked at","replaces":"line-OL-2026-017-basket.identification-BSK-209","with":{"state":"open"}})";

}

class PlacesTest : public QObject {
    Q_OBJECT

private:
    std::unique_ptr<DemoHouse> m_demo;
    [[nodiscard]] const Sheet& sheet() const { return m_demo->house.fleet.sheet(); }

private slots:
    void initTestCase() {
        m_demo = std::make_unique<DemoHouse>();
        QVERIFY2(m_demo->ready(), qPrintable(m_demo->house.desk.trouble()));
        QVERIFY(sheet()->rows().size() > 300);
        QCOMPARE(sheet()->balloons().size(), std::size_t(40));
    }
    void cleanup() {
        m_demo->house.day.askToday();
        QVERIFY(m_demo->settled());
    }

    void theListIsWorstFirst() {
        In<NextPlace> next(m_demo->house);
        Tester tester(next.list(), strict);
        Tester lane(next.calendar(), strict);
        QTRY_VERIFY_WITH_TIMEOUT(next.ready(), 30'000);
        QCOMPARE(next.list()->count(), static_cast<int>(sheet()->rows().size()));
        int before = 0;
        for (int row = 0; row < next.list()->count(); ++row) {
            const auto* due = next.list()->row(row);
            if (due->state.because == Because::NotRequired)
                continue;
            QVERIFY(static_cast<int>(due->state.standing) >= before);
            before = static_cast<int>(due->state.standing);
        }
    }

    void filtersLeaveWhatTheySay() {
        In<NextPlace> next(m_demo->house);
        Tester tester(next.list(), strict);
        QTRY_VERIFY_WITH_TIMEOUT(next.ready(), 30'000);
        const int all = next.list()->count();
        next.setStanding(static_cast<int>(Standing::Lapsed));
        QTRY_VERIFY_WITH_TIMEOUT(next.list()->count() < all, 30'000);
        QVERIFY(next.list()->count() > 0);
        for (int row = 0; row < next.list()->count(); ++row)
            QCOMPARE(next.list()->row(row)->state.standing, Standing::Lapsed);
        next.clearFilters();
        QTRY_COMPARE_WITH_TIMEOUT(next.list()->count(), all, 30'000);
        next.setKind(QStringLiteral("cylinder"));
        QTRY_VERIFY_WITH_TIMEOUT(next.list()->count() < all, 30'000);
        for (int row = 0; row < next.list()->count(); ++row)
            QCOMPARE(next.list()->row(row)->item->kind, ItemKind::Cylinder);
        next.clearFilters();
        QTRY_COMPARE_WITH_TIMEOUT(next.list()->count(), all, 30'000);
        next.setBalloon(QStringLiteral("QE-OVA"));
        QTRY_COMPARE_WITH_TIMEOUT(next.list()->count(),
                                  static_cast<int>(sheet()->rowsOf(Registration("QE-OVA")).size()), 30'000);
    }

    void aBinOfTheHorizonHoldsItsRows() {
        In<NextPlace> next(m_demo->house);
        QTRY_VERIFY_WITH_TIMEOUT(next.ready(), 30'000);
        int dated = 0;
        for (int bin = 0; bin < next.calendar()->count(); ++bin) {
            const int total = next.calendar()->data(next.calendar()->index(bin), HorizonModel::TotalRole).toInt();
            dated += total;
            if (total == 0 || bin % 5 != 0)
                continue;
            next.chooseCalendarBin(bin);
            QTRY_COMPARE_WITH_TIMEOUT(next.list()->count(), total, 30'000);
            next.chooseCalendarBin(bin); // again: let go
            QTRY_COMPARE_WITH_TIMEOUT(next.list()->count(), static_cast<int>(sheet()->rows().size()), 30'000);
        }
        QVERIFY(dated > 100);
    }

    void soonestFirstIsByDate() {
        In<NextPlace> next(m_demo->house);
        QTRY_VERIFY_WITH_TIMEOUT(next.ready(), 30'000);
        next.setSoonestFirst(true);
        const auto sorted = [&] {
            QString before;
            for (int row = 0; row < next.list()->count(); ++row) {
                const auto* due = next.list()->row(row);
                if (due->state.standing == Standing::Closed || due->state.because == Because::NotRequired ||
                    due->state.limits.empty())
                    continue;
                std::optional<CivilDate> date;
                for (const auto& limit : due->state.limits)
                    if (const auto* reach = limit.calendar())
                        date = date ? std::min(*date, reach->due) : reach->due;
                if (!date)
                    continue;
                const auto iso = QString::fromStdString(date->iso());
                if (iso < before)
                    return false;
                before = iso;
            }
            return true;
        };
        QTRY_VERIFY_WITH_TIMEOUT(sorted(), 30'000);
    }

    void anotherDayAnswersOtherwise() {
        In<NextPlace> next(m_demo->house);
        QTRY_VERIFY_WITH_TIMEOUT(next.ready(), 30'000);
        const auto lapsedNow =
            text(*next.standings(), static_cast<int>(Standing::Lapsed), ChoiceModel::NumberRole).toInt();
        QCOMPARE(m_demo->house.day.ask(QStringLiteral("2028-11-25")), QString());
        QVERIFY(m_demo->settled());
        QTRY_VERIFY_WITH_TIMEOUT(
            text(*next.standings(), static_cast<int>(Standing::Lapsed), ChoiceModel::NumberRole).toInt() > lapsedNow,
            30'000);
        m_demo->house.day.ask(QStringLiteral("2020-06-01"));
        QVERIFY(m_demo->settled());
        QVERIFY(m_demo->house.fleet.empty());
        QTRY_COMPARE_WITH_TIMEOUT(next.list()->count(), 0, 30'000);
    }

    void whatTheStripCallsOverdueIsWhatTheChipsCount() {
        QCOMPARE(m_demo->house.day.ask(QStringLiteral("2026-11-25")), QString());
        QVERIFY(m_demo->settled());
        In<NextPlace> next(m_demo->house);
        QTRY_VERIFY_WITH_TIMEOUT(next.ready(), 30'000);
        const auto counted = [&](Standing sort) {
            return text(*next.standings(), static_cast<int>(sort), ChoiceModel::NumberRole).toInt();
        };
        QVERIFY(counted(Standing::Tolerance) > 0);
        QCOMPARE(text(*next.calendar(), OverdueBin, HorizonModel::TotalRole).toInt(),
                 counted(Standing::Spent) + counted(Standing::Lapsed) + counted(Standing::Tolerance));
    }

    void everyRowHasItsTextsAndItsDetail() {
        In<NextPlace> next(m_demo->house);
        QTRY_VERIFY_WITH_TIMEOUT(next.ready(), 30'000);
        In<DueDetail> detail(m_demo->house);
        for (int row = 0; row < next.list()->count(); row += 37) {
            for (const int role : {DueModel::WhereRole, DueModel::TitleRole, DueModel::SourceRole,
                                   DueModel::StandingWordRole, DueModel::SpokenRole})
                QVERIFY(!text(*next.list(), row, role).isEmpty());
            detail.show(text(*next.list(), row, DueModel::ItemRole),
                        text(*next.list(), row, DueModel::RequirementRole));
            QVERIFY(detail.found());
            QCOMPARE(detail.title(), text(*next.list(), row, DueModel::TitleRole));
            QVERIFY(!detail.source().isEmpty() && !detail.programme().isEmpty() && !detail.rule().isEmpty());
            if (detail.standing() == static_cast<int>(Standing::Unproven))
                QVERIFY(!detail.because().isEmpty());
        }
    }

    void aRigUpThatMayNotFlySaysWhy() {
        In<RigUpCheck> check(m_demo->house);
        Tester items(check.items(), strict);
        Tester reasons(check.reasons(), strict);
        int no = 0;
        int yes = 0;
        for (const auto& card : sheet()->balloons()) {
            if (card.items == 0)
                continue;
            check.setBalloon(QString::fromStdString(card.balloon.text()));
            const auto kit = check.kit();
            QVERIFY(!check.answered()); // what was answered for another kit is gone at once
            QTRY_VERIFY_WITH_TIMEOUT(check.answered(), 30'000);
            QCOMPARE(check.chosen(), static_cast<int>(card.items));
            QCOMPARE(check.mayFly(), check.reasons()->count() == 0);
            check.mayFly() ? ++yes : ++no;
            for (int row = 0; row < check.reasons()->count(); ++row)
                for (const int role :
                     {ReasonModel::TitleRole, ReasonModel::SaysRole, ReasonModel::MendRole, ReasonModel::SourceRole})
                    QVERIFY(!text(*check.reasons(), row, role).isEmpty());
        }
        QVERIFY(no > 0 && yes > 0);
    }

    void aWrongDurationIsSaidAtTheField() {
        In<RigUpCheck> check(m_demo->house);
        check.setDuration(QStringLiteral("an hour"));
        QVERIFY(!check.durationProblem().isEmpty());
        check.setDuration(QStringLiteral("1:05"));
        QVERIFY(check.durationProblem().isEmpty());
    }

    void theRegisterAndAPage() {
        In<BalloonsPlace> place(m_demo->house);
        Tester balloons(place.balloons(), strict);
        Tester items(place.items(), strict);
        QTRY_COMPARE_WITH_TIMEOUT(place.balloons()->count(), 40, 30'000);
        int all = 0;
        for (const auto& item : sheet()->items())
            all += item.out ? 0 : 1;
        QTRY_COMPARE_WITH_TIMEOUT(place.items()->count(), all, 30'000);
        place.setPoolOnly(true);
        QTRY_VERIFY_WITH_TIMEOUT(place.items()->count() > 0 && place.items()->count() < all, 30'000);
        place.setWords(QStringLiteral("ova"));
        QTRY_COMPARE_WITH_TIMEOUT(place.balloons()->count(), 1, 30'000);

        In<SubjectPage> page(m_demo->house);
        Tester dues(page.dues(), strict);
        Tester history(page.history(), strict);
        page.showBalloon(QStringLiteral("QE-OVA"));
        QVERIFY(page.found());
        QVERIFY(page.items()->count() > 0);
        QTRY_VERIFY_WITH_TIMEOUT(page.history()->count() > 10, 30'000);
        const auto item = text(*page.items(), 0, ItemModel::ItemRole);
        page.showItem(item);
        QVERIFY(page.found());
        QCOMPARE(page.fittedTo(), QStringLiteral("QE-OVA"));
        QTRY_VERIFY_WITH_TIMEOUT(page.history()->count() > 0, 30'000);
    }

    void rulesSayWhomTheyBind() {
        In<RulesPlace> rules(m_demo->house);
        Tester programmes(rules.programmes(), strict);
        Tester requirements(rules.requirements(), strict);
        QVERIFY(rules.programmes()->count() >= 6);
        rules.showProgramme(QStringLiteral("part-ml-hot-air"));
        QVERIFY(rules.inForce());
        QVERIFY(rules.requirements()->count() >= 4);
        QVERIFY(rules.adoptions()->count() > 0);
        rules.showRequirement(QStringLiteral("ml.inspection"));
        QVERIFY(rules.bound()->count() > 20);
        QCOMPARE(text(*rules.requirements(), 0, ChoiceModel::NumberRole).toInt(), rules.bound()->count());
        QVERIFY(rules.requirementSource().contains(QStringLiteral("ML.A.302")));
    }

    void rulesAreFollowedOnlyWhileTheyAreSeen() {
        In<RulesPlace> rules(m_demo->house);
        rules.showProgramme(QStringLiteral("part-ml-hot-air"));
        rules.showRequirement(QStringLiteral("ml.inspection"));
        const auto bound = rules.bound()->count();
        rules.setShown(false);
        QSignalSpy looked(&rules, &RulesPlace::changed);
        const auto before = m_demo->house.fleet.sheet();
        QCOMPARE(m_demo->house.day.ask(QStringLiteral("2020-06-01")), QString());
        QTRY_VERIFY_WITH_TIMEOUT(m_demo->house.fleet.sheet() != before, 30'000);
        QCOMPARE(looked.count(), 0);
        rules.setShown(true);
        QCOMPARE(looked.count(), 1);
        QVERIFY(rules.bound()->count() < bound); // most of the fleet is younger
    }

    void searchFindsFromAnywhere() {
        In<Search> search(m_demo->house);
        Tester tester(search.found(), strict);
        search.setWords(QStringLiteral("QE-LAKE"));
        QTRY_VERIFY_WITH_TIMEOUT(search.found()->count() > 1, 30'000);
        QStringList went;
        QObject::connect(&search, &Search::balloonChosen,
                         [&](const QString& name) { went += QStringLiteral("balloon ") + name; });
        QObject::connect(&search, &Search::itemChosen,
                         [&](const QString& name) { went += QStringLiteral("item ") + name; });
        search.choose(0);
        search.setWords(QStringLiteral("TA302")); // a serial number
        QTRY_COMPARE_WITH_TIMEOUT(search.found()->valueAt(0), QStringLiteral("BRN-302"), 30'000);
        search.choose(0);
        QCOMPARE(went, QStringList({QStringLiteral("balloon QE-LAKE"), QStringLiteral("item BRN-302")}));
        search.setWords(QStringLiteral("office kestle")); // a person of the journal
        QTRY_VERIFY_WITH_TIMEOUT(search.found()->count() > 0 &&
                                     search.found()->choices().front().of == QVariant::fromValue(Search::What::Entry),
                                 30'000);
        search.choose(search.found()->count()); // no such row
        QCOMPARE(went.size(), 2);
        search.setWords(QStringLiteral("no such thing anywhere"));
        QTRY_VERIFY_WITH_TIMEOUT(search.nothing(), 30'000);
    }
    void aBalloonOfWhichAReleaseLostItsGroundSaysSo() {
        DemoHouse demo;
        QVERIFY(demo.ready());
        In<BalloonsPlace> place(demo.house);
        place.setShown(true);
        QTRY_VERIFY_WITH_TIMEOUT(place.balloons()->find(QStringLiteral("QE-MIST")) >= 0, 30'000);
        const auto lost = [&](const char* balloon) {
            return text(*place.balloons(), place.balloons()->find(QLatin1String(balloon)), BalloonModel::LostRole);
        };
        QVERIFY(lost("QE-MIST").isEmpty());
        QVERIFY(isPosted(demo.house, aLineWithdrawn));
        QTRY_VERIFY_WITH_TIMEOUT(lost("QE-MIST").contains(QStringLiteral("OL-2026-017")), 60'000);
        QVERIFY(lost("QE-LAKE").isEmpty());
    }
};

CROWNRING_TEST(PlacesTest, QCoreApplication)

}

#include "places_test.moc"
