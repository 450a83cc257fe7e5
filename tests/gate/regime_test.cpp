// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/programme_fault.h"
#include "said.h"
#include "store/scratch.h"
#include "test_class.h"

#include <QtTest>

#include <string>

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* twoRegisters =
    R"({"entry":"balloon.entered","on":"2020-01-01","balloon":"QE-ONE"}
{"entry":"balloon.entered","on":"2020-01-01","balloon":"N1QE"}
{"entry":"item.entered","on":"2020-01-01","item":"C1","kind":"cylinder"})";

const std::string bindsOne = R"("balloons":["QE-ONE"])";
const std::string bindsOther = R"("balloons":["N1QE"])";
const std::string bindsBoth = R"("balloons":["N1QE","QE-ONE"])";
const std::string bindsAll = R"("everything":true)";
const std::string bindsItem = R"("items":["C1"])";

std::string adoptedFor(const std::string& programme, const std::string& whom) {
    return R"({"entry":"programme.adopted","on":"2020-01-01","programme":")" + programme + R"(",)" + whom + "}";
}

}

/// A registration has one state of registry, and its aircraft rules (which aircraft each binds: from memory).
class RegimeTest : public QObject {
    Q_OBJECT
private slots:
    void twoRegimesOnOneRegistration_data() {
        QTest::addColumn<QString>("first");
        QTest::addColumn<QString>("second");
        QTest::addColumn<bool>("taken");
        const auto row = [](const char* name, const std::string& first, const std::string& second, bool taken) {
            QTest::newRow(name) << QString::fromStdString(first) << QString::fromStdString(second) << taken;
        };
        row("each its own balloon", bindsOne, bindsOther, true);
        row("one balloon", bindsOne, bindsOne, false);
        row("one among several", bindsOne, bindsBoth, false);
        row("everything, then a balloon", bindsAll, bindsOne, false);
        row("a balloon, then everything", bindsOne, bindsAll, false);
        row("everything twice", bindsAll, bindsAll, false);
        row("everything, and an item of the pool", bindsAll, bindsItem, true);
        row("an item of the pool follows both", bindsItem, bindsItem, true);
    }
    void twoRegimesOnOneRegistration() {
        QFETCH(QString, first);
        QFETCH(QString, second);
        QFETCH(bool, taken);
        Scratch scratch;
        posted(*scratch.record, twoRegisters);
        posted(*scratch.record, adoptedFor("part-ml-hot-air", first.toStdString()));
        const auto problems = problemsOf(*scratch.record, adoptedFor("us-14cfr", second.toStdString()));
        QCOMPARE(problems.empty(), taken);
        if (!taken) {
            QCOMPARE(problems.size(), std::size_t{1});
            QCOMPARE(problems.front().fault, Fault(ProgrammeFault::TwoRegimes));
            QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
        }
    }
    void whatGoesWithAnyAircraftIsAdopted() {
        Scratch scratch;
        posted(*scratch.record, twoRegisters);
        posted(*scratch.record, adoptedFor("part-ml-hot-air", bindsOne));
        for (const char* programme : {"lpg-us-dot", "lpg-adr", "hoses-recommended", "fabric-strength"})
            posted(*scratch.record, adoptedFor(programme, bindsOne));
        posted(*scratch.record, adoptedFor("part-ml-hot-air", bindsAll)); // the same once more
    }
    void norByACorrection() {
        Scratch scratch;
        posted(*scratch.record, twoRegisters);
        posted(*scratch.record, adoptedFor("part-ml-hot-air", bindsOne));
        const auto id = posted(*scratch.record, adoptedFor("us-14cfr", bindsOther)).ids.front().text();
        const auto problems =
            problemsOf(*scratch.record, R"({"entry":"entry.corrected","on":"2020-02-01","replaces":")" + id +
                                            R"(","with":{"balloons":["QE-ONE"]}})");
        QCOMPARE(problems.size(), std::size_t{1});
        QCOMPARE(problems.front().fault, Fault(ProgrammeFault::TwoRegimes));
    }
    void norUnderAnotherRegistration() {
        // A renaming brings along what was adopted for the former one.
        for (const bool renamedFirst : {true, false}) {
            Scratch scratch;
            posted(*scratch.record, twoRegisters);
            posted(*scratch.record, R"({"entry":"balloon.entered","on":"2020-03-01","balloon":"QE-NEW"})");
            posted(*scratch.record, adoptedFor("part-ml-hot-air", bindsOne));
            const std::string renamed =
                R"({"entry":"balloon.renamed","on":"2020-03-01","balloon":"QE-ONE","to":"QE-NEW"})";
            const auto other = adoptedFor("us-14cfr", R"("balloons":["QE-NEW"])");
            posted(*scratch.record, renamedFirst ? renamed : other);
            const auto problems = problemsOf(*scratch.record, renamedFirst ? other : renamed);
            QCOMPARE(problems.size(), std::size_t{1});
            QCOMPARE(problems.front().fault, Fault(ProgrammeFault::TwoRegimes));
            QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
            posted(*scratch.record, adoptedFor("part-ml-hot-air", bindsOther));
        }
    }
    void anAdoptionThatIsVoidedBindsNoMore() {
        Scratch scratch;
        posted(*scratch.record, twoRegisters);
        const auto id = posted(*scratch.record, adoptedFor("part-ml-hot-air", bindsOne)).ids.front().text();
        posted(*scratch.record,
               R"({"entry":"entry.voided","on":"2020-02-01","reason":"another register","voids":")" + id + R"("})");
        posted(*scratch.record, adoptedFor("us-14cfr", bindsOne));
    }
    void aTextOfOldIsAsItsProgrammeOnTheShelf() {
        // Before texts said whose rules they are.
        Scratch scratch;
        posted(*scratch.record, twoRegisters);
        const std::string old =
            R"("document":{"programme":"part-ml-hot-air","revision":"2026-11-25","title":"t","source":"s","requirements":[{"id":"ml.inspection","title":"t","source":"s","kinds":["envelope"],"action":"inspect","limits":[{"clock":"months","every":12}]}]},)";
        posted(*scratch.record, adoptedFor("part-ml-hot-air", old + bindsOne));
        QCOMPARE(problemsOf(*scratch.record, adoptedFor("us-14cfr", bindsOne)).size(), std::size_t{1});
    }
};

CROWNRING_TEST(RegimeTest, QCoreApplication)

#include "regime_test.moc"
