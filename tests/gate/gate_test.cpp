// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/gate.h"
#include "problem/faults/release_fault.h"
#include "problem/faults/store_fault.h"
#include "store/scratch.h"
#include "test_class.h"

#include <QtTest>

#include <array>
#include <set>

namespace gate_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

Findings refusesNothing(const Batch&) { return std::vector<Problem>{}; }
Findings something(const Batch&) { return std::vector{Problem{ReleaseFault::NothingToList, {}, {{}, 3, {}}}}; }
Findings unread(const Batch&) { return problem(StoreFault::CopyDamaged); }

}

/// The gate as a table: every check is asked, and one that cannot be asked refuses.
class GateTest : public QObject {
    Q_OBJECT
private slots:
    void whatNoCheckRefusesIsTaken() {
        Scratch scratch;
        constexpr std::array checks{Check{"a", refusesNothing}, Check{"b", refusesNothing}};
        QVERIFY(refusalsOf({*scratch.record, *scratch.record, {}}, checks).empty());
    }
    void aCheckThatCannotBeAskedRefuses() {
        Scratch scratch;
        constexpr std::array checks{Check{"a", unread}, Check{"b", something}, Check{"c", refusesNothing}};
        const auto refused = refusalsOf({*scratch.record, *scratch.record, {}}, checks);
        QCOMPARE(refused.size(), std::size_t{2});
        QCOMPARE(refused[0].code(), Code::StoreFailed);
        QCOMPARE(refused[1].where.line, 3);
    }
    void everyCheckHasAName() {
        std::set<std::string_view> names;
        for (const auto& check : allChecks())
            QVERIFY(names.insert(check.name).second && !check.name.empty() && check.ask);
        QVERIFY(!names.empty());
    }
};

CROWNRING_TEST(GateTest)

}

#include "gate_test.moc"
