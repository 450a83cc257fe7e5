// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/shop.h"
#include "gate/trust/proven.h"
#include "problem/faults/trust_fault.h"
#include "said.h"
#include "test_class.h"
#include "text/skeleton.h"
#include "trust/codes_told.h"

#include <QtTest>

namespace person_names_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

std::string quoted(const std::string& text) { return '"' + text + '"'; }
std::string entitled(const std::string& person) {
    return R"({"entry":"person.entitled","on":"2026-01-01","capacity":"mechanic","licence":"none","person":)" +
           quoted(person) + "}";
}
std::optional<TrustFault> faultOf(Shop& shop, const std::string& line) {
    for (const auto& each : problemsOf(shop.record(), line))
        if (const auto* fault = std::get_if<TrustFault>(&each.fault)) {
            QTEST_ASSERT(isSaid(each));
            return *fault;
        }
    return std::nullopt;
}

/// "Ada Rhos" as nobody tells them apart on a paper.
void addLookalikes() {
    QTest::addColumn<QString>("name");
    QTest::newRow("a Cyrillic letter") << QString::fromUtf8("\u0410da Rhos");
    QTest::newRow("a Greek letter") << QString::fromUtf8("Ada Rh\u03bfs");
    QTest::newRow("full width") << QString::fromUtf8("\uff21da Rhos");
    QTest::newRow("a mathematical letter") << QString::fromUtf8("\U0001d400da Rhos");
    QTest::newRow("no width") << QString::fromUtf8("Ada\u200b Rhos");
    QTest::newRow("a soft hyphen") << QString::fromUtf8("Ada Rh\u00ados");
    QTest::newRow("an accent behind a letter") << QString::fromUtf8("Ada Rho\u0323s");
    QTest::newRow("a letter with an accent") << QString::fromUtf8("Ad\u00e1 Rhos");
    QTest::newRow("two blanks") << QString::fromUtf8("Ada  Rhos");
    QTest::newRow("another blank") << QString::fromUtf8("Ada\u00a0Rhos");
    QTest::newRow("small") << QString::fromUtf8("ada rhos");
    QTest::newRow("a digit for a letter") << QString::fromUtf8("Ada Rh0s");
}

}

/// Nobody signs under a name that is taken for another's: UTS #39 (from memory) on confusable names.
class PersonNamesTest : public QObject {
    Q_OBJECT
private slots:
    void nobodyIsEntitledUnderALookalike_data() { addLookalikes(); }
    void nobodyIsEntitledUnderALookalike() {
        QFETCH(QString, name);
        Shop shop;
        QCOMPARE(faultOf(shop, entitled(name.toStdString())), TrustFault::LooksLikeAnother);
    }
    void norSignsNorSetsACode_data() { addLookalikes(); }
    void norSignsNorSetsACode() {
        QFETCH(QString, name);
        const auto other = name.toStdString();
        Shop shop;
        letIn(shop.record(), entitled(other)); // as an earlier program did
        QCOMPARE(faultOf(shop, codeOf(other, 'z', 0, {}, "2026-02-01")), TrustFault::LooksLikeAnother);
        // Once she has a code he needs it as well.
        shop.say(codeOf("Ada Rhos", 'a', 0, {}, "2026-01-01"));
        const auto codes = codesTold(shop.record()).value();
        QVERIFY(inForce(codes, other));
    }
    void whoWasThereFirstGoesOn() {
        Shop shop;
        letIn(shop.record(), entitled("ada rhos"));
        QCOMPARE(faultOf(shop, entitled("Ada Rhos")), std::nullopt);
    }
    void otherPeopleAreOthers() {
        Shop shop;
        for (const auto* name : {"Ada Rhose", "A. Rhos", "Adam Rhos", "\u0418\u0432\u0430\u043d", "\u674e\u660e"})
            QCOMPARE(faultOf(shop, entitled(name)), std::nullopt);
    }
    void aNameOfNothingIsItself() {
        QCOMPARE(skeleton("-"), std::string("-"));
        QCOMPARE(skeleton("\u200b"), std::string("\u200b"));
        QVERIFY(skeleton("\u674e") != skeleton("\u660e"));
    }
};

CROWNRING_TEST(PersonNamesTest, QCoreApplication)

}

#include "person_names_test.moc"
