// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/due/due_list.h"
#include "rules/shed.h"
#include "test_class.h"

namespace due_list_test {

using namespace crownring;
using namespace crownring::shed;

namespace {

std::vector<Adoption> adoptedByAll(std::vector<std::string> requirements) {
    auto programme = std::make_shared<Programme>();
    programme->id = ProgrammeId("p");
    programme->requirements = rulesFrom(requirements).all();
    return {{{}, BoundEverything{}, programme}};
}

QStringList rowsOf(const DueList& list) {
    QStringList rows;
    for (const auto& row : list.rows)
        rows << QString::fromStdString(row.item->id.text() + " " + row.requirement->id.text() + " " +
                                       std::string(standingText(row.state.standing)));
    return rows;
}

}

/// Every requirement of every item, worst first.
class DueListTest : public QObject {
    Q_OBJECT
private slots:
    void worstFirst() {
        auto adoptions = adoptedByAll(
            {R"("id": "life", "action": "retire", "starts_from": "made", "limits": [{"clock": "minutes", "every": 6000, "tolerance": 600}])",
             R"("id": "once", "once": true, "limits": [{"clock": "months", "every": 1}])",
             R"("id": "hire", "operations": ["for-hire"], "limits": [{"clock": "months", "every": 1}])"});
        std::vector<ItemFacts> items;
        const auto add = [&](const char* id, std::int64_t minutes) {
            items.push_back(
                Item().called(id).done("once", "2024-01-01").done("hire", "2010-01-01").at(clockOf(minutes)));
        };
        add("CLEAR", 100);
        add("SPENT", 6600);
        add("TOLERANCE", 6000);
        add("NEARING", 5999);
        items.push_back(
            Item().called("UNPROVEN").done("once", "2024-01-01").done("hire", "2010-01-01").at(nothingStated));
        items.push_back(Item().called("LAPSED").done("hire", "2010-01-01").entered("2000-01-01").at(clockOf(50)));
        const auto list = dueList(std::move(items), {}, Obligations(std::move(adoptions)), day("2024-01-02"));
        QCOMPARE(rowsOf(list), (QStringList{"SPENT life spent", "LAPSED once unproven", "UNPROVEN life unproven",
                                            "TOLERANCE life tolerance", "NEARING life nearing", "CLEAR life clear",
                                            "LAPSED life clear", "CLEAR once closed", "NEARING once closed",
                                            "SPENT once closed", "TOLERANCE once closed", "UNPROVEN once closed",
                                            "CLEAR hire lapsed", "LAPSED hire lapsed", "NEARING hire lapsed",
                                            "SPENT hire lapsed", "TOLERANCE hire lapsed", "UNPROVEN hire lapsed"}));
        QVERIFY(std::ranges::is_sorted(list.rows, comesBefore));
    }
    void equalStandingsByTheSmallerShareThenByName() {
        auto adoptions =
            adoptedByAll({R"("id": "b", "starts_from": "made", "limits": [{"clock": "minutes", "every": 60000}])",
                          R"("id": "a", "starts_from": "made", "limits": [{"clock": "minutes", "every": 60000}])",
                          R"("id": "c", "triggered_by": ["fire"])"});
        std::vector<ItemFacts> items{Item().called("Z").at(clockOf(3000)), Item().called("M").at(clockOf(1000)),
                                     Item().called("A").at(clockOf(1000))};
        const auto list = dueList(std::move(items), {}, Obligations(std::move(adoptions)), day("2024-01-02"));
        QCOMPARE(rowsOf(list), (QStringList{"Z a clear", "Z b clear", "A a clear", "A b clear", "M a clear",
                                            "M b clear", "A c clear", "M c clear", "Z c clear"}));
    }
    void onlyWhatBindsMakesARow() {
        auto adoptions = adoptedByAll({R"("id": "basket", "kinds": ["basket"], "triggered_by": ["fire"])",
                                       R"("id": "act", "kinds": [], "triggered_by": ["fire"])"});
        QVERIFY(dueList({Item()}, {}, Obligations(std::move(adoptions)), day("2024-01-02")).rows.empty());
    }
    void flyingAsABalloonItsProgrammesBindToo() {
        auto adoptions = adoptedByAll({R"("id": "r", "triggered_by": ["fire"])"});
        adoptions.front().bound = BoundBalloons{{Registration("QE-ABC")}};
        const auto rowsFlyingAs = [&](const std::optional<Registration>& balloon) {
            return dueList({Item()}, {}, Obligations(adoptions), day("2024-01-02"), {balloon, {}}).rows.size();
        };
        QCOMPARE(rowsFlyingAs(std::nullopt), std::size_t{0});
        QCOMPARE(rowsFlyingAs(Registration("QE-ABC")), std::size_t{1});
        QCOMPARE(rowsFlyingAs(Registration("QE-XYZ")), std::size_t{0});
    }
    void itMayBeMoved() {
        auto list = dueList({Item().done("r", "2024-01-01")}, {},
                            Obligations(adoptedByAll({R"("id": "r", "limits": [{"clock": "months", "every": 12}])"})),
                            day("2024-01-02"));
        const auto moved = std::move(list);
        QCOMPARE(moved.rows.front().item, moved.items.data());
        QCOMPARE(rowsOf(moved), QStringList{"ITEM-1 r clear"});
        QCOMPARE(moved.rows.front().programme->id, ProgrammeId("p"));
        QCOMPARE(moved.on, day("2024-01-02"));
    }
};

CROWNRING_TEST(DueListTest)

}

#include "due_list_test.moc"
