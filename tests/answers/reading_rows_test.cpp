// SPDX-License-Identifier: GPL-3.0-or-later

/// A reading beyond the limit of the manual grounds what it was read of, whatever it is: the limit is invented, that
/// what is beyond it may not fly is ML.A.403 (from memory).

#include "answers/balloon_lines.h"
#include "answers/due.h"
#include "store/scratch.h"
#include "test_class.h"

#include <QtTest>

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* thinBasket = R"({"entry":"item.entered","on":"2024-01-01","item":"B1","kind":"basket","type":"T"}
{"entry":"limit.stated","on":"2024-01-01","type":"T","kind":"basket","quantity":"runner-thickness","least":20,"unit":"mm","passes":"20 mm or more","source":"invented for tests"})";

std::string readRunner(const char* on, const char* thickness, const char* more = "") {
    return R"({"entry":"reading.taken","item":"B1","quantity":"runner-thickness","unit":"mm","on":")" +
           std::string(on) + R"(","value":)" + thickness + more + "}";
}
constexpr const char* foundThin =
    R"({"entry":"defect.found","on":"2024-06-01","item":"B1","defect":"thin","what":"a thin runner","severity":"grounding","reading":"r"})";
constexpr const char* clearedThin =
    R"({"entry":"defect.cleared","on":"2024-06-02","item":"B1","defect":"thin","what":"planed"})";
constexpr const char* replacedThin =
    R"({"entry":"part.replaced","on":"2024-06-02","item":"B1","part":"runner","removed_serial":"1","fitted_serial":"2","release_document":"C 1","defect":"thin"})";
constexpr const char* inVisit = R"(,"inspection":"V")";
constexpr const char* visit =
    R"({"entry":"person.entitled","on":"2024-01-01","person":"Ada Rhos","capacity":"independent-certifying-staff","licence":"QE.66.1"}
{"entry":"inspection.opened","on":"2024-06-03","inspection":"V","visit":"part-ml-rectification","items":["B1"]})";
constexpr const char* released =
    R"({"entry":"inspection.closed","on":"2024-06-04","inspection":"V","outcome":"released","signatory":"Ada Rhos","capacity":"independent-certifying-staff","licence":"QE.66.1","statement":"released"})";
constexpr const char* withItsId = R"(,"id":"r")";

/// "reading/runner-thickness lapsed": the rows that the record itself makes.
std::string recordRows(Record& record) {
    std::string told;
    const auto list = due(record, {}, day("2024-07-01")).value();
    for (const auto& row : list.rows)
        told += row.requirement->id.text() + " " + std::string(standingText(row.state.standing)) + ";";
    return told;
}

}

class ReadingRowsTest : public QObject {
    Q_OBJECT
private slots:
    void whatIsWithinItsLimitMakesNoRow() {
        const Scratch scratch;
        posted(*scratch.record, thinBasket);
        posted(*scratch.record, readRunner("2024-06-01", "21"));
        QCOMPARE(recordRows(*scratch.record), "");
    }
    void whatIsBeyondItGroundsUntilItIsReadAgain() {
        const Scratch scratch;
        posted(*scratch.record, thinBasket);
        posted(*scratch.record, readRunner("2024-06-01", "19"));
        QCOMPARE(recordRows(*scratch.record), "reading/runner-thickness lapsed;");
        posted(*scratch.record, readRunner("2024-06-02", "25"));
        QCOMPARE(recordRows(*scratch.record), "reading/runner-thickness lapsed;"); // nobody answers for it
        posted(*scratch.record, visit);
        posted(*scratch.record, readRunner("2024-06-03", "25", inVisit));
        letIn(*scratch.record, released);
        QCOMPARE(recordRows(*scratch.record), "");
    }
    void itsOpenDefectTellsItAndWordsAloneProveNothing() {
        const Scratch scratch;
        posted(*scratch.record, thinBasket);
        posted(*scratch.record, readRunner("2024-06-01", "19", withItsId));
        posted(*scratch.record, foundThin);
        QCOMPARE(recordRows(*scratch.record), "defect/thin lapsed;");
        letIn(*scratch.record, clearedThin); // as an earlier program took it
        QCOMPARE(recordRows(*scratch.record), "reading/runner-thickness unproven;");
        posted(*scratch.record, replacedThin);
        QCOMPARE(recordRows(*scratch.record), "");
    }
};

CROWNRING_TEST(ReadingRowsTest, QCoreApplication)

#include "reading_rows_test.moc"
