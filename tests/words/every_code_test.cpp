// SPDX-License-Identifier: GPL-3.0-or-later

/// Every code is provoked by what a user could do. A new code does not compile until it has a case here, and does not
/// pass until the case meets it.

#include "acts/flight_import.h"
#include "answers/check_rig_up.h"
#include "exchange/log/flight_log.h"
#include "exchange/track/igc_flight.h"
#include "record/entry_json.h"
#include "rules/programme/programme.h"
#include "said.h"
#include "store/connection/connection.h"
#include "store/scratch.h"
#include "test_class.h"
#include "writing/write_out.h"

#include <QtTest>
#include <unistd.h>

#include <filesystem>

namespace every_code_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* balloon = R"({"entry":"balloon.entered","id":"b","on":"2024-01-01","balloon":"QE-ONE"})";

Problem refusedEntry(std::string_view line) { return entryFrom(line).error(); }

Problem refusedPost(const char* line) {
    Scratch scratch;
    posted(*scratch.record, balloon);
    return problemsOf(*scratch.record, line).at(0);
}

Problem flightTwice() {
    Scratch scratch;
    auto& record = *scratch.record;
    posted(record, balloon);
    FlightProposal proposal;
    proposal.balloon = Registration("QE-ONE");
    proposal.on = day("2024-05-01");
    proposal.flight = {proposal.balloon, {Minutes(60), Landings(1), Inflations(1)}, {}, {}, false};
    const auto judged = judge(record, {proposal}).value();
    static_cast<void>(accept(record, record, judged, "log.csv").value());
    return accept(record, record, judged, "log.csv").error().at(0);
}

/// A recorder that stands on a table for two minutes.
Problem trackWithoutFlight() {
    std::string track = "HFDTE010725\n";
    for (int i = 0; i < 12; ++i)
        track += "B0800" + std::to_string(i + 10) + "4624072N01230204WA0050000500\n";
    return previewTrack(track, "t.igc").error();
}

Problem emptyKit() {
    Scratch scratch;
    return checkRigUp(*scratch.record, {}, day("2024-05-01"), {}).error();
}

Problem fileOfAnotherProgram() {
    Scratch scratch;
    Connection(scratch.beside("other.db"), Access::ReadWrite).run("CREATE TABLE recipe (name TEXT)");
    return openRecord(scratch.beside("other.db"), OpenMode::OrCreate).error();
}

Problem recordOfALaterProgram() {
    Scratch scratch;
    scratch.record.reset();
    Connection(scratch.file(), Access::ReadWrite).run("PRAGMA user_version = 999");
    scratch.reopen();
    return problemsOf(*scratch.record, balloon).at(0);
}

/// Another program holds the write lock for longer than the five seconds that we wait.
Problem recordThatAnotherWrites() {
    Scratch scratch;
    const Connection other(scratch.file(), Access::ReadWrite);
    const Transaction held(other);
    return problemsOf(*scratch.record, balloon).at(0);
}

/// Somebody wrote past the guards: what is copied is not what was written.
Problem backupOfWhatWasAltered() {
    Scratch scratch;
    posted(*scratch.record, balloon);
    const Connection other(scratch.file(), Access::ReadWrite);
    other.run("DROP TRIGGER entry_is_never_changed");
    other.run("UPDATE entry SET body = replace(body, 'QE-ONE', 'QE-TWO')");
    return scratch.record->backUpTo(scratch.beside("copy")).error();
}

Problem pictureOverAFile() {
    Scratch scratch;
    const auto file = scratch.beside("picture.png");
    if (auto first = writeOut(file, "one", Replace::Never); !first)
        return first.error();
    return writeOut(file, "another", Replace::Never).error();
}

Problem pictureOverTheRecord() {
    Scratch scratch;
    return writeOut(scratch.file(), "a picture", Replace::Asked).error();
}

/// An inspection that is closed takes no further word.
Problem wordAfterTheClosing() {
    Scratch scratch;
    posted(*scratch.record, R"({"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"inspection.opened","on":"2024-05-01","inspection":"I1","visit":"us-annual","items":["E1"]}
{"entry":"inspection.closed","on":"2024-05-02","inspection":"I1","outcome":"abandoned"})");
    return problemsOf(*scratch.record,
                      R"({"entry":"line.settled","on":"2024-05-03","inspection":"I1","line":"vent","state":"done"})")
        .at(0);
}

Problem provoked(Code code) {
    switch (code) {
    case Code::BadDate:
        return CivilDate::parse("2023-02-30").error();
    case Code::BadQuantity:
        return refusedEntry(R"({"entry":"flight.logged","on":"2024-05-01","balloon":"QE-ONE","minutes":0})");
    case Code::BadJson:
        return refusedEntry(R"({"entry":"flight.logged")");
    case Code::UnknownKind:
        return refusedEntry(R"({"entry":"flight.flown","on":"2024-05-01"})");
    case Code::UnknownKey:
        return refusedEntry(
            R"({"entry":"flight.logged","on":"2024-05-01","balloon":"QE-ONE","minutes":60,"minuts":60})");
    case Code::MissingKey:
        return refusedEntry(R"({"entry":"flight.logged","on":"2024-05-01","minutes":60})");
    case Code::BadValue:
        return refusedEntry(R"({"entry":"item.entered","on":"2024-05-01","item":"E1","kind":"sail"})");
    case Code::DuplicateId:
        return refusedPost(balloon);
    case Code::UnknownReference:
        return refusedPost(R"({"entry":"flight.logged","on":"2024-05-01","balloon":"QE-TWO","minutes":60})");
    case Code::CannotAmend:
        return refusedEntry(R"({"entry":"entry.corrected","on":"2024-05-01","replaces":"b","with":{"id":"c"}})");
    case Code::BadProgramme:
        return programmeFrom("{}").error();
    case Code::UnknownProgramme:
        return refusedPost(
            R"({"entry":"programme.adopted","on":"2024-05-01","programme":"nobody-knows","everything":true})");
    case Code::FileUnreadable:
        return *previewFlightLog(std::string_view("\xff\xfe"
                                                  "d\0a\0t\0e\0",
                                                  10),
                                 "utf16.csv")
                    .refused;
    case Code::FileExists:
        return pictureOverAFile();
    case Code::FileUnwritable:
        return pictureOverTheRecord();
    case Code::CsvNoHeader:
        return *previewFlightLog("1;2;3\n", "log.csv").refused;
    case Code::CsvBadRow:
        return previewFlightLog("reg;date;min\n;2024-05-01;60\n", "log.csv").badRows.at(0);
    case Code::IgcBadTrack:
        return previewTrack("HFDTE010725\n", "t.igc").error();
    case Code::IgcNoFlight:
        return trackWithoutFlight();
    case Code::AlreadyLogged:
        return flightTwice();
    case Code::StoreUnopened:
        return openRecord(Scratch().beside("absent"), OpenMode::Existing).error();
    case Code::StoreForeign:
        return fileOfAnotherProgram();
    case Code::StoreNewer:
        return recordOfALaterProgram();
    case Code::StoreBusy:
        return recordThatAnotherWrites();
    case Code::StoreFailed:
        return backupOfWhatWasAltered();
    case Code::BadUse:
        return emptyKit();
    case Code::NotReleasable:
        return wordAfterTheClosing();
    }
    return {};
}

}

class EveryCodeTest : public QObject {
    Q_OBJECT
private slots:
    void isProvoked_data() {
        QTest::addColumn<int>("number");
        for (int number = 0; number < codeCount; ++number)
            QTest::newRow(std::string(codeName(static_cast<Code>(number))).c_str()) << number;
    }
    void isProvoked() {
        QFETCH(int, number);
        const auto problem = provoked(static_cast<Code>(number));
        QCOMPARE(QByteArray::fromStdString(std::string(codeName(problem.code()))), QByteArray(QTest::currentDataTag()));
        // One sentence without a full stop, and a way out.
        QVERIFY2(isSaid(problem), qPrintable(words::line(problem)));
    }
};

CROWNRING_TEST(EveryCodeTest, QCoreApplication)

}

#include "every_code_test.moc"
