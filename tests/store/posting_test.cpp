// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/due.h"
#include "said.h"
#include "scratch.h"
#include "test_class.h"
#include "words/question_text.h"

#include <QtTest>

namespace posting_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* start = R"({"entry":"item.entered","id":"a","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"balloon.entered","id":"b","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"item.fitted","id":"c","on":"2024-01-01","balloon":"QE-ONE","item":"E1"}
)";

std::int64_t entriesIn(Record& record) { return record.verify().value().entries; }

std::int64_t minutesOf(Record& record, const char* on) {
    return record.facts({std::nullopt, {ItemId("E1")}}, day(on)).value().front().clock.minutes.value().value();
}

}

class PostingTest : public QObject {
    Q_OBJECT
private slots:
    void allOrNothing() {
        Scratch scratch;
        posted(*scratch.record, start);
        const auto problems = problemsOf(
            *scratch.record, R"({"entry":"flight.logged","id":"f1","on":"2024-02-01","balloon":"QE-ONE","minutes":60}
{"entry":"flight.logged","id":"f2","on":"2024-02-02","balloon":"QE-TWO","minutes":60}
)");
        QCOMPARE(problems.size(), std::size_t{1});
        QCOMPARE(problems.front().code(), Code::UnknownReference);
        QCOMPARE(problems.front().where, (Where{"test.jsonl", 2, "balloon"}));
        QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
        QCOMPARE(entriesIn(*scratch.record), 3);
        QCOMPARE(minutesOf(*scratch.record, "2024-03-01"), 0);
    }
    void everyBadLineIsNamed() {
        Scratch scratch;
        posted(*scratch.record, start);
        const auto problems =
            problemsOf(*scratch.record, R"({"entry":"flight.logged","on":"2024-02-01","balloon":"QE-X","minutes":60}

{"entry":"item.fitted","on":"2024-02-01","balloon":"QE-ONE","item":"E9"}
{"entry":"flight.logged","on":"2024-02-01","balloon":"QE-ONE","minutes":60,"kit":["E1","K7"]}
)");
        QCOMPARE(problems.size(), std::size_t{3});
        QCOMPARE(problems[0].where.line, 1);
        QCOMPARE(problems[1].where, (Where{"test.jsonl", 3, "item"}));
        QCOMPARE(problems[2].where, (Where{"test.jsonl", 4, "kit"}));
    }
    void referencesMayPointForwardInOneFile() {
        Scratch scratch;
        QVERIFY(problemsOf(*scratch.record, R"({"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"flight.logged","on":"2024-01-02","balloon":"QE-ONE","minutes":45}
{"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
)")
                    .empty());
        QCOMPARE(minutesOf(*scratch.record, "2024-01-02"), 45);
        QCOMPARE(minutesOf(*scratch.record, "2024-01-01"), 0);
    }
    void anIdServesOnce() {
        Scratch scratch;
        posted(*scratch.record, start);
        const auto again = problemsOf(
            *scratch.record, R"({"entry":"flight.logged","id":"new","on":"2024-02-01","balloon":"QE-ONE","minutes":60}
{"entry":"flight.logged","id":"c","on":"2024-02-01","balloon":"QE-ONE","minutes":60})");
        QCOMPARE(again.front().code(), Code::DuplicateId);
        QCOMPARE(again.front().where, (Where{"test.jsonl", 2, "id"}));
        QCOMPARE(entriesIn(*scratch.record), 3);
        const auto twice = problemsOf(
            *scratch.record, R"({"entry":"flight.logged","id":"x","on":"2024-02-01","balloon":"QE-ONE","minutes":60}
{"entry":"flight.logged","id":"x","on":"2024-02-02","balloon":"QE-ONE","minutes":60})");
        QCOMPARE(twice.front().code(), Code::DuplicateId);
        QCOMPARE(twice.front().where.line, 2);
    }
    void anIdIsMadeWhereNoneIsGiven() {
        Scratch scratch;
        posted(*scratch.record, start);
        const auto receipt =
            posted(*scratch.record, R"({"entry":"flight.logged","on":"2024-02-01","balloon":"QE-ONE","minutes":60}
{"entry":"flight.logged","on":"2024-02-01","balloon":"QE-ONE","minutes":60})");
        QVERIFY(receipt.ids[0] != receipt.ids[1]);
        QVERIFY(scratch.record->line(receipt.ids[0]).value().has_value());
    }
    void whatIsAmendedMustBeThere() {
        Scratch scratch;
        posted(*scratch.record, start);
        const auto voided =
            problemsOf(*scratch.record, R"({"entry":"entry.voided","on":"2024-02-01","voids":"nothing","reason":"x"})");
        QCOMPARE(voided.front().code(), Code::UnknownReference);
        QCOMPARE(voided.front().where.key, std::string("voids"));
        const auto corrected =
            problemsOf(*scratch.record,
                       R"({"entry":"entry.corrected","on":"2024-02-01","replaces":"c","with":{"balloon":"QE-NONE"}})");
        QCOMPARE(corrected.front().code(), Code::UnknownReference);
        QCOMPARE(corrected.front().where.key, std::string("with/balloon"));
        const auto nonsense = problemsOf(
            *scratch.record, R"({"entry":"entry.corrected","on":"2024-02-01","replaces":"c","with":{"minuts":3}})");
        QCOMPARE(nonsense.front().code(), Code::UnknownKey);
        QCOMPARE(nonsense.front().where.key, std::string("with/minuts"));
        QCOMPARE(entriesIn(*scratch.record), 3);
    }
    void aCorrectedFlightReflowsToWhatWasFittedThen() {
        // regulations 7.F: corrections to an old flight reach the parts installed on that date.
        Scratch scratch;
        posted(
            *scratch.record,
            R"({"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope","brought_forward":{"minutes":12000}}
{"entry":"item.entered","on":"2024-01-01","item":"E2","kind":"envelope","brought_forward":{"minutes":3000}}
{"entry":"item.entered","on":"2024-01-01","item":"B1","kind":"basket","brought_forward":{"minutes":38400}}
{"entry":"item.entered","on":"2024-01-01","item":"R1","kind":"burner","brought_forward":{"minutes":5700}}
{"entry":"item.entered","on":"2024-01-01","item":"R2","kind":"burner","brought_forward":{"minutes":600}}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-TWO"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"B1"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"R1"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-TWO","item":"E2"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-TWO","item":"R2"}
{"entry":"flight.logged","id":"first","on":"2024-05-01","balloon":"QE-ONE","minutes":90}
{"entry":"item.removed","on":"2024-05-02","balloon":"QE-ONE","item":"B1"}
{"entry":"item.fitted","on":"2024-05-03","balloon":"QE-TWO","item":"B1"}
{"entry":"flight.logged","on":"2024-05-04","balloon":"QE-TWO","minutes":120})");
        const auto minutes = [&](const char* item) {
            return scratch.record->facts({std::nullopt, {ItemId(item)}}, day("2024-06-01"))
                .value()
                .front()
                .clock.minutes->value();
        };
        QCOMPARE(minutes("E1"), 12090); // 201.5 h
        QCOMPARE(minutes("B1"), 38610); // 643.5 h
        QCOMPARE(minutes("R1"), 5790);  // 96.5 h
        QCOMPARE(minutes("E2"), 3120);  // 52.0 h
        QCOMPARE(minutes("R2"), 720);   // 12.0 h
        posted(*scratch.record,
               R"({"entry":"entry.corrected","on":"2024-06-01","replaces":"first","with":{"minutes":100}})");
        QCOMPARE(minutes("E1"), 12100);
        QCOMPARE(minutes("B1"), 38620);
        QCOMPARE(minutes("R1"), 5800);
        QCOMPARE(minutes("E2"), 3120);
    }
    void aSearchFoldsEveryLetter() {
        Scratch scratch;
        posted(*scratch.record, start);
        posted(
            *scratch.record,
            R"({"entry":"flight.logged","on":"2024-02-01","balloon":"QE-ONE","minutes":60,"by":"Åse Ørn","note":"50% größer_als"}
{"entry":"flight.logged","on":"2024-02-02","balloon":"QE-ONE","minutes":60,"by":"Aase Orn"})");
        const auto found = [&](const char* text, int limit = 10) {
            return scratch.record->lines({text, {}, {}, limit}).value().size();
        };
        for (const char* text : {"Åse", "åse", "ÅSE ørn", "Größer_", "50% GRÖßER"})
            QVERIFY2(found(text) == 1, text);
        for (const char* text : {"Öse", "é", "50%größer", "gr%ßer", "o_n"})
            QVERIFY2(found(text) == 0, text);
        QCOMPARE(found("orn"), std::size_t{1});
        QCOMPARE(found("qe-one LOGGED"), std::size_t{2});
        QCOMPARE(found("qe-one logged", 1), std::size_t{1});
    }
    void aVoidCanBeVoided() {
        Scratch scratch;
        posted(*scratch.record, start);
        posted(*scratch.record, R"({"entry":"flight.logged","id":"f","on":"2024-02-01","balloon":"QE-ONE","minutes":60}
{"entry":"entry.voided","id":"v","on":"2024-02-02","voids":"f","reason":"logged twice"})");
        QCOMPARE(minutesOf(*scratch.record, "2024-03-01"), 0);
        QVERIFY(scratch.record->line(EntryId("f")).value()->voided);
        posted(*scratch.record,
               R"({"entry":"entry.voided","on":"2024-02-03","voids":"v","reason":"it was flown after all"})");
        QCOMPARE(minutesOf(*scratch.record, "2024-03-01"), 60);
        QVERIFY(!scratch.record->line(EntryId("f")).value()->voided);
    }
    void contradictionsAreAskedAndDoNotStopThePost() {
        Scratch scratch;
        posted(*scratch.record, start);
        posted(*scratch.record, R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-TWO"}
{"entry":"item.fitted","id":"moved","on":"2024-02-01","balloon":"QE-TWO","item":"E1"}
{"entry":"item.removed","id":"ghost","on":"2024-02-02","balloon":"QE-ONE","item":"E1"}
{"entry":"requirement.done","id":"high","on":"2024-03-01","item":"E1","requirement":"r","clock":{"minutes":500}}
{"entry":"requirement.done","id":"low","on":"2024-04-01","item":"E1","requirement":"r","clock":{"minutes":400}}
{"entry":"item.entered","id":"again","on":"2024-05-01","item":"E1","kind":"envelope"})");
        const auto questions = scratch.record->questions().value();
        std::vector<Question::Kind> kinds;
        for (const auto& question : questions) {
            kinds.push_back(question.kind);
            QVERIFY(!words::questionText(question).isEmpty());
        }
        using Kind = Question::Kind;
        QCOMPARE(kinds,
                 (std::vector{Kind::FittedElsewhere, Kind::RemovedNotFitted, Kind::ClockDiffers, Kind::ClockBackward,
                              Kind::EnteredTwice, Kind::OnlyStated})); // only what counts by now: the later one
        posted(*scratch.record,
               R"({"entry":"entry.voided","on":"2024-06-01","voids":"ghost","reason":"never happened"})");
        QCOMPARE(scratch.record->questions().value().size(), std::size_t{5});
    }
    void anItemWhoseEntryIsVoidedIsAsked() {
        Scratch scratch;
        posted(*scratch.record, start);
        posted(*scratch.record, R"({"entry":"entry.voided","on":"2024-06-01","voids":"a","reason":"wrong id"})");
        QVERIFY(scratch.record->facts({}, day("2024-07-01")).value().empty());
        QCOMPARE(scratch.record->questions().value().front().kind, Question::Kind::NotEntered);
    }
    void aProgrammeIsAdoptedWithItsText() {
        Scratch scratch;
        posted(*scratch.record, start);
        posted(
            *scratch.record,
            R"({"entry":"programme.adopted","id":"p","on":"2024-01-02","programme":"part-ml-hot-air","balloons":["QE-ONE"]})");
        const auto line = scratch.record->line(EntryId("p")).value();
        const auto& adopted = std::get<ProgrammeAdopted>(line->entry.body);
        QCOMPARE(adopted.digest, hex(sha256(adopted.document)));
        QVERIFY(adopted.document.find("ml.inspection") != std::string::npos);
        QVERIFY(due(*scratch.record, {}, day("2024-01-01")).value().rows.empty());
        QVERIFY(!due(*scratch.record, {}, day("2024-01-02")).value().rows.empty());
        const auto unknown = problemsOf(
            *scratch.record,
            R"({"entry":"programme.adopted","on":"2024-01-02","programme":"nobody-knows","everything":true})");
        QCOMPARE(unknown.front().code(), Code::UnknownProgramme);
        QCOMPARE(unknown.front().where, (Where{"test.jsonl", 1, "programme"}));
        const auto broken = problemsOf(
            *scratch.record,
            R"({"entry":"programme.adopted","on":"2024-01-02","programme":"x","everything":true,"document":{"programme":"x","revision":"1","title":"t","source":"s","requirements":[{"id":"r","title":"t","source":"s","kinds":["envelope"],"action":"inspect","limits":[{"clock":"months","every":0}]}]}})");
        QCOMPARE(broken.front().code(), Code::BadProgramme);
        QCOMPARE(broken.front().where.key, std::string("document/requirements/0/limits/0/every"));
    }
};

CROWNRING_TEST(PostingTest, QCoreApplication)

}

#include "posting_test.moc"
