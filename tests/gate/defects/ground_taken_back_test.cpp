// SPDX-License-Identifier: GPL-3.0-or-later

/// What happened to a balloon, and what its manual bounds, is taken back by whom the rules let decide of a defect
/// (ML.A.403(a), (b); 14 CFR 43.11(b), 91.405; a reading of ours), who says so and why.

#include "acts/shop.h"
#include "problem/faults/release_fault.h"
#include "said.h"
#include "test_class.h"

#include <array>

namespace ground_taken_back_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

/// A balloon that landed hard, and a manual; words of others came since.
struct Grounded {
    Shop shop;
    Grounded() {
        shop.say(
            R"({"entry":"event.reported","on":"2026-05-20","id":"landing","by":"Sam Help","balloon":"QE-ONE","event":"hard-landing"}
{"entry":"limit.stated","on":"2026-05-20","id":"bound","by":"Sam Help","type":"T-77","kind":"envelope","quantity":"grab-strength","unit":"N","least":140,"places":2,"source":"Manual 77, 6.3"}
{"entry":"event.reported","on":"2020-05-20","item":"E1","event":"mildew"}
{"entry":"event.reported","on":"2020-05-21","item":"E1","event":"mildew"}
{"entry":"event.reported","on":"2020-05-22","item":"E1","event":"mildew"})");
    }
};

std::string taken(const char* id, const char* by) {
    return std::string(R"({"entry":"entry.voided","on":"2026-05-25","voids":")") + id + R"(","by":")" + by +
           R"(","reason":"another balloon"})";
}
std::string corrected(const char* id, const char* with, const char* by, const char* why = "misread") {
    return std::string(R"({"entry":"entry.corrected","on":"2026-05-25","replaces":")") + id + R"(","by":")" + by +
           R"(","note":")" + why + R"(","with":)" + with + "}";
}

/// Dated before the balloon landed hard.
constexpr std::array<std::pair<const char*, const char*>, 5> comesLate{
    {{"a removal", R"({"entry":"item.removed","on":"2026-05-19","item":"E1","balloon":"QE-ONE")"},
     {"a fitting elsewhere", R"({"entry":"item.fitted","on":"2026-05-19","item":"E1","balloon":"QE-TWO")"},
     {"another registration", R"({"entry":"balloon.renamed","on":"2026-05-19","balloon":"QE-ONE","to":"QE-NEW")"},
     {"a part's removal", R"({"entry":"item.removed","on":"2026-05-19","item":"V1","from":"R1")"},
     {"a part's fitting elsewhere", R"({"entry":"item.fitted","on":"2026-05-19","item":"V1","to":"R2")"}}};
std::string saidBy(const QString& late, const char* person, const char* note = "it was in the shed") {
    return late.toStdString() + R"(,"note":")" + note + R"(","by":")" + person + R"("})";
}
const std::string withAPart = R"({"entry":"balloon.entered","on":"2016-05-01","balloon":"QE-TWO"}
{"entry":"balloon.entered","on":"2026-05-01","balloon":"QE-NEW"}
{"entry":"item.entered","on":"2016-05-01","item":"R1","kind":"burner"}
{"entry":"item.entered","on":"2016-05-01","item":"R2","kind":"burner"}
{"entry":"item.entered","on":"2016-05-01","item":"V1","kind":"other"}
{"entry":"item.fitted","on":"2016-05-01","item":"R1","balloon":"QE-ONE"}
{"entry":"item.fitted","on":"2016-05-01","item":"V1","to":"R1"})";
const std::string landedHard =
    R"({"entry":"event.reported","on":"2026-05-20","by":"Sam Help","balloon":"QE-ONE","event":"hard-landing"})";
const std::string removedBefore = R"({"entry":"item.removed","on":"2026-05-19","item":"E1","balloon":"QE-ONE"})";
const std::string movedAfter = R"({"entry":"item.removed","on":"2026-05-21","item":"E1","balloon":"QE-ONE"}
{"entry":"item.fitted","on":"2026-05-22","item":"E1","balloon":"QE-ONE"})";
const std::string flownAndTakenOff =
    R"({"entry":"item.removed","on":"2026-05-20","time":"07:00Z","item":"E1","balloon":"QE-ONE"}
{"entry":"flight.logged","on":"2026-05-20","time":"05:00Z","id":"flown","by":"Sam Help","balloon":"QE-ONE","minutes":40}
{"entry":"event.reported","on":"2026-05-20","time":"09:00Z","by":"Sam Help","balloon":"QE-ONE","event":"hard-landing"}
{"entry":"event.reported","on":"2020-05-20","item":"E1","event":"mildew"}
{"entry":"event.reported","on":"2020-05-21","item":"E1","event":"mildew"})";
constexpr const char* toAnotherDay = R"({"on":"2026-05-18"})";
constexpr const char* fiveMinutesMore = R"({"minutes":45})";

std::size_t eventsIn(const Shop& shop) {
    std::size_t events = 0;
    for (const char* item : {"E1", "V1"})
        events += shop.record().facts({{}, {ItemId(item)}}, day("2026-06-20")).value().at(0).events.size();
    return events;
}

/// The name of what it is refused for; empty where it is taken.
std::string refusedAs(const Shop& shop, const std::string& entry) {
    const auto problems = problemsOf(shop.record(), entry);
    return problems.empty() ? "" : std::string(rowOf(problems.front().fault).name);
}

/// The envelope of the balloon that landed hard was fitted to it, and flew as another one on that day.
struct Fallen {
    Shop shop;
    std::string fitting;
    Fallen() {
        fitting = shop.record()
                      .lines({.text = "E1", .kind = "item.fitted", .before = {}, .limit = 1})
                      .value()
                      .front()
                      .entry.id.text();
        shop.say(R"({"entry":"balloon.entered","on":"2016-05-01","balloon":"QE-TWO"}
{"entry":"item.entered","on":"2016-05-01","item":"B1","kind":"basket"}
{"entry":"flight.logged","on":"2026-05-20","id":"flown","by":"Sam Help","balloon":"QE-TWO","minutes":40,"kit":["E1"]}
{"entry":"event.reported","on":"2026-05-20","by":"Sam Help","balloon":"QE-ONE","event":"hard-landing"}
{"entry":"event.reported","on":"2026-05-20","by":"Sam Help","balloon":"QE-TWO","event":"wire-contact"}
{"entry":"event.reported","on":"2020-05-20","item":"E1","event":"mildew"}
{"entry":"event.reported","on":"2020-05-21","item":"E1","event":"mildew"})");
    }
    [[nodiscard]] std::string answerTo(const std::string& entry) const { return refusedAs(shop, entry); }
};

void refused(const std::string& entry, ReleaseFault fault) {
    Grounded record;
    const auto problems = problemsOf(record.shop.record(), entry);
    QCOMPARE(problems.size(), std::size_t{1});
    QVERIFY2(problems.front().fault == Fault(fault), qPrintable(words::line(problems.front())));
    QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
}

}

class GroundTakenBackTest : public QObject {
    Q_OBJECT
private slots:
    void nobodyTakesBackWhatHappened() {
        refused(taken("landing", ""), ReleaseFault::GroundUnsaid);
        refused(taken("landing", "Nobody Known"), ReleaseFault::MayNotGradeDown);
        for (const char* with : {R"({"event":"nothing"})", R"({"on":"2020-01-01"})", R"({"balloon":null,"item":"E1"})"})
            refused(corrected("landing", with, "Nobody Known"), ReleaseFault::MayNotGradeDown);
        refused(corrected("landing", R"({"on":"2020-01-01"})", "Ada Rhos", " "), ReleaseFault::GroundUnsaid);
    }
    void norWhatTheManualBounds() {
        refused(taken("bound", ""), ReleaseFault::GroundUnsaid);
        refused(taken("bound", "Nobody Known"), ReleaseFault::MayNotGradeDown);
        for (const char* with : {R"({"least":80})", R"({"jaw_mm":50})", R"({"on":"2028-01-01"})"})
            refused(corrected("bound", with, "Nobody Known"), ReleaseFault::MayNotGradeDown);
    }
    void whoMayDecideDoes() {
        Grounded record;
        QCOMPARE(problemsOf(record.shop.record(), taken("landing", "Ada Rhos")).size(), std::size_t{0});
        QCOMPARE(problemsOf(record.shop.record(), corrected("bound", R"({"least":133.4})", "Ada Rhos")).size(),
                 std::size_t{0});
    }
    /// An event falls on what was there: that it was not is no slip of a pen once it was reported.
    void norIsAnItemSaidToHaveBeenElsewhere() {
        const Fallen fallen;
        for (const auto& [entry, with] :
             {std::pair{fallen.fitting.c_str(), R"({"on":"2026-05-21"})"},
              std::pair{fallen.fitting.c_str(), R"({"balloon":"QE-TWO"})"}, std::pair{"flown", R"({"kit":["B1"]})"},
              std::pair{"flown", R"({"on":"2026-05-18"})"}}) {
            QCOMPARE(fallen.answerTo(corrected(entry, with, "Nobody Known")), std::string("may-not-grade-down"));
            QCOMPARE(fallen.answerTo(corrected(entry, with, "", "misread")), std::string("ground-unsaid"));
        }
        QCOMPARE(fallen.answerTo(taken(fallen.fitting.c_str(), "Nobody Known")), std::string("may-not-grade-down"));
        QCOMPARE(fallen.answerTo(taken("flown", "Nobody Known")), std::string("may-not-grade-down"));
        // What takes nothing away is anybody's.
        QCOMPARE(fallen.answerTo(corrected("flown", R"({"minutes":45})", "")), std::string());
        QCOMPARE(fallen.answerTo(corrected(fallen.fitting.c_str(), R"({"on":"2016-05-02"})", "")), std::string());
        QCOMPARE(fallen.answerTo(taken("flown", "Ada Rhos")), std::string());
    }
    /// Paper that comes late takes off nothing either: only who may decide of a defect says that it was elsewhere.
    void whatFellStaysOnItWhateverComesLater_data() {
        QTest::addColumn<QString>("late");
        for (const auto& [name, entry] : comesLate)
            QTest::newRow(name) << QString::fromLatin1(entry);
    }
    void whatFellStaysOnItWhateverComesLater() {
        QFETCH(QString, late);
        Shop shop;
        shop.say(withAPart);
        shop.say(landedHard);
        QCOMPARE(eventsIn(shop), std::size_t{2});
        QCOMPARE(refusedAs(shop, saidBy(late, "Sam Help")), std::string("may-not-grade-down"));
        QCOMPARE(refusedAs(shop, saidBy(late, "")), std::string("ground-unsaid"));
        QCOMPARE(refusedAs(shop, saidBy(late, "Ada Rhos", " ")), std::string("ground-unsaid"));
        QCOMPARE(eventsIn(shop), std::size_t{2});
        shop.say(saidBy(late, "Ada Rhos"));
        QVERIFY(eventsIn(shop) < 2);
        QVERIFY(shop.record().verify().value().intact);
    }
    /// What fell on nothing before is lost to nobody, and what comes after takes nothing away.
    void paperInAnyOrderThatTakesNothingOffIsAnybodys() {
        Shop together;
        together.say(landedHard + "\n" + removedBefore);
        Shop removedFirst;
        removedFirst.say(removedBefore);
        removedFirst.say(landedHard);
        Shop later;
        later.say(landedHard);
        later.say(movedAfter);
    }
    /// It was taken off before the hour that the report says, and had flown: by that flight alone it suffered it.
    void aFlightWithoutAKitIsTakenBackByWhoMayDecide() {
        for (const bool moves : {false, true}) {
            Shop shop;
            shop.say(flownAndTakenOff);
            const auto change = [&](const char* by) {
                return moves ? corrected("flown", toAnotherDay, by) : taken("flown", by);
            };
            QCOMPARE(refusedAs(shop, change("Nobody Known")), std::string("may-not-grade-down"));
            QCOMPARE(refusedAs(shop, corrected("flown", fiveMinutesMore, "")), std::string());
            QCOMPARE(refusedAs(shop, change("Ada Rhos")), std::string());
        }
    }
    void aSlipIsTakenBackAtOnce() {
        Shop shop;
        const auto id = shop.say(R"({"entry":"event.reported","on":"2026-05-20","by":"Sam Help","balloon":"QE-ONE",)"
                                 R"("event":"hard-landing"})")
                            .ids.at(0);
        QCOMPARE(problemsOf(shop.record(), taken(id.text().c_str(), "Sam Help")).size(), std::size_t{0});
    }
};

CROWNRING_TEST(GroundTakenBackTest, QCoreApplication)

}

#include "ground_taken_back_test.moc"
