// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/due/rig_up.h"
#include "rules/shed.h"
#include "test_class.h"

namespace rig_up_test {

using namespace crownring;
using namespace crownring::shed;

namespace {

Requirement hundredHours(const std::string& more = "") {
    return rule(R"("limits": [{"clock": "minutes", "every": 6000, "tolerance": 600}])" + more);
}
Item flown(std::int64_t minutes, std::int64_t landings = 0) {
    return Item().done("r", "2024-01-01").at(clockOf(minutes, landings));
}

/// A kit of one or more items, each against its requirement.
class Kit {
public:
    Kit& with(const Requirement& requirement, const Item& item, std::string_view today = "2024-02-01") {
        m_requirements.push_back(std::make_shared<Requirement>(requirement));
        m_items.push_back(std::make_shared<ItemFacts>(item));
        m_rows.push_back({m_items.back().get(), m_requirements.back().get(), nullptr, on(today, requirement, item)});
        return *this;
    }
    /// @param share that is left of its interval
    Kit& clear(ClockName clock, double share) {
        with(hundredHours(), flown(0));
        auto& state = m_rows.back().state;
        state = {};
        state.standing = Standing::Clear;
        state.governs = clock;
        state.share = share;
        return *this;
    }
    [[nodiscard]] RigUp check(std::int64_t minutes = 0, bool positioning = false) const {
        PlannedFlight flight;
        flight.use.minutes = Minutes(minutes);
        flight.positioning = positioning;
        return rigUp(m_rows, flight);
    }
    [[nodiscard]] const DueRow* row(std::size_t at) const { return &m_rows[at]; }

private:
    std::vector<std::shared_ptr<Requirement>> m_requirements;
    std::vector<std::shared_ptr<ItemFacts>> m_items;
    std::vector<DueRow> m_rows;
};

}

/// May these items fly together by the record, and what governs?
class RigUpTest : public QObject {
    Q_OBJECT
private slots:
    void anEmptyKitIsBoundByNothing() {
        const auto answer = Kit().check();
        QVERIFY(answer.mayFly && !answer.governs && answer.reasons.empty());
    }

    void howLongItMayFly_data() {
        QTest::addColumn<QString>("use");
        QTest::addColumn<int>("clock");
        QTest::addColumn<int>("minutes");
        QTest::addColumn<bool>("positioning");
        QTest::addColumn<bool>("mayFly");
        const QString flight = "flight", positioning = "positioning";
        QTest::newRow("just what is left") << flight << 5900 << 700 << false << true;
        QTest::newRow("a minute more than is left, tolerance included") << flight << 5900 << 701 << false << false;
        QTest::newRow("inside the tolerance (ML.A.302(d)(1)(a))") << flight << 6500 << 100 << false << true;
        QTest::newRow("nothing left: not even a short flight") << flight << 6600 << 0 << false << false;
        QTest::newRow("an ordinary flight has no tolerance (91.409(b))") << positioning << 5900 << 100 << false << true;
        QTest::newRow("an ordinary flight a minute too long (91.409(b))")
            << positioning << 5900 << 101 << false << false;
        QTest::newRow("en route to the inspection (91.409(b))") << positioning << 5900 << 700 << true << true;
        QTest::newRow("en route, more than 10 h beyond (91.409(b))") << positioning << 5900 << 701 << true << false;
        QTest::newRow("in tolerance, not en route (91.409(b))") << positioning << 6000 << 0 << false << false;
        QTest::newRow("in tolerance, en route (91.409(b))") << positioning << 6000 << 0 << true << true;
    }
    void howLongItMayFly() {
        QFETCH(QString, use);
        QFETCH(int, clock);
        QFETCH(int, minutes);
        QFETCH(bool, positioning);
        QFETCH(bool, mayFly);
        auto requirement = hundredHours();
        requirement.toleranceFor = use == "flight" ? ToleranceFor::Flight : ToleranceFor::Positioning;
        const auto answer = Kit().with(requirement, flown(clock)).check(minutes, positioning);
        QCOMPARE(answer.mayFly, mayFly);
        QCOMPARE(answer.reasons.empty(), mayFly);
        const bool pastItsLimit = clock >= 6000 || clock + minutes > 6000;
        QCOMPARE(answer.tolerances.size(), std::size_t(mayFly && pastItsLimit ? 1 : 0)); // never flown unsaid
    }

    /// What is due at an inspection grounds nothing before it: it governs only where nothing else does.
    void whatWaitsForAnInspectionDoesNotGovern() {
        const auto alone = Kit().clear(ClockName::Inspections, 0.1);
        QVERIFY(alone.check().governs == alone.row(0));
        const auto both = Kit().clear(ClockName::Inspections, 0.1).clear(ClockName::Months, 0.7);
        QVERIFY(both.check().governs == both.row(1));
    }
    void theReasonNamesTheLimit() {
        const auto requirement =
            rule(R"("limits": [{"clock": "months", "every": 12}, {"clock": "minutes", "every": 6000}])");
        const auto tooLong = Kit().with(requirement, flown(5990)).check(11);
        QCOMPARE(tooLong.reasons.at(0).kind, RigUpReason::Kind::TooLong);
        QCOMPARE(tooLong.reasons.at(0).limit->clock, ClockName::Minutes);
        const auto lapsed = Kit().with(requirement, flown(0), "2025-01-02").check();
        QCOMPARE(lapsed.reasons.at(0).kind, RigUpReason::Kind::Standing);
        QCOMPARE(lapsed.reasons.at(0).limit->clock, ClockName::Months);
        const auto ferry = Kit().with(hundredHours(R"(, "tolerance_for": "positioning")"), flown(6000)).check();
        QCOMPARE(ferry.reasons.at(0).kind, RigUpReason::Kind::Positioning);
    }
    void theLastLandingMayBeFlown() {
        const auto requirement = rule(R"("limits": [{"clock": "landings", "every": 50}])");
        QVERIFY(Kit().with(requirement, flown(0, 49)).check().mayFly);
        QVERIFY(!Kit().with(requirement, flown(0, 50)).check().mayFly);
    }
    void unprovenMayNotFly() {
        const auto answer = Kit().with(hundredHours(), Item().at(1.0)).check();
        QVERIFY(!answer.mayFly);
        QCOMPARE(answer.reasons.at(0).kind, RigUpReason::Kind::Standing);
        QVERIFY(!answer.reasons.at(0).limit->isProven());
    }
    void spentMayNotFly() { QVERIFY(!Kit().with(hundredHours(R"(, "action": "retire")"), flown(6600)).check().mayFly); }
    void anEventGrounds() {
        const auto answer =
            Kit().with(rule(R"("triggered_by": ["fire"])"), Item().happened("fire", "2024-01-20")).check();
        QVERIFY(!answer.mayFly);
        QVERIFY(!answer.reasons.at(0).limit);
    }

    void whatNeverGroundsIsNoted_data() {
        QTest::addColumn<QString>("keys");
        QTest::newRow("a recommendation (a bulletin that is not mandatory)") << R"(, "force": "recommended")";
        QTest::newRow("a cylinder's transport test (49 CFR 180.207(a)(2))") << R"(, "blocks": "filling")";
        QTest::newRow("not required in this operation (91.409(b))") << R"(, "operations": ["for-hire"])";
    }
    void whatNeverGroundsIsNoted() {
        QFETCH(QString, keys);
        const auto requirement = hundredHours(keys.toStdString());
        const auto lapsed = Kit().with(requirement, flown(7000)).check(60);
        QVERIFY(lapsed.mayFly && !lapsed.governs);
        QCOMPARE(lapsed.notes.size(), std::size_t{1});
        QVERIFY(Kit().with(requirement, flown(0)).check().notes.empty());
    }
    void closedNeverGrounds() {
        const auto requirement = hundredHours(R"(, "once": true)");
        QVERIFY(Kit().with(requirement, flown(99999)).check(600).mayFly);
    }

    void withWhicheverIsLastOneLimitIsEnough() {
        const auto requirement = rule(
            R"("whichever": "last", "limits": [{"clock": "minutes", "every": 6000}, {"clock": "months", "every": 12}])");
        QVERIFY(Kit().with(requirement, flown(9000)).check(60).mayFly);
        QVERIFY(Kit().with(requirement, flown(10), "2025-02-01").check(60).mayFly);
        QVERIFY(!Kit().with(requirement, flown(5990), "2025-02-01").check(60).mayFly);
        QVERIFY(!Kit().with(requirement, flown(9000), "2025-02-01").check().mayFly);
    }

    void anExemptionMustLastThroughTheFlight_data() {
        QTest::addColumn<int>("clock");
        QTest::addColumn<int>("minutes");
        QTest::addColumn<bool>("mayFly");
        // Exempt under 150 h (a manufacturer's instructions, Appendix II-A, 2001), first test at 150 h.
        QTest::newRow("still under 150 h after it") << 8900 << 99 << true;
        QTest::newRow("150 h reached as it lands") << 8900 << 100 << true;
        QTest::newRow("150 h passed in flight") << 8900 << 101 << false;
    }
    void anExemptionMustLastThroughTheFlight() {
        QFETCH(int, clock);
        QFETCH(int, minutes);
        QFETCH(bool, mayFly);
        const auto test =
            rule(R"("action": "test", "starts_from": "made", "exempt_until": {"months": 24, "minutes": 9000},
            "limits": [{"clock": "minutes", "every": 6000, "first": 9000}, {"clock": "months", "every": 12, "first": 24}])");
        QCOMPARE(Kit().with(test, Item().made("2023-06-01").at(clockOf(clock))).check(minutes).mayFly, mayFly);
    }
    void anExemptItemFliesWhateverItsLimits() {
        const auto requirement =
            rule(R"("exempt_until": {"minutes": 9000}, "limits": [{"clock": "months", "every": 12}])");
        QVERIFY(Kit().with(requirement, Item().at(10.0)).check(60).mayFly);
    }

    void aBalloonIsAsGoodAsItsWorstItem() {
        const auto kit =
            Kit().with(hundredHours(), flown(10)).with(hundredHours(), flown(7000)).with(hundredHours(), flown(5500));
        const auto answer = kit.check();
        QVERIFY(!answer.mayFly);
        QCOMPARE(answer.governs, kit.row(1));
        QCOMPARE(answer.reasons.size(), std::size_t{1});
        QCOMPARE(answer.reasons.at(0).row, kit.row(1));
    }
    void aKitIsAWholeBalloonOrMayNotFly_data() {
        QTest::addColumn<QString>("kit");
        QTest::addColumn<QString>("refused");
        QTest::newRow("one of each") << "EBRC"
                                     << "";
        QTest::newRow("four cylinders") << "EBRCCCC"
                                        << "";
        QTest::newRow("no envelope") << "BRC"
                                     << "E0";
        QTest::newRow("no basket") << "ERC"
                                   << "B0";
        QTest::newRow("no burner") << "EBC"
                                   << "R0";
        QTest::newRow("no cylinder") << "EBR"
                                     << "C0";
        QTest::newRow("two envelopes") << "EEBRC"
                                       << "E2";
        QTest::newRow("two baskets and no burner") << "EBBC"
                                                   << "B2R0";
        QTest::newRow("a hose beside them") << "EBRCH"
                                            << "";
        QTest::newRow("only a cylinder") << "C"
                                         << "E0B0R0";
    }
    void aKitIsAWholeBalloonOrMayNotFly() {
        QFETCH(QString, kit);
        QFETCH(QString, refused);
        const std::map<QChar, ItemKind> kinds{{u'E', ItemKind::Envelope},
                                              {u'B', ItemKind::Basket},
                                              {u'R', ItemKind::Burner},
                                              {u'C', ItemKind::Cylinder},
                                              {u'H', ItemKind::Hose}};
        DueList list;
        for (const auto letter : kit)
            list.items.push_back(Item(kinds.at(letter)));
        const auto requirement = rule(R"("triggered_by": ["fire"])");
        for (const auto& item : list.items) {
            list.rows.push_back({&item, &requirement, nullptr, {}});
            list.rows.back().state.standing = Standing::Clear;
            list.rows.back().state.because = Because::Exempt;
        }
        const auto answer = rigUp(list, {});
        QString found;
        for (const auto& reason : answer.reasons) {
            QCOMPARE(reason.kind, RigUpReason::Kind::Incomplete);
            const auto letter = std::ranges::find(kinds, reason.part, &std::pair<const QChar, ItemKind>::second)->first;
            found += letter + QString::number(reason.count);
        }
        QCOMPARE(found, refused);
        QCOMPARE(answer.mayFly, refused.isEmpty());
    }
    /// An item that nothing mandatory binds is not known to be anything.
    void whatNothingBindsCannotBeSaid_data() {
        QTest::addColumn<QString>("keys");
        QTest::addColumn<bool>("known");
        QTest::newRow("a mandatory requirement") << R"("triggered_by": ["fire"])" << true;
        QTest::newRow("a recommendation") << R"("triggered_by": ["fire"], "force": "recommended")" << false;
        QTest::newRow("one that the operation does not call for")
            << R"("triggered_by": ["fire"], "operations": ["for-hire"])" << false;
        QTest::newRow("none") << "" << false;
    }
    void whatNothingBindsCannotBeSaid() {
        QFETCH(QString, keys);
        QFETCH(bool, known);
        DueList list;
        for (const auto kind : {ItemKind::Envelope, ItemKind::Basket, ItemKind::Burner, ItemKind::Cylinder})
            list.items.push_back(Item(kind));
        const auto sure = rule(R"("triggered_by": ["fire"])");
        const auto asked = rule(keys.isEmpty() ? R"("triggered_by": ["fire"])" : keys.toStdString());
        for (const auto& item : list.items)
            if (&item != &list.items.back() || !keys.isEmpty()) {
                const auto& requirement = &item == &list.items.back() ? asked : sure;
                list.rows.push_back({&item, &requirement, nullptr, {}});
                list.rows.back().state.standing = Standing::Clear;
                list.rows.back().state.because =
                    requirement.operations.empty() ? Because::Exempt : Because::NotRequired;
            }
        const auto answer = rigUp(list, {});
        QCOMPARE(answer.mayFly, known);
        if (!known) {
            QCOMPARE(answer.reasons.size(), std::size_t{1});
            QCOMPARE(answer.reasons.front().kind, RigUpReason::Kind::CannotSay);
            QCOMPARE(answer.reasons.front().item, &list.items.back());
        }
    }
    void aHoseNeedsNoRequirementOfItsOwn() {
        DueList list;
        for (const auto kind :
             {ItemKind::Envelope, ItemKind::Basket, ItemKind::Burner, ItemKind::Cylinder, ItemKind::Hose})
            list.items.push_back(Item(kind));
        const auto requirement = rule(R"("triggered_by": ["fire"])");
        for (const auto& item : list.items)
            if (item.kind != ItemKind::Hose) {
                list.rows.push_back({&item, &requirement, nullptr, {}});
                list.rows.back().state.standing = Standing::Clear;
                list.rows.back().state.because = Because::Exempt;
            }
        QVERIFY(rigUp(list, {}).mayFly);
    }
    void theWorstGovernsAlsoWhereItMayFly() {
        const auto kit = Kit().with(hundredHours(), flown(10)).with(hundredHours(), flown(5500));
        QVERIFY(kit.check().mayFly);
        QCOMPARE(kit.check().governs, kit.row(1));
    }
};

CROWNRING_TEST(RigUpTest)

}

#include "rig_up_test.moc"
