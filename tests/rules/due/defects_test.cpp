// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/due/defects.h"
#include "rules/due/due_list.h"
#include "rules/due/rig_up.h"
#include "rules/shed.h"
#include "said.h"
#include "test_class.h"

#include <rapidcheck.h>

namespace defects_test {

using namespace crownring;
using namespace crownring::testing;
using namespace crownring::shed;

namespace {

DefectMark markOf(DefectMark::Kind kind, const char* defect, std::string_view on, const char* entry) {
    DefectMark mark;
    mark.kind = kind;
    mark.defect = DefectId(defect);
    mark.stamp = {Moment(day(on), TimeOfDay(18, static_cast<int>(kind))), EntryId(entry)};
    return mark;
}

/// An item and what became of its defects; marks stand in the order of their stamps, as the record gives them.
class Damaged {
public:
    Damaged& found(const char* defect, std::string_view on, Severity severity = Severity::Barring,
                   const char* entry = "f") {
        auto mark = markOf(DefectMark::Kind::Found, defect, on, entry);
        mark.severity = severity;
        mark.what = "a torn panel";
        return add(mark);
    }
    Damaged& foundAt(const char* defect, std::string_view on, TimeOfDay time) {
        auto mark = markOf(DefectMark::Kind::Found, defect, on, "f");
        mark.stamp.at = Moment(day(on), time);
        return add(mark);
    }
    Damaged& failed(const char* defect, std::string_view on, Severity severity) {
        auto mark = markOf(DefectMark::Kind::Found, defect, on, "f");
        mark.severity = severity;
        mark.failed = EntryId("r");
        return add(mark);
    }
    Damaged& deferred(const char* defect, std::string_view on, std::optional<std::string> until,
                      std::optional<std::int64_t> untilMinutes = {}) {
        auto mark = markOf(DefectMark::Kind::Deferred, defect, on, "d");
        mark.what = "a patch is ordered";
        if (until)
            mark.until = day(*until);
        if (untilMinutes)
            mark.untilMinutes = Minutes(*untilMinutes);
        return add(mark);
    }
    Damaged& cleared(const char* defect, std::string_view on) {
        return add(markOf(DefectMark::Kind::Cleared, defect, on, "c"));
    }
    Damaged& at(Figures clock) { return m_facts.clock = clock, *this; }
    [[nodiscard]] const ItemFacts& facts() const { return m_facts; }
    [[nodiscard]] std::size_t open() const { return openDefects(m_facts).size(); }
    [[nodiscard]] Assessment on(std::string_view today) const {
        return assessDefect(openDefects(m_facts).at(0), m_facts, day(today));
    }
    [[nodiscard]] bool bars(std::string_view today) const {
        return crownring::bars(openDefects(m_facts).at(0), m_facts, day(today));
    }

private:
    Damaged& add(const DefectMark& mark) {
        m_facts.defects.push_back(mark);
        std::ranges::stable_sort(m_facts.defects, {}, &DefectMark::stamp);
        return *this;
    }
    ItemFacts m_facts = Item().facts();
};

DueList listOf(const Damaged& damaged, std::string_view today) {
    return dueList({damaged.facts()}, {}, Obligations({}), day(today));
}

}

/// Open defects in the due list and in the rig-up. Sources: ML.A.403(a) (from memory): what seriously endangers flight
/// safety is put right before further flight; ML.A.403(c) (from memory): a deferred defect is put right within its
/// limits; 14 CFR 91.405 (gist read). That the last good day counts is how the record states dates (common practice, no
/// source).
class DefectsTest : public QObject {
    Q_OBJECT
private slots:
    /// A finding that a reading wrote states its time; its clearing by hand states none.
    void aClearingWithoutATimeAnswersWhatWasFoundThatDay() {
        Damaged damaged;
        damaged.foundAt("D", "2026-06-01", TimeOfDay(19, 30)).cleared("D", "2026-06-01");
        QCOMPARE(damaged.open(), std::size_t{0});
        damaged.foundAt("D", "2026-06-02", TimeOfDay(19, 30));
        QCOMPARE(damaged.open(), std::size_t{1}); // on another day it is found again
    }
    void whatAFailedReadingFoundIsDeferredByNobody() {
        for (const auto severity : {Severity::Barring, Severity::Minor}) {
            Damaged damaged;
            damaged.failed("D", "2026-06-01", severity).deferred("D", "2026-06-01", "2026-08-01");
            QVERIFY(damaged.bars("2026-06-02"));
            QCOMPARE(damaged.on("2026-06-02").standing, Standing::Lapsed);
            QCOMPARE(listOf(damaged, "2026-06-02").rows.at(0).requirement->force, Force::Mandatory);
            damaged.cleared("D", "2026-06-03");
            QCOMPARE(damaged.open(), std::size_t{0});
        }
    }
    void anOpenBarringDefectIsALapsedMandatoryRow() {
        const auto damaged = Damaged().found("D-1", "2024-05-01");
        const auto list = listOf(damaged, "2024-05-01");
        QCOMPARE(list.rows.size(), std::size_t{1});
        const auto& row = list.rows.front();
        COMPARE_STANDING(row.state.standing, "lapsed");
        QCOMPARE(row.state.because, Because::Defect);
        QCOMPARE(row.requirement->id.text(), std::string("defect/D-1"));
        QCOMPARE(row.requirement->force, Force::Mandatory);
        QVERIFY(row.programme == &defectProgramme());
        QVERIFY(spoken(row.requirement->title).find("a torn panel") != std::string::npos);
    }
    void theRigUpRefuses() {
        const auto list = listOf(Damaged().found("D-1", "2024-05-01"), "2024-05-02");
        const auto verdict = rigUp(list.rows, {});
        QVERIFY(!verdict.mayFly);
        QCOMPARE(verdict.reasons.size(), std::size_t{1});
        QVERIFY(verdict.reasons.front().row == &list.rows.front());
        QCOMPARE(verdict.reasons.front().kind, RigUpReason::Kind::Standing);
        // Nor to reach the place of the inspection: no rule read gives a defect a positioning flight.
        PlannedFlight positioning;
        positioning.positioning = true;
        QVERIFY(!rigUp(list.rows, positioning).mayFly);
    }
    void deferredByDate_data() {
        QTest::addColumn<QString>("today");
        QTest::addColumn<QString>("standing");
        QTest::addColumn<bool>("bars");
        QTest::newRow("31 days before") << "2024-06-30"
                                        << "clear" << false;
        QTest::newRow("30 days before") << "2024-07-01"
                                        << "nearing" << false;
        QTest::newRow("the last good day") << "2024-07-31"
                                           << "nearing" << false;
        QTest::newRow("the day after") << "2024-08-01"
                                       << "lapsed" << true;
    }
    void deferredByDate() {
        QFETCH(QString, today);
        QFETCH(QString, standing);
        QFETCH(bool, bars);
        const auto damaged = Damaged().found("D-1", "2024-05-01").deferred("D-1", "2024-05-02", "2024-07-31");
        const auto on = today.toStdString();
        COMPARE_STANDING(damaged.on(on).standing, standing);
        QCOMPARE(damaged.on(on).because, Because::Deferred);
        QCOMPARE(damaged.bars(on), bars);
        const auto list = listOf(damaged, on);
        const auto verdict = rigUp(list.rows, {});
        QCOMPARE(verdict.mayFly, !bars);
        QCOMPARE(verdict.notes.size(), std::size_t(bars ? 0 : 1)); // whoever flies it hears of it
    }
    void deferredByHours_data() {
        QTest::addColumn<int>("clock");
        QTest::addColumn<QString>("standing");
        QTest::newRow("601 min left") << 5399 << "clear";
        QTest::newRow("10 h left") << 5400 << "nearing";
        QTest::newRow("a minute left") << 5999 << "nearing";
        QTest::newRow("nothing left") << 6000 << "lapsed";
        QTest::newRow("beyond") << 6001 << "lapsed";
    }
    void deferredByHours() {
        QFETCH(int, clock);
        QFETCH(QString, standing);
        const auto damaged =
            Damaged().found("D-1", "2024-05-01").deferred("D-1", "2024-05-02", {}, 6000).at(clockOf(clock));
        COMPARE_STANDING(damaged.on("2024-05-03").standing, standing);
        QCOMPARE(damaged.bars("2024-05-03"), standing == QStringLiteral("lapsed"));
    }
    void ofTwoLimitsTheWorseHolds() {
        const auto byDate =
            Damaged().found("D-1", "2024-05-01").deferred("D-1", "2024-05-02", "2024-05-10", 6000).at(clockOf(10));
        QVERIFY(byDate.bars("2024-05-11"));
        QCOMPARE(byDate.on("2024-05-11").governs, std::optional(ClockName::Days));
        const auto byHours =
            Damaged().found("D-1", "2024-05-01").deferred("D-1", "2024-05-02", "2029-05-10", 6000).at(clockOf(6000));
        QVERIFY(byHours.bars("2024-05-11"));
        QCOMPARE(byHours.on("2024-05-11").governs, std::optional(ClockName::Minutes));
    }
    void hoursOfAnUnknownClockCannotBeProved() {
        // ML.A.504(a)(3): absence of the necessary information makes a component unserviceable (read).
        const auto damaged =
            Damaged().found("D-1", "2024-05-01").deferred("D-1", "2024-05-02", {}, 6000).at(nothingStated);
        COMPARE_STANDING(damaged.on("2024-05-03").standing, "unproven");
        QVERIFY(damaged.bars("2024-05-03"));
        QVERIFY(!rigUp(listOf(damaged, "2024-05-03").rows, {}).mayFly);
    }
    void aMinorOneGroundsOnlyWhenItsDeferralHasRunOut() {
        const auto open = Damaged().found("D-1", "2024-05-01", Severity::Minor);
        QVERIFY(!open.bars("2024-05-01") && !open.bars("2034-05-01"));
        const auto noted = listOf(open, "2024-05-01");
        COMPARE_STANDING(noted.rows.front().state.standing, "nearing");
        QCOMPARE(noted.rows.front().requirement->force, Force::Recommended);
        QCOMPARE(rigUp(noted.rows, {}).notes.size(), std::size_t{1});

        const auto deferred = Damaged(open).deferred("D-1", "2024-05-02", "2024-05-10");
        QVERIFY(!deferred.bars("2024-05-10"));
        QCOMPARE(listOf(deferred, "2024-05-10").rows.front().requirement->force, Force::Recommended);
        QVERIFY(deferred.bars("2024-05-11"));
        const auto list = listOf(deferred, "2024-05-11");
        COMPARE_STANDING(list.rows.front().state.standing, "lapsed");
        QCOMPARE(list.rows.front().requirement->force, Force::Mandatory);
        QVERIFY(!rigUp(list.rows, {}).mayFly);
    }
    void whatIsClearedGoes() {
        const auto damaged = Damaged().found("D-1", "2024-05-01").cleared("D-1", "2024-05-03");
        QCOMPARE(damaged.open(), std::size_t{0});
        QVERIFY(listOf(damaged, "2024-05-04").rows.empty());
    }
    void whatIsFoundAgainIsOpenAgain() {
        auto damaged = Damaged().found("D-1", "2024-05-01").deferred("D-1", "2024-05-02", "2030-01-01");
        damaged.cleared("D-1", "2024-05-03").found("D-1", "2024-06-01", Severity::Barring, "f2");
        QCOMPARE(damaged.open(), std::size_t{1});
        // The deferral was of the defect that is cleared.
        QVERIFY(damaged.bars("2024-06-01"));
    }
    void onlyItsOwnMarksCount() {
        const auto damaged = Damaged()
                                 .found("D-1", "2024-05-01")
                                 .found("D-2", "2024-05-01", Severity::Minor, "f2")
                                 .cleared("D-2", "2024-05-02")
                                 .cleared("D-3", "2024-05-02")
                                 .deferred("D-3", "2024-05-02", "2030-01-01");
        QCOMPARE(damaged.open(), std::size_t{1});
        QVERIFY(damaged.bars("2024-05-02"));
    }
    void marksCountInTheOrderOfTheirStamps() {
        // Found at 18:00, deferred at 18:01, cleared at 18:02 where no time was said: one day suffices for all.
        QCOMPARE(Damaged().cleared("D-1", "2024-05-01").found("D-1", "2024-05-01").open(), std::size_t{0});
        // What was cleared on the day before it was found is another story: it is open.
        QCOMPARE(Damaged().cleared("D-1", "2024-04-30").found("D-1", "2024-05-01").open(), std::size_t{1});
        // The latest deferral holds, in whichever order they came in.
        const auto damaged = Damaged()
                                 .found("D-1", "2024-05-01")
                                 .deferred("D-1", "2024-05-20", "2024-05-25")
                                 .deferred("D-1", "2024-05-10", "2024-12-31");
        QVERIFY(!damaged.bars("2024-05-25"));
        QVERIFY(damaged.bars("2024-05-26"));
    }
    void aDeferralNeverOutlastsItsDateByAnyClock() {
        QVERIFY(rc::check([] {
            const auto until = *rc::gen::inRange(0, 400);
            const auto now = *rc::gen::inRange(0, 400);
            const auto hoursLeft = *rc::gen::inRange(-5, 6000);
            const auto start = day("2024-01-01");
            const auto damaged = Damaged()
                                     .found("D-1", "2024-01-01")
                                     .deferred("D-1", "2024-01-01", addDays(start, until).iso(), 6000)
                                     .at(clockOf(6000 - hoursLeft));
            RC_ASSERT(damaged.bars(addDays(start, now).iso()) == (now > until || hoursLeft <= 0));
        }));
    }
};

CROWNRING_TEST(DefectsTest)

}

#include "defects_test.moc"
