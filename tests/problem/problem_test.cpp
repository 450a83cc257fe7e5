// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/entry_fault.h"
#include "problem/faults/written_fault.h"
#include "problem/problem.h"
#include "test_class.h"

#include <QtTest>

#include <set>

namespace problem_test {

using namespace crownring;

class ProblemTest : public QObject {
    Q_OBJECT
private slots:
    // That every code is provoked: every_code_test.
    void everyCodeHasItsOwnStableName() {
        std::set<std::string_view> names;
        for (int i = 0; i < codeCount; ++i) {
            const auto name = codeName(static_cast<Code>(i));
            QVERIFY2(!name.empty(), qPrintable(QString::number(i)));
            for (const char c : name)
                QVERIFY((c >= 'a' && c <= 'z') || c == '-');
            names.insert(name);
        }
        QCOMPARE(int(names.size()), codeCount);
        // The first, one in the middle and the last, so that a name cannot slip by one.
        QCOMPARE(codeName(Code::BadDate), std::string_view("bad-date"));
        QCOMPARE(codeName(Code::UnknownReference), std::string_view("unknown-reference"));
        QCOMPARE(codeName(Code::IgcNoFlight), std::string_view("igc-no-flight"));
        QCOMPARE(codeName(Code::StoreNewer), std::string_view("store-newer"));
        QCOMPARE(codeName(Code::BadUse), std::string_view("bad-use"));
    }

    void aDeveloperReadsWhereAndWhatInCodes() {
        QCOMPARE(text(Problem{EntryFault::UnknownKey, {"flight.logged"}, {"fleet.jsonl", 12, "minuts"}}),
                 std::string("fleet.jsonl:12: key 'minuts': unknown-key (flight.logged)"));
        QCOMPARE(text(Problem{EntryFault::NotJson, {}, {"", 3, ""}}), std::string("line 3: not-json"));
        QCOMPARE(text(Problem{WrittenFault::NotADate, {"x"}}), std::string("not-a-date (x)"));
        QCOMPARE(text(Problem{EntryFault::NotAWholeNumber, {1, 200}, {"a.csv", 0, ""}}),
                 std::string("a.csv: not-a-whole-number (1; 200)"));
        const Arguments all{0.25, InUnit{3, "N"}, OnDay{19782}, Term{Term::Of::ItemKind, "basket"}, Listed{{"a", "b"}}};
        QCOMPARE(text(Problem{EntryFault::NotJson, all}),
                 std::string("not-json (0.25; 3 N; 2024-02-29; basket; a, b)"));
    }

    void theCodeIsThatOfTheFault() {
        QCOMPARE((Problem{EntryFault::KeyIsFixed}.code()), Code::CannotAmend);
        QCOMPARE((Problem{WrittenFault::NotADuration}.code()), Code::BadQuantity);
        QVERIFY((Problem{EntryFault::NotJson} != Problem{EntryFault::KeyTwice}));
        QVERIFY((Problem{EntryFault::TooLong, {3}} != Problem{EntryFault::TooLong, {4}}));
    }
};

CROWNRING_TEST(ProblemTest)

}

#include "problem_test.moc"
