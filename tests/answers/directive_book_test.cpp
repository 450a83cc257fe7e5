// SPDX-License-Identifier: GPL-3.0-or-later

/// The book of directives: of each revision how many it binds and what became of that; and of one that nobody has
/// entered yet, whom it would bind.

#include "answers/directives/book.h"
#include "fleet_of_directives.h"
#include "said.h"
#include "test_class.h"

#include <QtTest>

namespace directive_book_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

struct Fleet {
    Fleet() {
        posted(*scratch.record, twoBurners);
        posted(*scratch.record, valveIn("R1", "X-2", "7"));
    }
    void say(const std::string& lines) { posted(*scratch.record, lines); }
    [[nodiscard]] std::shared_ptr<const DirectiveBook> book(const char* on) const {
        return directiveBook(*scratch.record, day(on)).value();
    }
    Scratch scratch;
};

std::vector<int> counts(const DirectiveLine& line) {
    std::vector<int> all;
    for (int share = 0; share < directiveShareCount; ++share)
        all.push_back(line.count(static_cast<DirectiveShare>(share)));
    return all;
}

AppliesTo burnersThat(std::vector<PartAsked> fitted) { return {{ItemKind::Burner}, {}, {}, std::move(fitted)}; }

}

class DirectiveBookTest : public QObject {
    Q_OBJECT
private slots:
    void everyItemOfItsKindsHasItsShare() {
        Fleet fleet;
        QVERIFY(fleet.book("2025-03-01")->lines.empty());
        fleet.say(issued("AD-1", burnersWithValve)); // R1 has the valve; of R2 nobody knows
        const auto book = fleet.book("2025-03-01");
        QCOMPARE(book->lines.size(), std::size_t{1});
        const auto& line = book->lines.front();
        QCOMPARE(counts(line), (std::vector<int>{0, 1, 0, 0, 1, 0}));
        QCOMPARE(line.bound(), 1); // what is unknown is not called bound, and not left out
        QCOMPARE(line.rows.front()->item->id, ItemId("R1"));
        fleet.say(complied("AD-1", "R1", "2025-03-02"));
        fleet.say(excused("AD-1", "R2", "2025-03-02"));
        QCOMPARE(counts(fleet.book("2025-03-03")->lines.front()), (std::vector<int>{0, 0, 0, 1, 0, 1}));
    }

    void whatIsDueAgainAndPastIsOverdueThoughItWasAnswered() {
        Fleet fleet;
        fleet.say(issued("AD-1", R"({"kinds":["envelope"],"serials":[{"from":"100","to":"200"}]})",
                         R"(,"first":{"by":"2025-06-30"},"repeat":{"months":6})"));
        const auto shares = [&](const char* on) { return counts(fleet.book(on)->lines.front()); };
        QCOMPARE(shares("2025-03-01"), (std::vector<int>{0, 0, 1, 0, 1, 0})); // "A-201" is written otherwise: unknown
        QCOMPARE(shares("2025-07-01"), (std::vector<int>{1, 0, 0, 0, 1, 0}));
        fleet.say(complied("AD-1", "E1", "2025-07-02"));
        QCOMPARE(shares("2025-07-03"), (std::vector<int>{0, 0, 0, 1, 1, 0}));
        QCOMPARE(shares("2026-01-03"), (std::vector<int>{1, 0, 0, 0, 1, 0}));
    }

    void beforeTheNextFlightIsLateOnceItHasFlownSince() {
        Fleet fleet;
        fleet.say(R"({"entry":"flight.logged","on":"2025-02-28","balloon":"QE-ONE","minutes":60})");
        fleet.say(issued("AD-1", burnersWithValve)); // effective 2025-03-01
        const auto share = [&](const char* on) { return shareOf(*fleet.book(on)->lines.front().rows.front()); };
        QVERIFY(share("2025-03-01") == DirectiveShare::AtOnce);
        QVERIFY(share("2026-03-01") == DirectiveShare::AtOnce); // on the ground for a year
        QCOMPARE(fleet.book("2025-03-01")->lines.front().rows.front()->state.standing, Standing::Lapsed); // it grounds
        fleet.say(R"({"entry":"flight.logged","on":"2025-03-01","balloon":"QE-ONE","minutes":40})");
        QVERIFY(share("2025-03-01") == DirectiveShare::Overdue);
    }
    void beforeTheNextFlightIsLateOnceItsDateIsPast() {
        Fleet fleet;
        fleet.say(issued("AD-1", burnersWithValve, R"(,"first":{"before_flight":true,"by":"2025-03-31"})"));
        const auto share = [&](const char* on) { return shareOf(*fleet.book(on)->lines.front().rows.front()); };
        QVERIFY(share("2025-03-31") == DirectiveShare::AtOnce);
        QVERIFY(share("2025-04-01") == DirectiveShare::Overdue);
    }

    void whatIsInForceComesFirstThenWhatIsComingThenHistory() {
        Fleet fleet;
        fleet.say(issued("AD-1", burnersWithValve));
        fleet.say(complied("AD-1", "R1", "2025-03-02"));
        fleet.say(
            issued("AD-2", burnersWithValve, R"(,"first":{"before_flight":true},"supersedes":["AD-1"])", "2025-04-01"));
        fleet.say(issued("AD-3", burnersWithValve, R"(,"first":{"before_flight":true})", "2025-09-01"));
        fleet.say(issued("AD-4", R"({"kinds":["hose"]})")); // of which there is none
        const auto book = fleet.book("2025-05-01");
        std::vector<std::string> numbers;
        for (const auto& line : book->lines)
            numbers.push_back(line.issued.body.directive.text());
        QCOMPARE(numbers, (std::vector<std::string>{"AD-2", "AD-4", "AD-3", "AD-1"}));
        QVERIFY(book->lines[1].rows.empty());
        QVERIFY(book->lines[2].life == DirectiveRow::Life::Upcoming);
        QCOMPARE(counts(book->lines[2]), (std::vector<int>{0, 0, 1, 0, 1, 0})); // nothing is overdue before its day
        QVERIFY(book->lines[3].life == DirectiveRow::Life::Superseded);
        QCOMPARE(book->lines[3].count(DirectiveShare::Answered), 1);
    }

    void whomOneWouldBindIsSaidBeforeItIsEntered() {
        Fleet fleet;
        const auto on = day("2025-03-01");
        const auto bound =
            wouldBind(*fleet.scratch.record, burnersThat({{"pilot-valve", ItemKind::Burner, {"X-2"}, {}}}), on).value();
        QCOMPARE(bound.size(), std::size_t{2});
        QVERIFY(bound[0].item.id == ItemId("R1") && bound[0].applicability.applies == Truth::Yes);
        QVERIFY(bound[1].item.id == ItemId("R2") && bound[1].applicability.applies == Truth::Unknown);
        QVERIFY2(spoken(whyOf(bound[1].applicability)).find("not all that is fitted") != std::string::npos,
                 spoken(whyOf(bound[1].applicability)).c_str());
        const auto other =
            wouldBind(*fleet.scratch.record, burnersThat({{"pilot-valve", ItemKind::Burner, {"X-9"}, {}}}), on).value();
        QVERIFY(other[1].item.id == ItemId("R1") && other[1].applicability.applies == Truth::No);
        // By a part that is on the same balloon.
        const AppliesTo envelopes{{ItemKind::Envelope}, {}, {}, {{"pilot-valve", ItemKind::Burner, {"X-2"}, {}}}};
        const auto carried = wouldBind(*fleet.scratch.record, envelopes, on).value();
        QVERIFY(carried[0].item.id == ItemId("E1") && carried[0].applicability.applies == Truth::Yes);
        // And it is so once it is entered.
        fleet.say(issued("AD-1", envelopesWithValve));
        const auto book = fleet.book("2025-03-01");
        for (const auto* row : book->lines.front().rows)
            for (const auto& each : carried)
                if (each.item.id == row->item->id)
                    QVERIFY(each.applicability == row->applicability);
    }

    void whatIsOutOfServiceIsNotAsked() {
        Fleet fleet;
        fleet.say(issued("AD-1", R"({"kinds":["envelope"]})"));
        fleet.say(R"({"entry":"item.state","on":"2025-03-02","item":"E2","state":"sold"})");
        QCOMPARE(fleet.book("2025-03-01")->lines.front().rows.size(), std::size_t{2});
        QCOMPARE(fleet.book("2025-03-03")->lines.front().rows.size(), std::size_t{1});
        QCOMPARE(wouldBind(*fleet.scratch.record, {{ItemKind::Envelope}, {}, {}, {}}, day("2025-03-03")).value().size(),
                 std::size_t{1});
    }
};

CROWNRING_TEST(DirectiveBookTest)

}

#include "directive_book_test.moc"
