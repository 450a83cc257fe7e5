// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/problem.h"
#include "test_class.h"

#include <QtTest>

#include <set>

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

    void aProblemSaysWhereWhatAndHowToMendIt() {
        const Problem whole{
            Code::UnknownKey, "not a key of flight.logged", "mend its spelling", {"fleet.jsonl", 12, "minuts"}};
        QCOMPARE(text(whole),
                 std::string("fleet.jsonl:12: key 'minuts': not a key of flight.logged. Mend: mend its spelling"));
        const Problem noFile{Code::BadJson, "this is not JSON", "", {"", 3, ""}};
        QCOMPARE(text(noFile), std::string("line 3: this is not JSON"));
        const Problem noPlace{Code::StoreBusy, "another program is writing", "try again", {}};
        QCOMPARE(text(noPlace), std::string("another program is writing. Mend: try again"));
        const Problem fileOnly{Code::FileUnreadable, "it cannot be opened", "", {"a.csv", 0, ""}};
        QCOMPARE(text(fileOnly), std::string("a.csv: it cannot be opened"));
    }
};

CROWNRING_TEST(ProblemTest)
#include "problem_test.moc"
