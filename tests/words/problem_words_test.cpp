// SPDX-License-Identifier: GPL-3.0-or-later

/// Faults with their arguments as English sentences.

#include "civil/civil_date.h"
#include "measure/name.h"
#include "problem/faults/entry_fault.h"
#include "problem/faults/written_fault.h"
#include "said.h"
#include "test_class.h"
#include "words/sentence.h"

#include <QtTest>

#include <set>

namespace problem_words_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

/// All of a family: they count from 0, and what is beyond the last has no name.
template <class Family>
std::vector<Fault> allOf() {
    std::vector<Fault> faults;
    for (int number = 0; !rowOf(static_cast<Family>(number)).name.empty(); ++number)
        faults.emplace_back(static_cast<Family>(number));
    return faults;
}

template <class... Families>
std::vector<Fault> allFaults(const std::variant<Families...>&) {
    std::vector<Fault> faults;
    (
        [&] {
            const auto family = allOf<Families>();
            faults.insert(faults.end(), family.begin(), family.end());
        }(),
        ...);
    return faults;
}

const Arguments anything{"one", 2, "three", "four", "five", "six", "seven", "eight", "nine"};

}

class ProblemWordsTest : public QObject {
    Q_OBJECT
private slots:
    void everyFaultSaysWhatIsWrongAndHowToMendIt() {
        std::set<std::string> names;
        for (const auto& fault : allFaults(Fault())) {
            const auto row = rowOf(fault);
            const auto name = std::to_string(fault.index()) + " " + std::string(row.name);
            QVERIFY2(isSaid(Problem{fault, anything}), name.c_str());
            QVERIFY2(names.insert(name).second, name.c_str());
            for (const char c : row.name)
                QVERIFY2((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-', name.c_str());
        }
        QVERIFY(names.size() > 40);
    }

    void aProblemSaysWhereWhatAndHowToMendIt() {
        const auto said = [](const Problem& problem) { return words::line(problem); };
        QCOMPARE(
            said(Problem{EntryFault::UnknownKey, {"flight.logged"}, {"fleet.jsonl", 12, "minuts"}}),
            QStringLiteral("fleet.jsonl:12: key 'minuts': not a key of flight.logged. Mend: leave it out or mend its "
                           "spelling"));
        QCOMPARE(said(Problem{EntryFault::NotJson, {}, {"", 3, ""}}),
                 QStringLiteral("line 3: this is not JSON. Mend: write one whole JSON object a line, in UTF-8"));
        QCOMPARE(said(Problem{WrittenFault::NotADate, {"31.2."}}),
                 QStringLiteral("'31.2.' is not a date. Mend: write it as YYYY-MM-DD, a day that exists"));
        QCOMPARE(said(Problem{WrittenFault::NotADateOrMonth, {"5/16"}, {"a.csv", 0, ""}}),
                 QStringLiteral("a.csv: '5/16' is not a date. Mend: write it as YYYY-MM or YYYY-MM-DD"));
    }

    void oneAndManyAreToldApart() {
        QCOMPARE(spokenMend(Problem{EntryFault::TooLong, {1}}), std::string("at most 1 character"));
        QCOMPARE(spokenMend(Problem{EntryFault::TooLong, {60}}), std::string("at most 60 characters"));
        QCOMPARE(spokenMend(Problem{EntryFault::NestedTooDeep, {32}}), std::string("nest at most 32 levels"));
    }

    void whatAUserWroteIsShownAsItIs() {
        QCOMPARE(spokenMessage(Problem{EntryFault::NoWordForThis, {"%2", "open, done"}}),
                 std::string("'%2' is not a word for this"));
        QCOMPARE(spokenMessage(Problem{EntryFault::NotAWholeNumber, {0, 200}}),
                 std::string("not a whole number from 0 to 200"));
    }

    void everySortOfArgumentIsSaid() {
        QCOMPARE(words::said(Argument(133.4466)), QStringLiteral("133.4"));
        QCOMPARE(words::said(Argument(InUnit{121.1, "degC"})), QStringLiteral("121.1 °C"));
        QCOMPARE(words::said(Argument(InUnit{3, "bananas"})), QStringLiteral("3 bananas"));
        QCOMPARE(words::said(Argument(*CivilDate::parse("2024-02-29"))), QStringLiteral("2024-02-29"));
        QCOMPARE(words::said(Argument(ItemId("E1"))), QStringLiteral("E1"));
        QCOMPARE(words::said(Argument(Term{Term::Of::ItemKind, "basket"})), QStringLiteral("basket"));
        QCOMPARE(words::said(Argument(Term{Term::Of::ItemKind, "gondola"})), QStringLiteral("gondola"));
        QCOMPARE(words::said(Argument(Listed{{"N", "daN", "kgf"}, Listed::Joined::Or})),
                 QStringLiteral("N, daN or kgf"));
        QCOMPARE(words::said(Argument(Listed{{"N"}, Listed::Joined::Or})), QStringLiteral("N"));
        QCOMPARE(words::said(Argument(Listed{{"warp", "weft"}})), QStringLiteral("warp, weft"));
    }
};

CROWNRING_TEST(ProblemWordsTest, QCoreApplication)

}

#include "problem_words_test.moc"
