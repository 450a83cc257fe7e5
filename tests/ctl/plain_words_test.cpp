// SPDX-License-Identifier: GPL-3.0-or-later
/// What crownringctl prints without --json is for people: no key of the record, no code, no id that is only a number,
/// and what a database says stands behind what it means.
#include "answer.h"
#include "test_class.h"

#include <QtTest>

namespace plain_words_test {

using namespace crownring::testing;

namespace {

constexpr const char* shed = R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope","made":"2020-05"}
{"entry":"item.fitted","on":"2024-01-02","item":"E1","balloon":"QE-ONE"}
{"entry":"requirement.done","on":"2024-02-01","item":"E1","requirement":"ml.inspection","by":"Ada"}
{"entry":"requirement.done","on":"2024-02-01","item":"E1","requirement":"ml.arc-review","by":"Ada"}
{"entry":"flight.logged","on":"2024-03-01","time":"06:00Z","balloon":"QE-ONE","minutes":60,"by":"Ada","note":"fog"}
{"entry":"inspection.opened","on":"2025-05-01","inspection":"I1","visit":"part-ml-inspection","items":["E1"]}
)";

}

class PlainWordsTest : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;

    QString path(const char* name) const { return m_folder.filePath(QString::fromLatin1(name)); }
    Answer call(const QStringList& arguments, const QByteArray& input = {}) const {
        return answerOf(QStringLiteral(CROWNRINGCTL), QStringList{"--record", path("shed.crownring")} + arguments,
                        input);
    }
    QByteArray of(const QString& record, const QStringList& arguments) const {
        const auto answer = answerOf(QStringLiteral(CROWNRINGCTL), QStringList{"--record", record} + arguments);
        return answer.out + answer.err;
    }
    QString altered(const char* name, const char* statements) const {
        auto copy = path(name);
        QFile::copy(path("shed.crownring"), copy);
        QProcess::execute("sqlite3", {copy, QString::fromLatin1(statements)});
        return copy;
    }

private slots:
    void initTestCase() {
        QCOMPARE(call({"post", "-"}, shed).err, QByteArray());
        QCOMPARE(call({"adopt", "part-ml-hot-air", "--balloon", "QE-ONE", "--on", "2024-01-01"}).err, QByteArray());
    }

    void theJournalIsToldInSentences() {
        const auto said = call({"journal"}).out;
        const QByteArray flown = "6  2024-03-01 06:00Z  QE-ONE flew 1:00 h: 1 landing, 1 inflation, by Ada; fog\n";
        QVERIFY2(said.contains(flown), said);
        QVERIFY2(said.contains("Annual or 100-hour inspection done on E1"), said);
        for (const char* key : {"{", "minutes", "flight.logged", "\"by\""})
            QVERIFY2(!said.contains(key), key);
    }

    void anInspectionIsListedByWhatItIsCalled() {
        const auto said = call({"inspection", "list", "--on", "2025-06-01"}).out;
        QVERIFY2(said.contains("Annual or 100-hour inspection"), said);
        QVERIFY2(!said.contains("part-ml"), said);
    }

    void noInspectionIsShownBeforeItWasOpened() {
        const auto early = call({"inspection", "show", "I1", "--on", "2025-04-30"});
        QCOMPARE(early.code, 2);
        QVERIFY2(early.err.contains("was opened on 2025-05-01, after the day asked"), early.err);
        QCOMPARE(call({"inspection", "show", "I1", "--on", "2025-05-01"}).code, 0);
    }

    void aQuestionNamesTheRequirement() {
        const auto said = call({"verify"}).out;
        QVERIFY2(said.contains("2 open questions\n"), said);
        QVERIFY2(said.contains("(Annual or 100-hour inspection)"), said);
        QVERIFY2(!said.contains("ml.inspection"), said);
    }

    void whatIsPastIsNoNegativeNumber() {
        const auto due = call({"due", "--on", "2025-02-03"}).out;
        QVERIFY2(due.contains("2 days past"), due);
        const auto line = call({"balloons", "--on", "2025-02-03"}).out;
        QVERIFY2(line.contains("2 days past") && !line.contains("past left"), line);
        QVERIFY2(call({"balloons", "--on", "2025-01-31"}).out.contains("1 day left"), "the day before");
    }

    void aFlightThatIsThereAlreadyIsSaidToBe() {
        QFile log(path("log.csv"));
        QVERIFY(log.open(QIODevice::WriteOnly));
        log.write("date,balloon,take-off (UTC),duration\n2024-03-01,QE-ONE,06:00,1:00\n2024-04-01,QE-TWO,06:00,1:00\n");
        log.close();
        const auto said = call({"import", log.fileName()}).out;
        QVERIFY2(said.contains("in the record already"), said);
        QVERIFY2(said.contains("QE-TWO 1:00 h  this balloon is not in the record"), said);
        QVERIFY2(!said.contains("already-logged") && !said.contains("unknown-balloon"), said);
    }

    void whatIsAlteredIsSaidWithTheEntryBehindIt() {
        const auto said = of(altered("lacks", "DELETE FROM stay"), {"verify"});
        QVERIFY2(said.contains("what follows from the journal is missing beside it"), said);
        QVERIFY2(said.contains("balloon QE-ONE") && said.contains("item E1"), said);
        QVERIFY2(said.contains("Behind it is entry 3 of 2024-01-02, E1 fitted to QE-ONE\n"), said);
        QVERIFY2(!said.contains("_no") && !said.contains('='), said);
    }

    void whatADatabaseSaysIsNoStatement() {
        const auto cut = altered("cut", "SELECT 1");
        QVERIFY(QFile::resize(cut, 20'000));
        auto said = of(cut, {"due"});
        QVERIFY2(said.contains("the file of the record is damaged (the database says: "), said);
        QVERIFY2(!said.contains("PRAGMA") && !said.contains("SELECT"), said);
        QFile other(path("other"));
        QVERIFY(other.open(QIODevice::WriteOnly) && other.write(QByteArray(5000, 'x')) == 5000);
        other.close();
        said = of(other.fileName(), {"due"});
        QVERIFY2(said.contains("this file is no record of Crownring"), said);
        QVERIFY2(!said.contains("PRAGMA"), said);
    }
};

CROWNRING_TEST(PlainWordsTest)

}

#include "plain_words_test.moc"
