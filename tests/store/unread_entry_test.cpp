// SPDX-License-Identifier: GPL-3.0-or-later
/// Nothing comes into the journal that our own reader refuses; a record that holds such an entry from before still
/// opens, says which, and lets it be voided.
#include "acts/adopt.h"
#include "answers/check_rig_up.h"
#include "answers/due.h"
#include "rules/programme/programme.h"
#include "said.h"
#include "scratch.h"
#include "test_class.h"
#include "unread_record.h"
#include "words/question_text.h"

#include <QtTest>

namespace unread_entry_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* shed = R"({"entry":"item.entered","id":"a","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"balloon.entered","id":"b","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"item.fitted","id":"c","on":"2024-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"programme.adopted","id":"good","on":"2024-01-02","programme":"part-ml-hot-air","everything":true}
{"entry":"person.entitled","id":"ada","on":"2020-01-01","person":"Ada Rhos","capacity":"independent-certifying-staff","licence":"QE.66.1"}
{"entry":"defect.found","id":"d","on":"2024-02-01","item":"E1","defect":"D","what":"scuffed","severity":"minor"}
{"entry":"flight.logged","id":"f1","on":"2024-02-01","balloon":"QE-ONE","minutes":60})";

std::string document() { return std::string(shelfText(ProgrammeId("us-14cfr"))); }

Entry entryOf(Body body) {
    Entry entry;
    entry.id = EntryId("new");
    entry.on = day("2024-03-01");
    entry.body = std::move(body);
    return entry;
}

FlightLogged flight(std::int64_t minutes) {
    return {Registration("QE-ONE"), {Minutes{minutes}, {}, {}}, {}, {}, false};
}

/// What an earlier program left, opened by this one.
void holdUnread(Scratch& scratch, const std::string& text) {
    posted(*scratch.record, shed);
    scratch.record.reset();
    writeUnread(scratch.file(), text);
    scratch.reopen();
}

std::int64_t minutesOf(Record& record) {
    return record.facts({std::nullopt, {ItemId("E1")}}, day("2024-12-31")).value().front().clock.minutes->value();
}

std::vector<RigUpReason> unreadReasons(Record& record) {
    auto answer = checkRigUp(record, {ItemId("E1")}, day("2024-03-01"), {}).value();
    std::erase_if(answer.verdict.reasons, [](const auto& each) { return each.kind != RigUpReason::Kind::Unread; });
    return answer.verdict.reasons;
}

constexpr const char* voidIt =
    R"({"entry":"entry.voided","id":"v","on":"2024-03-01","voids":"twice","reason":"E1 was named twice"})";

}

class UnreadEntryTest : public QObject {
    Q_OBJECT
private slots:
    void whoIsBoundIsNamedOnce() {
        Scratch scratch;
        posted(*scratch.record, shed);
        auto& record = *scratch.record;
        const auto entries = record.verify().value().entries;
        const auto refused = [&](Bound bound) {
            const auto receipt =
                adopt(record, record, document(), "us.json", std::move(bound), day("2024-01-02"), "Ada");
            return receipt ? Problem{} : receipt.error().front();
        };
        const auto items = refused(BoundItems{{ItemId("E1"), ItemId("E1")}});
        QCOMPARE(items.code(), Code::BadValue);
        QCOMPARE(items.where.key, std::string("items"));
        QVERIFY(isSaid(items));
        const auto balloons = refused(BoundBalloons{{Registration("QE-ONE"), Registration("QE-ONE")}});
        QCOMPARE(balloons.where.key, std::string("balloons"));
        QCOMPARE(record.verify().value().entries, entries);
        QVERIFY(record.rebuild());
    }
    void whatOurReaderRefusesIsNotWritten_data() {
        QTest::addColumn<Entry>("entry");
        QTest::addColumn<QString>("key");
        const auto row = [](const char* name, Entry entry, const char* key) {
            QTest::newRow(name) << std::move(entry) << QString::fromLatin1(key);
        };
        const auto programme = [](Bound bound) {
            return ProgrammeAdopted{ProgrammeId("us-14cfr"), std::move(bound), document(), hex(sha256(document()))};
        };
        row("an item twice", entryOf(programme(BoundItems{{ItemId("E1"), ItemId("E1")}})), "items");
        row("nobody", entryOf(programme(BoundItems{})), "items");
        row("a flight of a month", entryOf(flight(40'000)), "minutes");
        row("a blank reason", entryOf(EntryVoided{EntryId("f1"), "  "}), "reason");
        row("a correction of nothing", entryOf(EntryCorrected{EntryId("f1"), "{}"}), "with");
        auto null = entryOf(flight(60));
        null.note = std::string("a\0b", 3);
        row("a null character", std::move(null), "note");
        auto latin = entryOf(flight(60));
        latin.note = "gr\xfcn";
        row("no UTF-8", std::move(latin), "");
        auto number = entryOf(flight(60));
        std::get<FlightLogged>(number.body).hottest = Celsius(std::numeric_limits<double>::quiet_NaN());
        row("no number", std::move(number), "max_temp_c");
    }
    void whatOurReaderRefusesIsNotWritten() {
        QFETCH(Entry, entry);
        QFETCH(QString, key);
        Scratch scratch;
        posted(*scratch.record, shed);
        const auto entries = scratch.record->verify().value().entries;
        auto good = entryOf(flight(10));
        good.id = EntryId("before");
        const auto receipt = scratch.record->append({{good, 1}, {entry, 2}}, "made.jsonl");
        QVERIFY(!receipt);
        QCOMPARE(receipt.error().front().where, (Where{"made.jsonl", 2, key.toStdString()}));
        QVERIFY(isSaid(receipt.error().front()));
        QCOMPARE(scratch.record->verify().value().entries, entries);
        QCOMPARE(minutesOf(*scratch.record), 60);
        QVERIFY(scratch.record->rebuild());
    }
    void aRecordThatHoldsOneStillAnswers() {
        Scratch scratch;
        holdUnread(scratch, adoptedTwice(document()));
        auto& record = *scratch.record;
        QVERIFY(!record.readOnlyReason());
        const auto list = due(record, {}, day("2024-03-01"));
        QVERIFY2(list, list ? "" : text(list.error()).c_str());
        QVERIFY(!list->rows.empty());
        for (const auto& row : list->rows)
            QVERIFY(row.requirement->id.text().rfind("us", 0) != 0); // nothing follows from it
        const auto rebuilt = record.rebuild();
        QVERIFY2(rebuilt, rebuilt ? "" : text(rebuilt.error()).c_str());
        const auto saved = record.backUpTo(scratch.beside("copy"));
        QVERIFY2(saved, saved ? "" : text(saved.error()).c_str());
        QVERIFY(openRecord(scratch.beside("copy"), OpenMode::Existing));
        const auto verdict = record.verify().value();
        QVERIFY2(verdict.intact, verdict.reason ? spoken(*verdict.reason).c_str() : ""); // it is what was written
        QCOMPARE(verdict.entries, 8);
        QCOMPARE(minutesOf(record), 60);
        posted(record, R"({"entry":"flight.logged","on":"2024-03-02","balloon":"QE-ONE","minutes":10})");
        QCOMPARE(minutesOf(record), 70);
    }
    void itSaysWhichAndWhy() {
        Scratch scratch;
        holdUnread(scratch, adoptedTwice(document()));
        auto& record = *scratch.record;
        const auto questions = record.unreadable().value();
        QCOMPARE(questions.size(), std::size_t{1});
        QCOMPARE(questions.front().kind, Question::Kind::Unreadable);
        QCOMPARE(questions.front().subject, std::string("twice"));
        for (const char* said : {"line 8 of the journal", "programme.adopted", "key 'items'", "'E1' is named twice"})
            QVERIFY2(words::questionText(questions.front()).contains(QLatin1String(said)), said);
        const auto all = record.questions().value();
        QVERIFY(std::find(all.begin(), all.end(), questions.front()) != all.end());
        const auto line = record.line(EntryId("twice")).value();
        QVERIFY(line && line->unread && !line->voided);
        QCOMPARE(line->number, 8);
        QCOMPARE(line->entry.on, day("2024-01-02"));
        QCOMPARE(line->unread->kind, std::string("programme.adopted"));
        QCOMPARE(line->unread->text, adoptedTwice(document()));
        QCOMPARE(record.lines({"us-14cfr TWICE", {}, {}, 10}).value().size(), std::size_t{1});
        QCOMPARE(record.lines({}).value().size(), std::size_t{8});
    }
    void whileItStandsNobodyMaySayYes() {
        Scratch scratch;
        holdUnread(scratch, adoptedTwice(document()));
        auto& record = *scratch.record;
        QCOMPARE(unreadReasons(record).size(), std::size_t{1});
        const char* deferral =
            R"({"entry":"defect.deferred","on":"2024-03-01","item":"E1","defect":"D","reason":"x","until":"2024-04-01","agreed_by":"Ada Rhos"})";
        const auto barred = problemsOf(record, deferral);
        QCOMPARE(barred.size(), std::size_t{1});
        QCOMPARE(barred.front().code(), Code::NotReleasable);
        QVERIFY(spokenMessage(barred.front()).find("'twice'") != std::string::npos);
        posted(record, voidIt);
        QVERIFY(unreadReasons(record).empty());
        posted(record, deferral);
    }
    void itIsVoidedAndTheVoidCanBeVoided() {
        Scratch scratch;
        holdUnread(scratch, adoptedTwice(document()));
        auto& record = *scratch.record;
        const auto corrected = problemsOf(
            record, R"({"entry":"entry.corrected","on":"2024-03-01","replaces":"twice","with":{"items":["E1"]}})");
        QCOMPARE(corrected.front().code(), Code::CannotAmend);
        posted(record, voidIt);
        QVERIFY(record.unreadable().value().empty());
        QVERIFY(record.line(EntryId("twice")).value()->voided);
        QVERIFY(record.rebuild());
        QVERIFY(record.unreadable().value().empty());
        posted(record, R"({"entry":"entry.voided","on":"2024-03-02","voids":"v","reason":"by mistake"})");
        QCOMPARE(record.unreadable().value().size(), std::size_t{1});
        QVERIFY(record.rebuild());
        QCOMPARE(record.unreadable().value().size(), std::size_t{1});
        QVERIFY(record.verify().value().intact);
    }
    void aVoidThatCannotBeReadVoidsNothing() {
        Scratch scratch;
        holdUnread(scratch, R"({"entry":"entry.voided","id":"blank","on":"2024-03-01","reason":" ","voids":"f1"})");
        auto& record = *scratch.record;
        QCOMPARE(minutesOf(record), 60);
        QVERIFY(!record.line(EntryId("f1")).value()->voided);
        QCOMPARE(record.unreadable().value().front().subject, std::string("blank"));
        posted(record, R"({"entry":"entry.voided","on":"2024-03-01","voids":"f1","reason":"never flown"}
{"entry":"entry.voided","on":"2024-03-01","voids":"blank","reason":"without a reason"})");
        QCOMPARE(minutesOf(record), 0);
        QVERIFY(record.unreadable().value().empty());
        QVERIFY(record.rebuild());
        QCOMPARE(minutesOf(record), 0);
    }
    void anEarlierProgramsTotalsAreMendedWhenItsRecordIsOpened() {
        Scratch scratch;
        posted(*scratch.record, shed);
        scratch.record.reset();
        {
            const Connection connection(scratch.file(), Access::ReadWrite);
            connection.run("UPDATE flight SET minutes_to = 10");
            leaveToSchema2(connection);
        }
        scratch.reopen();
        QCOMPARE(minutesOf(*scratch.record), 60);
        QVERIFY(scratch.record->verify().value().intact);
    }
    void whatMayOnlyBeReadIsRead() {
        Scratch scratch;
        posted(*scratch.record, shed);
        scratch.record.reset();
        writeUnread(scratch.file(), adoptedTwice(document()));
        scratch.reopen(); // brings it to today's schema
        scratch.record.reset();
        Connection(scratch.file(), Access::ReadWrite).run("PRAGMA user_version = 999");
        scratch.reopen();
        QVERIFY(scratch.record->readOnlyReason());
        QVERIFY(due(*scratch.record, {}, day("2024-03-01")));
        QVERIFY(scratch.record->line(EntryId("twice")).value()->unread);
        QCOMPARE(scratch.record->lines({}).value().size(), std::size_t{8});
    }
};

CROWNRING_TEST(UnreadEntryTest, QCoreApplication)

}

#include "unread_entry_test.moc"
