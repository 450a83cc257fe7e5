// SPDX-License-Identifier: GPL-3.0-or-later
#include "registry/stays.h"
#include "test_class.h"

#include <QtTest>
#include <rapidcheck.h>

#include <algorithm>

namespace stays_test {

using namespace crownring;

namespace {

const ItemId basket("B1");

Stamp at(const char* on, int hour, int minute, const char* id) {
    return {Moment(*CivilDate::parse(on), TimeOfDay(hour, minute)), EntryId(id)};
}
FittingMark fitted(const char* on, const char* balloon, const char* id) {
    return {at(on, 0, 0, id), true, Registration(balloon), ""};
}
FittingMark removed(const char* on, const char* balloon, const char* id) {
    return {at(on, 23, 59, id), false, Registration(balloon), ""};
}

/// Where the item is after a number of marks, told from them alone: the last fitting, unless taken off that balloon
/// since.
std::optional<Registration> placeAfter(std::span<const FittingMark> marks) {
    for (std::size_t i = marks.size(); i-- > 0;) {
        if (!marks[i].fitted)
            continue;
        const auto since = marks.subspan(i + 1);
        const bool taken = std::any_of(since.begin(), since.end(), [&](const FittingMark& mark) {
            return !mark.fitted && mark.balloon == marks[i].balloon;
        });
        return taken ? std::nullopt : std::optional(marks[i].balloon);
    }
    return std::nullopt;
}

std::optional<Registration> placeAt(const Whereabouts& whereabouts, const Stamp& stamp) {
    std::optional<Registration> place;
    int found = 0;
    for (const auto& stay : whereabouts.stays)
        if (stay.from <= stamp && (!stay.until || stamp < *stay.until)) {
            place = stay.balloon;
            ++found;
        }
    if (found > 1)
        throw std::logic_error("in two places at once");
    return place;
}

rc::Gen<std::vector<FittingMark>> anyMarks() {
    return rc::gen::exec([] {
        std::vector<FittingMark> marks;
        const int count = *rc::gen::inRange(0, 14);
        for (int i = 0; i < count; ++i) {
            const Moment moment(*rc::gen::inRange<std::int64_t>(0, 6));
            const auto* balloon = *rc::gen::element("A", "B", "C");
            marks.push_back(
                {{moment, EntryId("e" + std::to_string(i))}, *rc::gen::arbitrary<bool>(), Registration(balloon), ""});
        }
        std::sort(marks.begin(), marks.end(), [](const auto& a, const auto& b) { return a.stamp < b.stamp; });
        return marks;
    });
}

}

class StaysTest : public QObject {
    Q_OBJECT
private slots:
    void fittedAndRemovedIsOneStay() {
        const std::vector marks = {fitted("2024-05-01", "A", "e1"), removed("2024-05-09", "A", "e2")};
        const auto where = whereabouts(basket, marks);
        QCOMPARE(where.stays, (std::vector{Stay{Registration("A"), "", marks[0].stamp, marks[1].stamp}}));
        QVERIFY(where.questions.empty());
    }

    void aFittingMovesTheItemAndAsksWhy() {
        const std::vector marks = {fitted("2024-05-01", "A", "e1"), fitted("2024-05-05", "B", "e2")};
        const auto where = whereabouts(basket, marks);
        QCOMPARE(where.stays, (std::vector{Stay{Registration("A"), "", marks[0].stamp, marks[1].stamp},
                                           Stay{Registration("B"), "", marks[1].stamp, std::nullopt}}));
        QCOMPARE(where.questions.size(), std::size_t(1));
        QCOMPARE(where.questions[0].kind, Question::Kind::FittedElsewhere);
        QCOMPARE(where.questions[0].subject, std::string("B1"));
        QCOMPARE(where.questions[0].stamp, marks[1].stamp);
    }

    void aRemovalFromABalloonThatItIsNotOnChangesNothing() {
        const std::vector marks = {fitted("2024-05-01", "A", "e1"), removed("2024-05-05", "B", "e2")};
        const auto where = whereabouts(basket, marks);
        QCOMPARE(where.stays, (std::vector{Stay{Registration("A"), "", marks[0].stamp, std::nullopt}}));
        QCOMPARE(where.questions.size(), std::size_t(1));
        QCOMPARE(where.questions[0].kind, Question::Kind::RemovedNotFitted);
    }

    // Without times a fitting is at 00:00 and a removal at 23:59 of its day.
    void removedAndRefittedOnOneDayWithoutTimesEndsRemoved() {
        const std::vector marks = {fitted("2024-05-01", "A", "e1"), fitted("2024-05-09", "A", "e3"),
                                   removed("2024-05-09", "A", "e2")};
        const auto where = whereabouts(basket, marks);
        QVERIFY(!placeAt(where, Stamp::before(Moment::endOf(*CivilDate::parse("2024-05-09")))));
        QCOMPARE(where.questions.size(), std::size_t(1));
        QCOMPARE(where.questions[0].kind, Question::Kind::FittedAgain);
    }

    void aSwapOnOneDayLeavesItOnTheNewBalloon() {
        const std::vector marks = {fitted("2024-05-01", "A", "e1"), fitted("2024-05-09", "B", "e2"),
                                   removed("2024-05-09", "A", "e3")};
        const auto where = whereabouts(basket, marks);
        QCOMPARE(placeAt(where, Stamp::before(Moment::endOf(*CivilDate::parse("2024-05-09")))),
                 std::optional(Registration("B")));
    }

    void anyMarksPutTheItemWhereAPlainReadingDoes() {
        QVERIFY(rc::check("just after every mark", [] {
            const auto marks = *anyMarks();
            const auto where = whereabouts(basket, marks);
            for (std::size_t i = 0; i < marks.size(); ++i)
                RC_ASSERT(placeAt(where, marks[i].stamp) == placeAfter(std::span(marks).first(i + 1)));
            RC_ASSERT(marks.empty() || !placeAt(where, Stamp::before(Moment(-1))));
        }));
    }

    void staysFollowEachOtherAndEveryMarkIsAStayItsEndOrAQuestion() {
        QVERIFY(rc::check("no mark is lost", [] {
            const auto marks = *anyMarks();
            const auto where = whereabouts(basket, marks);
            for (std::size_t i = 1; i < where.stays.size(); ++i)
                RC_ASSERT(where.stays[i - 1].until && *where.stays[i - 1].until <= where.stays[i].from);
            for (const auto& mark : marks) {
                const bool begins = std::any_of(where.stays.begin(), where.stays.end(),
                                                [&](const Stay& stay) { return stay.from == mark.stamp; });
                const bool ends = std::any_of(where.stays.begin(), where.stays.end(),
                                              [&](const Stay& stay) { return stay.until == mark.stamp; });
                const bool asked = std::any_of(where.questions.begin(), where.questions.end(),
                                               [&](const Question& q) { return q.stamp == mark.stamp; });
                RC_ASSERT(begins || ends || asked);
                // A swap begins, ends and asks; a clean mark does not ask.
                RC_ASSERT(asked == !((mark.fitted && begins && !ends) || (!mark.fitted && ends)));
            }
        }));
    }
};

CROWNRING_TEST(StaysTest)

}

#include "stays_test.moc"
