// SPDX-License-Identifier: GPL-3.0-or-later

/// What comes next by what one acts on, and ranges of the strip, over the demo fleet.

#include "rules/due/directive_rows.h"
#include "screen/demo_house.h"
#include "screen/next/next_place.h"
#include "test_class.h"
#include "words/words.h"

#include <QAbstractItemModelTester>
#include <QTest>

#include <map>
#include <set>

namespace due_groups_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

constexpr auto strict = QAbstractItemModelTester::FailureReportingMode::Fatal;

/// "defect" of "defect/D-1"
std::string sortOf(const std::string& name) { return name.substr(0, name.find('/')); }
}

class DueGroupsTest : public QObject {
    Q_OBJECT
private:
    std::unique_ptr<DemoHouse> m_demo;
    std::unique_ptr<In<NextPlace>> m_next;

    [[nodiscard]] const FleetSheet& sheet() const { return *m_demo->house.fleet.sheet(); }
    [[nodiscard]] QString text(int row, int role) const {
        return m_next->groups()->data(m_next->groups()->index(row), role).toString();
    }
    [[nodiscard]] int rowOf(const QString& title) const {
        for (int row = 0; row < m_next->groups()->count(); ++row)
            if (text(row, GroupModel::TitleRole) == title)
                return row;
        return -1;
    }
    [[nodiscard]] bool groupedBy(Grouping grouping) {
        m_next->setGrouping(static_cast<int>(grouping));
        return m_next->isGrouped() && QTest::qWaitFor([this] { return m_next->groups()->count() > 0; }, 30'000);
    }

private slots:
    void initTestCase() {
        m_demo = std::make_unique<DemoHouse>();
        QVERIFY2(m_demo->ready(), qPrintable(m_demo->house.desk.trouble()));
    }
    void init() {
        m_next = std::make_unique<In<NextPlace>>(m_demo->house);
        QTRY_VERIFY_WITH_TIMEOUT(m_next->ready(), 30'000);
    }
    void cleanup() {
        m_next->setGrouping(0);
        m_next.reset();
    }

    void oneRowABalloonSaysWhatGovernsIt() {
        QAbstractItemModelTester tester(m_next->groups(), strict);
        QVERIFY(groupedBy(Grouping::Balloon));
        std::set<Registration> withRows;
        bool pool = false;
        for (const auto& row : sheet().rows()) {
            if (row.item->balloon)
                withRows.insert(*row.item->balloon);
            pool |= !row.item->balloon;
        }
        QVERIFY(pool);
        QCOMPARE(m_next->groups()->count(), static_cast<int>(withRows.size()) + 1);
        int worst = 0;
        for (int row = 0; row < m_next->groups()->count(); ++row) {
            const auto title = text(row, GroupModel::TitleRole);
            if (title == QStringLiteral("In the pool"))
                continue;
            const auto* governs = sheet().headlineOf(Registration(title.toStdString())).row;
            if (!governs)
                continue;
            const int standing = m_next->groups()->data(m_next->groups()->index(row), GroupModel::StandingRole).toInt();
            QCOMPARE(standing, static_cast<int>(governs->state.standing));
            QVERIFY(text(row, GroupModel::GovernsRole).contains(QString::fromStdString(governs->item->id.text())));
            QVERIFY2(standing >= worst, qPrintable(title)); // worst first
            worst = standing;
        }
    }

    void aGroupThatIsOpenedLeavesItsRowsAlone() {
        QVERIFY(groupedBy(Grouping::Balloon));
        const auto at = rowOf(QStringLiteral("QE-OVA"));
        QVERIFY(at >= 0);
        m_next->openGroup(at);
        QVERIFY(!m_next->isGrouped());
        QCOMPARE(m_next->within(), QStringLiteral("QE-OVA"));
        QTRY_COMPARE_WITH_TIMEOUT(m_next->list()->count(),
                                  static_cast<int>(sheet().rowsOf(Registration("QE-OVA")).size()), 30'000);
        m_next->leaveGroup();
        QVERIFY(m_next->isGrouped());
        QTRY_COMPARE_WITH_TIMEOUT(m_next->list()->count(), static_cast<int>(sheet().rowCount()), 30'000);
    }

    void whatIsFittedToNothingIsAGroupOfItsOwn() {
        QVERIFY(groupedBy(Grouping::Balloon));
        m_next->openGroup(rowOf(QStringLiteral("In the pool")));
        const auto allLoose = [&] {
            for (int row = 0; row < m_next->list()->count(); ++row)
                if (m_next->list()->row(row)->item->balloon)
                    return false;
            return m_next->list()->count() > 0;
        };
        QTRY_VERIFY_WITH_TIMEOUT(allLoose(), 30'000);
    }

    void aVisitIsWhatIsDoneTogether() {
        QVERIFY(groupedBy(Grouping::Visit));
        std::map<std::pair<std::string, std::string>, std::set<std::string>> visits;
        for (const auto& row : sheet().rows())
            visits[{row.item->balloon ? row.item->balloon->text() : std::string(),
                    isOfTheRecord(row) && row.programme != &directiveProgramme() ? sortOf(row.requirement->id.text())
                                                                                 : row.requirement->id.text()}]
                .insert(row.item->id.text());
        QCOMPARE(m_next->groups()->count(), static_cast<int>(visits.size()));
        const auto items = visits.at({"QE-OVA", "ml.inspection"}).size();
        QVERIFY(items > 1);
        bool found = false;
        for (int row = 0; row < m_next->groups()->count(); ++row)
            found |= text(row, GroupModel::GovernsRole) == QStringLiteral("QE-OVA · %1 items").arg(items);
        QVERIFY(found);
    }

    void aRequirementIsAGroupOverAllBalloons() {
        QVERIFY(groupedBy(Grouping::Requirement));
        int rows = 0;
        for (const auto& row : sheet().rows())
            rows += row.requirement->id == RequirementId("ml.inspection") ? 1 : 0;
        QTRY_VERIFY_WITH_TIMEOUT(m_next->groups()->count() > 3, 30'000);
        QString title;
        for (int row = 0; row < m_next->list()->count() && title.isEmpty(); ++row)
            if (m_next->list()->row(row)->requirement->id == RequirementId("ml.inspection"))
                title = m_next->list()->data(m_next->list()->index(row), DueModel::TitleRole).toString();
        m_next->openGroup(rowOf(title));
        QTRY_COMPARE_WITH_TIMEOUT(m_next->list()->count(), rows, 30'000);
    }

    void theGroupingIsRemembered() {
        QVERIFY(groupedBy(Grouping::Visit));
        In<NextPlace> another(m_demo->house);
        QCOMPARE(another.grouping(), static_cast<int>(Grouping::Visit));
    }

    void aRangeOfTheStripIsAllItsBins() {
        const auto total = [&](int bin) {
            return m_next->calendar()->data(m_next->calendar()->index(bin), HorizonModel::TotalRole).toInt();
        };
        m_next->chooseWeeks(6);
        QCOMPARE(m_next->weeks(), 6);
        m_next->chooseWeeks(6); // again lets go of it
        QCOMPARE(m_next->weeks(), 0);
        m_next->chooseCalendarBin(9);
        m_next->stretchTo(5);
        QCOMPARE(m_next->calendarBin(), 5);
        QCOMPARE(m_next->lastCalendarBin(), 9);
        QTRY_COMPARE_WITH_TIMEOUT(m_next->list()->count(), total(5) + total(6) + total(7) + total(8) + total(9),
                                  30'000);
    }

    /// Nothing that grounds, is unproven or near by hours is missing among what comes next.
    void theNextWeeksLeaveOutNothingThatGrounds() {
        const auto last = addDays(sheet().on(), 42);
        int wanted = 0;
        int unproven = 0;
        int nearByHoursAlone = 0;
        for (const auto& row : sheet().rows()) {
            const auto& state = row.state;
            if (state.standing == Standing::Closed || !isRequired(state))
                continue;
            const auto due = words::calendarDue(state);
            const bool dated = due && *due >= sheet().on() && *due <= last;
            const auto* governs = governingLimit(state);
            const bool byHours = state.standing == Standing::Nearing && governs && governs->usage();
            const bool grounds = state.standing < Standing::Nearing; // the worst come first
            wanted += dated || byHours || grounds ? 1 : 0;
            unproven += state.standing == Standing::Unproven ? 1 : 0;
            nearByHoursAlone += byHours && !dated ? 1 : 0;
        }
        QVERIFY(unproven > 0 && nearByHoursAlone > 0);
        m_next->chooseWeeks(6);
        QTRY_VERIFY_WITH_TIMEOUT(m_next->range().contains(QStringLiteral("left out: ")), 30'000);
        QVERIFY2(m_next->list()->count() >= wanted, qPrintable(m_next->range()));
        QVERIFY(m_next->list()->count() < static_cast<int>(sheet().rowCount()));
        for (int row = 0; row < m_next->list()->count(); ++row)
            QVERIFY(m_next->list()->row(row)->state.standing != Standing::Closed);
        QVERIFY2(m_next->range().contains(QString::fromStdString(last.iso())), qPrintable(m_next->range()));
    }

    void whatAFilterHidesItDoesNotHold() {
        const auto& row = *m_next->list()->row(0);
        const auto item = QString::fromStdString(row.item->id.text());
        const auto requirement = QString::fromStdString(row.requirement->id.text());
        QVERIFY(m_next->holds(item, requirement));
        m_next->setStanding(
            static_cast<int>(row.state.standing == Standing::Clear ? Standing::Lapsed : Standing::Clear));
        QVERIFY(!m_next->holds(item, requirement));
    }
};

CROWNRING_TEST(DueGroupsTest, QCoreApplication)

}

#include "due_groups_test.moc"
