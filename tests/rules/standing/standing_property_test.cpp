// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/any_history.h"
#include "rules/due/due_list.h"
#include "rules/due/rig_up.h"
#include "test_class.h"

namespace standing_property_test {

using namespace crownring;
using namespace crownring::shed;

namespace {

Rules anyRules(bool huge = false) { return Rules(programmeFrom(anyProgramme(huge)).value().requirements); }

int severity(Standing standing) { return -static_cast<int>(standing); }

}

/// What holds for every programme and every history.
class StandingPropertyTest : public QObject {
    Q_OBJECT
private slots:
    void aLaterDateNeverHasMoreLeft() {
        QVERIFY(rc::check([] {
            const auto rules = anyRules();
            const Item item = anyItem(300);
            const auto today = anyDay();
            const auto laterDay = addDays(today, number(0, 400));
            for (const auto& requirement : rules.all()) {
                const auto now = assess(requirement, item, rules, today);
                const auto then = assess(requirement, item, rules, laterDay);
                for (std::size_t i = 0; i < now.limits.size(); ++i) {
                    RC_ASSERT((leftOf(then.limits[i]) <= leftOf(now.limits[i])));
                    RC_ASSERT((toleranceLeftOf(then.limits[i]) <= toleranceLeftOf(now.limits[i])));
                    RC_ASSERT((then.limits[i].standing <= now.limits[i].standing));
                }
                RC_ASSERT((severity(then.standing) >= severity(now.standing)));
            }
        }));
    }

    void aLongerFlownClockNeverHasMoreLeft() {
        QVERIFY(rc::check([] {
            const auto rules = anyRules();
            Item item = anyItem(300);
            const auto today = anyDay();
            for (const auto& requirement : rules.all()) {
                const auto now = assess(requirement, item, rules, today);
                auto flown = item;
                flown.facts().clock = flown.facts().clock + Usage{Minutes{number(0, 99)}, Landings{1}, Inflations{1}};
                const auto then = assess(requirement, flown, rules, today);
                for (std::size_t i = 0; i < now.limits.size(); ++i)
                    RC_ASSERT((leftOf(then.limits[i]) <= leftOf(now.limits[i])));
                RC_ASSERT((severity(then.standing) >= severity(now.standing)));
            }
        }));
    }

    void whicheverIsFirstIsNeverLaterThanAnyOfItsLimits() {
        QVERIFY(rc::check([] {
            auto requirement = anyRules().all().front();
            requirement.exemptUntil.clear();
            requirement.whichever = Whichever::First;
            const auto state = assess(requirement, anyItem(300), Rules(), anyDay());
            for (const auto& limit : state.limits)
                RC_ASSERT((severity(state.standing) >= severity(limit.standing)));
        }));
    }

    void whicheverIsLastIsNeverWorseThanAnyOfItsLimits() {
        QVERIFY(rc::check([] {
            auto requirement = anyRules().all().front();
            requirement.triggeredBy.clear();
            requirement.whichever = Whichever::Last;
            const auto state = assess(requirement, anyItem(300), Rules(), anyDay());
            for (const auto& limit : state.limits)
                RC_ASSERT((severity(state.standing) <= severity(limit.standing)));
        }));
    }

    void unknownIsNeverClear() {
        QVERIFY(rc::check([] {
            auto requirement = anyRules().all().front();
            // What goes with inspections alone grounds nothing between them.
            std::erase_if(requirement.limits, [](const Limit& limit) { return !limit.with.empty(); });
            RC_PRE(!requirement.limits.empty());
            requirement.startsFrom = StartsFrom::Done;
            requirement.exemptUntil.clear();
            requirement.endedBy.clear();
            Item item = anyItem(300);
            item.facts().done.clear();
            RC_ASSERT((assess(requirement, item, Rules(), anyDay()).standing <= Standing::Unproven));
        }));
    }

    void theListIsInOrder() {
        QVERIFY(rc::check([] {
            auto programme = std::make_shared<Programme>();
            programme->requirements = anyRules().all();
            std::vector<ItemFacts> items;
            for (auto count = number(0, 6); count > 0; --count)
                items.push_back(anyItem(300).called(("I" + std::to_string(count)).c_str()));
            const auto list = dueList(items, {}, Obligations({{{}, BoundEverything{}, programme}}), anyDay());
            RC_ASSERT((list.rows.size() == items.size() * programme->requirements.size()));
            RC_ASSERT((std::ranges::is_sorted(list.rows, comesBefore)));
        }));
    }

    void whatMayFlyLongMayFlyShort() {
        QVERIFY(rc::check([] {
            auto programme = std::make_shared<Programme>();
            programme->requirements = anyRules().all();
            const auto list = dueList({anyItem(300)}, {}, Obligations({{{}, BoundEverything{}, programme}}), anyDay());
            PlannedFlight shorter, longer;
            shorter.use.minutes = Minutes{number(0, 60)};
            longer.use.minutes = shorter.use.minutes + Minutes{number(0, 60)};
            if (rigUp(list.rows, longer).mayFly)
                RC_ASSERT((rigUp(list.rows, shorter).mayFly));
        }));
    }

    void everyProgrammeOfTheSchemaHasAnAnswerForEveryHistory() {
        QVERIFY(rc::check([] {
            const auto rules = anyRules(true);
            const Item item = anyItem(largestCount);
            const auto today = CivilDate::fromDayNumber(number(-200'000, 3'000'000));
            for (const auto& requirement : rules.all()) {
                const auto state = assess(requirement, item, rules, today);
                RC_ASSERT((!standingText(state.standing).empty()));
                RC_ASSERT((!state.share || std::isfinite(*state.share)));
            }
        }));
    }

    void everyTextIsAProgrammeOrRefused() {
        QVERIFY(rc::check([] {
            auto text = anyProgramme(true);
            for (auto count = number(0, 3); count > 0; --count) {
                const auto at = static_cast<std::size_t>(number(0, std::ssize(text) - 1));
                const auto length = static_cast<std::size_t>(number(0, 12));
                text.replace(at, length, oneOf<std::string>({"", "0", "-1", "\"", "[]", "{}", "null", ",", "1e400"}));
            }
            const auto programme = programmeFrom(text);
            if (programme)
                RC_ASSERT((programmeFrom(canonicalProgramme(text).value()) == programme));
            else
                RC_ASSERT(
                    (programme.error().code() == Code::BadJson || programme.error().code() == Code::BadProgramme));
        }));
    }
};

CROWNRING_TEST(StandingPropertyTest)

}

#include "standing_property_test.moc"
