// SPDX-License-Identifier: GPL-3.0-or-later

/// States of life over a real record: what is out of service is not asked for, and nothing of it is lost.

#include "answers/balloon_lines.h"
#include "answers/check_rig_up.h"
#include "answers/due.h"
#include "answers/kit_at.h"
#include "problem/faults/release_fault.h"
#include "said.h"
#include "store/scratch.h"
#include "test_class.h"
#include "whole_balloon.h"
#include "words/question_text.h"

#include <QtTest>

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* laidUp = R"({"entry":"balloon.state","on":"2024-03-01","balloon":"QE-ONE","state":"laid-up"})";
constexpr const char* back = R"({"entry":"balloon.state","on":"2024-05-01","balloon":"QE-ONE","state":"in-service"})";
constexpr const char* sold =
    R"({"entry":"item.state","on":"2024-03-01","item":"C1","state":"sold","to":"a club","id":"sale"})";
constexpr const char* renamed = R"({"entry":"balloon.entered","on":"2024-03-01","balloon":"QE-NEW"}
{"entry":"balloon.renamed","on":"2024-03-01","balloon":"QE-ONE","to":"QE-NEW","id":"renaming"})";

constexpr const char* lost = R"({"entry":"balloon.state","on":"2024-02-20","balloon":"QE-ONE","state":"lost"})";
constexpr const char* foundAgain =
    R"({"entry":"balloon.state","on":"2024-02-25","balloon":"QE-ONE","state":"in-service"})";

struct Watched {
    Watched() { posted(*scratch.record, aWholeBalloon); }
    Record& record() { return *scratch.record; }
    /// "E1 plain.look clear" …
    std::set<std::string> rows(const char* on, Outside outside = Outside::LeftOut) {
        std::set<std::string> rows;
        const auto list = due(record(), {}, day(on), outside).value();
        for (const auto& row : list.rows)
            rows.insert(row.item->id.text());
        return rows;
    }
    std::vector<std::string> listed(const char* on, Outside outside = Outside::LeftOut) {
        std::vector<std::string> names;
        const auto answer = balloonLines(record(), std::nullopt, day(on), outside).value();
        for (const auto& line : answer.lines)
            names.push_back(line.card.balloon.text());
        return names;
    }
    RigUp rigUpOf(std::vector<ItemId> kit, const char* on) {
        m_answer = checkRigUp(record(), kit, day(on), {}).value();
        return m_answer.verdict;
    }
    std::vector<Question> flownOut() { return asked(Question::Kind::FlownOutOfService); }
    std::vector<Question> asked(Question::Kind kind) {
        auto questions = record().questions().value();
        std::erase_if(questions, [&](const Question& each) { return each.kind != kind; });
        return questions;
    }
    Scratch scratch;

private:
    RigUpAnswer m_answer;
};

const std::set<std::string> all{"E1", "B1", "R1", "C1"};
const std::vector<ItemId> kit{ItemId("E1"), ItemId("B1"), ItemId("R1"), ItemId("C1")};

std::string hardLanding(const std::string& balloon, const std::string& on) {
    return R"({"entry":"event.reported","event":"hard-landing","balloon":")" + balloon + R"(","on":")" + on + R"("})";
}

std::string flight(const char* on, const char* more = "") {
    return std::string(R"({"entry":"flight.logged","balloon":"QE-ONE","minutes":30,"on":")") + on + "\"" + more + "}";
}

}

class OutOfServiceTest : public QObject {
    Q_OBJECT
private slots:
    void nothingIsDueWhileOutAndAllOfItAfter() {
        Watched shed;
        const auto before = due(shed.record(), {}, day("2024-06-01")).value();
        posted(shed.record(), laidUp);
        QCOMPARE(shed.rows("2024-02-29"), all);
        QCOMPARE(shed.rows("2024-03-01"), std::set<std::string>());
        QCOMPARE(shed.rows("2026-01-01"), std::set<std::string>());
        posted(shed.record(), back);
        QCOMPARE(shed.rows("2024-04-30"), std::set<std::string>());
        QCOMPARE(shed.rows("2024-05-01"), all);
        const auto after = due(shed.record(), {}, day("2024-06-01")).value();
        QCOMPARE(after.rows.size(), before.rows.size());
        for (std::size_t at = 0; at < after.rows.size(); ++at)
            QCOMPARE(after.rows[at].state.standing, before.rows[at].state.standing);
    }

    void whatLapsesMeanwhileIsTheListAsIfInService() {
        Watched shed;
        posted(shed.record(), laidUp);
        const auto meanwhile = due(shed.record(), {}, day("2025-06-01"), Outside::AsInService).value();
        QCOMPARE(meanwhile.rows.size(), all.size());
        for (const auto& row : meanwhile.rows)
            QCOMPARE(row.state.standing, Standing::Lapsed);
    }

    void whatIsTakenOffALaidUpBalloonIsInService() {
        Watched shed;
        posted(shed.record(), laidUp);
        posted(shed.record(), R"({"entry":"item.removed","on":"2024-04-01","balloon":"QE-ONE","item":"C1"}
{"entry":"programme.adopted","on":"2024-01-01","programme":"plain","items":["C1"]})");
        QCOMPARE(shed.rows("2024-04-02"), std::set<std::string>{"C1"});
    }

    void listsLeaveItOutUnlessAskedFor() {
        Watched shed;
        posted(shed.record(), laidUp);
        QCOMPARE(shed.listed("2024-02-29"), (std::vector<std::string>{"QE-ONE", "QE-TWO"}));
        QCOMPARE(shed.listed("2024-03-01"), std::vector<std::string>{"QE-TWO"});
        QCOMPARE(shed.listed("2024-03-01", Outside::AsInService), (std::vector<std::string>{"QE-ONE", "QE-TWO"}));
        const auto one = balloonLines(shed.record(), Registration("QE-ONE"), day("2024-04-01")).value();
        QCOMPARE(one.lines.size(), std::size_t(1));
        QCOMPARE(one.lines[0].card.out->state, ServiceState::LaidUp);
        QVERIFY(!one.lines[0].headline.row);
    }

    void aKitWithSomethingOutOfServiceMayNotFly() {
        Watched shed;
        QVERIFY(shed.rigUpOf(kit, "2024-03-02").mayFly);
        posted(shed.record(), sold);
        const auto verdict = shed.rigUpOf(kit, "2024-03-02");
        QVERIFY(!verdict.mayFly);
        QCOMPARE(verdict.reasons.size(), std::size_t(1));
        QCOMPARE(verdict.reasons[0].kind, RigUpReason::Kind::OutOfService);
        QCOMPARE(verdict.reasons[0].item->id, ItemId("C1"));
        QCOMPARE(spoken(reasonOf(*verdict.reasons[0].item->out)), std::string("sold on 2024-03-01 to a club"));
    }

    void allOnALaidUpBalloonIsOutWithIt() {
        Watched shed;
        posted(shed.record(), laidUp);
        const auto verdict = shed.rigUpOf(kit, "2024-03-02");
        QCOMPARE(verdict.reasons.size(), kit.size());
        QCOMPARE(spoken(reasonOf(*verdict.reasons[0].item->out)), std::string("with QE-ONE, laid up since 2024-03-01"));
    }

    void aFlightOnALaterDayIsQuestioned() {
        Watched shed;
        posted(shed.record(), laidUp);
        posted(shed.record(), flight("2024-03-01")); // perhaps before it was laid up
        QCOMPARE(shed.flownOut().size(), std::size_t(0));
        posted(shed.record(), flight("2024-04-01"));
        QCOMPARE(shed.flownOut().size(), std::size_t(1));
        QCOMPARE(shed.flownOut()[0].subject, std::string("QE-ONE"));
        posted(shed.record(), back);
        posted(shed.record(), flight("2024-05-01"));
        QCOMPARE(shed.flownOut().size(), std::size_t(1));
        QCOMPARE(shed.record().facts({{}, {ItemId("E1")}}, day("2024-06-01")).value()[0].clock.minutes,
                 std::optional(Minutes(150)));
    }

    void anEventOfAFormerRegistrationIsQuestioned() {
        Watched shed;
        posted(shed.record(), renamed);
        const auto landed = [&](const char* balloon, const char* on) {
            posted(shed.record(), hardLanding(balloon, on));
            return shed.asked(Question::Kind::HappenedOutOfService);
        };
        QCOMPARE(landed("QE-ONE", "2024-02-20").size(), std::size_t(0));
        QCOMPARE(landed("QE-NEW", "2024-04-01").size(), std::size_t(0));
        const auto questions = landed("QE-ONE", "2024-04-01");
        QCOMPARE(questions.size(), std::size_t(1));
        QCOMPARE(questions[0].subject, std::string("QE-ONE"));
        QVERIFY(words::questionText(questions[0]).contains(QStringLiteral("QE-NEW")));
    }

    void anEventOfALaidUpBalloonIsQuestioned() {
        Watched shed;
        posted(shed.record(), laidUp);
        posted(shed.record(), hardLanding("QE-ONE", "2024-04-01"));
        QCOMPARE(shed.asked(Question::Kind::HappenedOutOfService).size(), std::size_t(1));
        posted(shed.record(), back);
        posted(shed.record(), hardLanding("QE-ONE", "2024-05-02"));
        QCOMPARE(shed.asked(Question::Kind::HappenedOutOfService).size(), std::size_t(1));
        QCOMPARE(shed.flownOut().size(), std::size_t(0));
    }

    void aFlightAfterAStatedTimeIsQuestionedOnTheSameDay() {
        Watched shed;
        posted(shed.record(),
               R"({"entry":"balloon.state","on":"2024-03-01","time":"09:00Z","balloon":"QE-ONE","state":"lost"})");
        posted(shed.record(), flight("2024-03-01", R"(,"time":"08:00Z")"));
        QCOMPARE(shed.flownOut().size(), std::size_t(0));
        posted(shed.record(), flight("2024-03-01", R"(,"time":"10:00Z")"));
        QCOMPARE(shed.flownOut().size(), std::size_t(1));
    }

    void anItemThatFlewInAnyKitIsQuestioned_data() {
        QTest::addColumn<QString>("line");
        QTest::newRow("as it was fitted") << QString::fromStdString(flight("2024-04-01"));
        QTest::newRow("in a kit")
            << R"({"entry":"flight.logged","on":"2024-04-01","balloon":"QE-TWO","minutes":30,"kit":["E1","C1"]})";
    }
    void anItemThatFlewInAnyKitIsQuestioned() {
        QFETCH(QString, line);
        Watched shed;
        posted(shed.record(), sold);
        posted(shed.record(), line.toStdString());
        const auto questions = shed.flownOut();
        QCOMPARE(questions.size(), std::size_t(1));
        QCOMPARE(questions[0].subject, std::string("C1"));
        QCOMPARE(spoken(questions[0].detail), std::string("sold on 2024-03-01 to a club"));
    }

    void aPartOfALaidUpBalloonThatFlewElsewhereIsQuestioned() {
        Watched shed;
        posted(shed.record(), laidUp);
        posted(shed.record(),
               R"({"entry":"flight.logged","on":"2024-04-01","balloon":"QE-TWO","minutes":30,"kit":["C1","C2"]})");
        QCOMPARE(shed.flownOut().size(), std::size_t(1));
        QCOMPARE(shed.flownOut()[0].subject, std::string("C1"));
    }

    void aBalloonSaysWhatOfItIsOut() {
        Watched shed;
        posted(shed.record(), R"({"entry":"item.state","on":"2024-03-01","item":"E1","state":"scrapped"})");
        const auto told = [&](const char* on) {
            return balloonLines(shed.record(), Registration("QE-ONE"), day(on)).value().lines.front().outOfService;
        };
        QVERIFY(told("2024-02-29").empty());
        QCOMPARE(told("2024-03-01"), std::vector{ItemId("E1")});
        posted(shed.record(), R"({"entry":"balloon.state","on":"2024-03-02","balloon":"QE-ONE","state":"laid-up"})");
        QVERIFY(told("2024-03-02").empty()); // it says so of itself
    }

    void aVoidedSaleNeverWas() {
        Watched shed;
        posted(shed.record(), sold);
        posted(shed.record(), R"({"entry":"entry.voided","on":"2024-04-01","voids":"sale","reason":"fell through"})");
        QCOMPARE(shed.rows("2024-04-01"), all);
        QVERIFY(shed.record().verify().value().intact);
    }

    void anotherRegistrationTakesAllOfItOver() {
        Watched shed;
        posted(shed.record(), renamed);
        const auto before = shed.record().facts({Registration("QE-ONE"), {}}, day("2024-02-29")).value();
        const auto after = shed.record().facts({Registration("QE-NEW"), {}}, day("2024-03-01")).value();
        QCOMPARE(after.size(), before.size());
        QCOMPARE(shed.rows("2024-03-01"), all); // by what was adopted for QE-ONE
        QCOMPARE(shed.listed("2024-02-29"), (std::vector<std::string>{"QE-ONE", "QE-TWO"}));
        QCOMPARE(shed.listed("2024-03-01"), (std::vector<std::string>{"QE-NEW", "QE-TWO"}));
        posted(shed.record(), R"({"entry":"flight.logged","on":"2024-04-01","balloon":"QE-NEW","minutes":15})");
        QCOMPARE(shed.record().facts({{}, {ItemId("E1")}}, day("2024-04-01")).value()[0].clock.minutes,
                 std::optional(Minutes(75)));
        const auto cards = shed.record().balloons(day("2024-04-01")).value();
        QCOMPARE(cards[0].flown.minutes, Minutes(15)); // QE-NEW
        QCOMPARE(cards[0].before->from, Registration("QE-ONE"));
        QCOMPARE(cards[1].flown.minutes, Minutes(60));
        QVERIFY(shed.record().verify().value().intact);
    }

    void paperThatArrivesAfterTheRenamingFindsItsPlace() {
        Watched shed;
        posted(shed.record(), renamed);
        posted(shed.record(), R"({"entry":"item.fitted","on":"2024-02-15","balloon":"QE-ONE","item":"C2"})");
        posted(shed.record(), flight("2024-02-20"));
        const auto c2 = shed.record().facts({{}, {ItemId("C2")}}, day("2024-03-01")).value()[0];
        QCOMPARE(c2.balloon, std::optional(Registration("QE-NEW")));
        QCOMPARE(c2.clock.minutes, std::optional(Minutes(30)));
        QVERIFY(shed.record().verify().value().intact);
    }

    void aFlightUnderTheRegistrationThatWasGivenUpIsQuestioned() {
        Watched shed;
        posted(shed.record(), renamed);
        posted(shed.record(), flight("2024-04-01"));
        QCOMPARE(shed.flownOut().size(), std::size_t(1));
        QCOMPARE(spoken(shed.flownOut()[0].detail), std::string("flies as QE-NEW since 2024-03-01"));
        posted(shed.record(),
               R"({"entry":"entry.voided","on":"2024-05-01","voids":"renaming","reason":"never granted"})");
        QCOMPARE(shed.flownOut().size(), std::size_t(0));
        QCOMPARE(shed.record().facts({Registration("QE-ONE"), {}}, day("2024-05-01")).value().size(), kit.size());
    }

    void aFlightOfTheDayUnderTheFormerRegistrationIsQuestioned() {
        Watched shed;
        posted(shed.record(), renamed);
        posted(shed.record(), flight("2024-03-01")); // the renaming says no time: it counts on nothing that was fitted
        QCOMPARE(shed.flownOut().size(), std::size_t(1));
    }

    void aRegistrationThatCarriesAnotherBalloonIsNotTaken() {
        Watched shed;
        posted(shed.record(), renamed);
        posted(shed.record(), R"({"entry":"item.entered","on":"2024-03-02","item":"E9","kind":"envelope"}
{"entry":"item.fitted","on":"2024-03-02","balloon":"QE-TWO","item":"E9"})");
        const auto problems = problemsOf(
            shed.record(), R"({"entry":"balloon.renamed","on":"2024-03-03","balloon":"QE-NEW","to":"QE-TWO"})");
        QCOMPARE(problems.size(), std::size_t(1));
        QVERIFY(problems.front().fault == Fault(ReleaseFault::RegistrationInUse));
    }

    void norByPaperThatComesToTheRecordLater() {
        Watched shed;
        posted(shed.record(), renamed);
        posted(shed.record(), R"({"entry":"item.entered","on":"2024-03-02","item":"E9","kind":"envelope"}
{"entry":"balloon.renamed","on":"2024-03-03","balloon":"QE-NEW","to":"QE-TWO"})");
        const auto problems =
            problemsOf(shed.record(), R"({"entry":"item.fitted","on":"2024-03-02","balloon":"QE-TWO","item":"E9"})");
        QCOMPARE(problems.size(), std::size_t(1));
        QVERIFY(problems.front().fault == Fault(ReleaseFault::RegistrationInUse));
    }

    void whatIsOutOfServiceDoesNotFlyUnderAnotherRegistration() {
        // In whatever order both are stated.
        for (const auto& [first, then] : {std::pair(lost, renamed), std::pair(renamed, lost)}) {
            Watched shed;
            posted(shed.record(), first);
            const auto problems = problemsOf(shed.record(), then);
            QCOMPARE(problems.size(), std::size_t(1));
            QVERIFY(problems.front().fault == Fault(ReleaseFault::RenamedAndOut));
        }
        Watched shed;
        posted(shed.record(), lost);
        posted(shed.record(), foundAgain);
        posted(shed.record(), renamed);
    }

    void whatIsLeftOnTheFormerRegistrationDoesNotGoUnseen() {
        Watched shed;
        posted(shed.record(), renamed);
        posted(shed.record(), R"({"entry":"item.fitted","on":"2024-04-01","balloon":"QE-ONE","item":"C2"})");
        QCOMPARE(shed.listed("2024-04-01"), (std::vector<std::string>{"QE-NEW", "QE-ONE", "QE-TWO"}));
        QVERIFY(shed.rows("2024-04-01").contains("C2"));
    }

    void theKitOfADayOfRenamingIsWhatWasOnThen() {
        Watched shed;
        posted(shed.record(), R"({"entry":"balloon.entered","on":"2024-03-01","balloon":"QE-NEW"}
{"entry":"balloon.renamed","on":"2024-03-01","time":"10:00Z","balloon":"QE-ONE","to":"QE-NEW"}
{"entry":"item.fitted","on":"2024-03-01","time":"08:00Z","balloon":"QE-ONE","item":"C2"}
{"entry":"item.removed","on":"2024-03-01","time":"12:00Z","balloon":"QE-NEW","item":"C1"})");
        const auto fitted = [&](const char* balloon, int hour) {
            const Stamp at{Moment(day("2024-03-01"), TimeOfDay(hour, 0)), EntryId("x")};
            return kitAt(shed.record(), Registration(balloon), at).value();
        };
        const auto ids = [](std::initializer_list<const char*> names) {
            return std::vector<ItemId>(names.begin(), names.end());
        };
        QCOMPARE(fitted("QE-ONE", 7), ids({"B1", "C1", "E1", "R1"}));
        QCOMPARE(fitted("QE-ONE", 9), ids({"B1", "C1", "C2", "E1", "R1"}));
        QCOMPARE(fitted("QE-ONE", 11), ids({}));
        QCOMPARE(fitted("QE-NEW", 9), ids({}));
        QCOMPARE(fitted("QE-NEW", 11), ids({"B1", "C1", "C2", "E1", "R1"}));
        QCOMPARE(fitted("QE-NEW", 13), ids({"B1", "C2", "E1", "R1"}));
    }
};

CROWNRING_TEST(OutOfServiceTest, QCoreApplication)
#include "out_of_service_test.moc"
