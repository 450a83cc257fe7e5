// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/entry_fault.h"
#include "said.h"
#include "signing_attempt.h"
#include "test_class.h"

using namespace crownring;
using namespace crownring::testing;

namespace {

std::string entered(const std::string& item) {
    return R"({"entry":"item.entered","on":"2024-01-01","kind":"basket","item":")" + item + R"("})";
}

std::string enteredBalloon(const std::string& balloon) {
    return R"({"entry":"balloon.entered","on":"2024-01-01","balloon":")" + balloon + R"("})";
}

std::string entitled(const std::string& person) {
    return R"({"entry":"person.entitled","on":"2024-01-01","capacity":"pilot-owner","licence":"1","person":")" +
           person + R"("})";
}

std::string calibrated(const std::string& tester) {
    return R"({"entry":"tester.calibrated","on":"2024-01-01","until":"2030-01-01","tester":")" + tester + R"("})";
}

std::string found(const std::string& defect) {
    return R"({"entry":"defect.found","on":"2024-01-02","item":"B1","what":"a tear","severity":"minor","defect":")" +
           defect + R"("})";
}

std::string openedAs(const std::string& inspection) {
    return R"({"entry":"inspection.opened","on":"2024-01-02","visit":"us-annual","items":["B1"],"inspection":")" +
           inspection + R"("})";
}

std::string readWith(const std::string& tester) {
    return R"({"entry":"reading.taken","on":"2024-01-02","item":"B1","quantity":"rope-load","value":1,"unit":"kN",)"
           R"("tester":")" +
           tester + R"("})";
}

/// As an earlier program took it, which had no such check.
void takenBefore(Record& record, const std::string& lines) {
    const auto entries = entriesFrom(lines, "earlier");
    if (!entries || !record.append(*entries, "earlier"))
        throw std::runtime_error("not taken");
}

void expectIllegible(Record& record, const std::string& line, const char* key) {
    const auto problems = problemsOf(record, line);
    QCOMPARE(problems.size(), std::size_t{1});
    QVERIFY2(problems.front().fault == Fault(EntryFault::NotLegible), text(problems.front()).c_str());
    QCOMPARE(QString::fromStdString(problems.front().where.key), QString::fromLatin1(key));
}

}

/// Two names that look alike are one to whoever stands before the basket.
class NewNamesTest : public QObject {
    Q_OBJECT
private slots:
    void aNameThatIsNotSeenWholeIsNotTaken_data() {
        QTest::addColumn<QString>("name");
        for (const char* name : {" ", "N1 ", " N1", "N1\xE2\x80\x8B", "N1\xE2\x80\xA8", "N1\xEF\xBB\xBF", "N1\xC2\x85",
                                 "N\xE2\x80\xAE"
                                 "1",
                                 "N\xC2\xA0"
                                 "1",
                                 "N\xC2\xAD"
                                 "1"})
            QTest::newRow(QByteArray(name).toHex().constData()) << QString::fromUtf8(name);
    }
    void aNameThatIsNotSeenWholeIsNotTaken() {
        QFETCH(QString, name);
        const auto odd = name.toStdString();
        Scratch scratch;
        auto& record = *scratch.record;
        posted(record, entered("B1"));
        expectIllegible(record, entered(odd), "item");
        expectIllegible(record, enteredBalloon(odd), "balloon");
        expectIllegible(record, entitled(odd), "person");
        expectIllegible(record, calibrated(odd), "tester");
        expectIllegible(record, found(odd), "defect");
        expectIllegible(record, openedAs(odd), "inspection");
        expectIllegible(record, readWith(odd), "tester");
        QVERIFY(scratch.record->verify().value().intact);
    }
    void aNameOfAnyScriptIsTaken() {
        Scratch scratch;
        for (const char* name : {"N1", "Korb 1", "\xC3\x96rt\xC3\xBC", "\xE7\x83\xAD\xE6\xB0\x94\xE7\x90\x83"})
            QVERIFY(problemsOf(*scratch.record, entered(name)).empty());
    }
    void whatWasNamedSoBeforeGoesOn() {
        Scratch scratch;
        auto& record = *scratch.record;
        const std::string odd = "N1 ";
        takenBefore(record, entered("B1"));
        takenBefore(record, entered(odd));
        takenBefore(record, calibrated(odd));
        takenBefore(record, entitled(odd));
        QVERIFY(problemsOf(record, calibrated(odd)).empty());
        QVERIFY(problemsOf(record, readWith(odd)).empty());
        QVERIFY(problemsOf(record, entitled(odd)).empty());
        QVERIFY(problemsOf(record, R"({"entry":"requirement.done","on":"2024-02-01","item":"N1 ","requirement":"x"})")
                    .empty());
    }
};

CROWNRING_TEST(NewNamesTest)

#include "new_names_test.moc"
