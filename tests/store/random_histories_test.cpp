// SPDX-License-Identifier: GPL-3.0-or-later
#include "made_up_history.h"
#include "plain_replay.h"
#include "scratch.h"
#include "test_class.h"

#include <QtTest>
#include <rapidcheck.h>

namespace random_histories_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

/// Everything that is asked of a record, on several days, in a form that compares.
struct Answers {
    std::vector<std::vector<ItemFacts>> facts;
    std::vector<std::vector<FabricHistory>> fabric;
    std::vector<Question> questions;
    bool operator==(const Answers&) const = default;
};

std::vector<ItemFacts> byId(std::vector<ItemFacts> facts) {
    std::sort(facts.begin(), facts.end(), [](const auto& a, const auto& b) { return a.id < b.id; });
    return facts;
}

const std::vector<int> asked = {0, 7, 23, 41, MadeUpHistory::lastDay, 400};

Answers answersOf(Record& record) {
    Answers answers;
    for (const int number : asked) {
        answers.facts.push_back(byId(record.facts({}, MadeUpHistory::dayAt(number)).value()));
        answers.fabric.push_back(fabricOf(record, MadeUpHistory::dayAt(number)));
    }
    answers.questions = record.questions().value();
    return answers;
}

/// Posts one by one or in batches; a correction that is refused (it would make no sense of any form of its target) is
/// left out of `kept`.
void postAll(Record& record, const std::vector<Entry>& entries, std::size_t batch, std::vector<Entry>* kept = nullptr) {
    std::vector<NumberedEntry> waiting;
    const auto flush = [&] {
        if (!record.append(waiting, "made-up"))
            for (const auto& each : waiting)
                if (record.append({each}, "made-up") && kept)
                    kept->push_back(each.entry);
                else
                    RC_ASSERT(!kept || amends(each.entry).has_value());
        else if (kept)
            for (const auto& each : waiting)
                kept->push_back(each.entry);
        waiting.clear();
    };
    for (const auto& entry : entries) {
        waiting.push_back({entry, 0});
        if (waiting.size() >= batch)
            flush();
    }
    flush();
}

MadeUpHistory anyHistory() {
    const auto seed = *rc::gen::arbitrary<unsigned>();
    const auto size = *rc::gen::inRange(0, 45);
    return MadeUpHistory(seed, size);
}

}

class RandomHistoriesTest : public QObject {
    Q_OBJECT
private slots:
    void theRecordAgreesWithAPlainReplay() {
        QVERIFY(rc::check([] {
            const auto history = anyHistory();
            Scratch scratch;
            std::vector<Entry> kept;
            postAll(*scratch.record, history.entries, *rc::gen::element<std::size_t>(1, 5, 1000), &kept);
            for (const int number : asked) {
                const auto on = MadeUpHistory::dayAt(number);
                auto facts = byId(scratch.record->facts({}, on).value());
                RC_ASSERT(facts == PlainReplay(kept, on).facts());
                RC_ASSERT(fabricOf(*scratch.record, on) == plainFabric(kept, on));
            }
        }));
    }
    void orderOfArrivalDoesNotMatter() {
        QVERIFY(rc::check([] {
            auto history = anyHistory();
            Scratch one, other;
            std::vector<Entry> kept;
            postAll(*one.record, history.entries, 1000, &kept);
            history.entries = kept;
            const auto order = history.shuffled();
            std::vector<Entry> keptToo;
            postAll(*other.record, order, *rc::gen::element<std::size_t>(1, 7), &keptToo);
            RC_PRE(keptToo.size() == kept.size());
            RC_ASSERT(answersOf(*one.record) == answersOf(*other.record));
        }));
    }
    void projectionsEqualARebuild() {
        QVERIFY(rc::check([] {
            const auto history = anyHistory();
            Scratch scratch;
            postAll(*scratch.record, history.entries, *rc::gen::element<std::size_t>(1, 4, 1000));
            const auto before = answersOf(*scratch.record);
            RC_ASSERT(scratch.record->rebuild().has_value());
            RC_ASSERT(answersOf(*scratch.record) == before);
        }));
    }
    void aVoidUndoesAPost() {
        QVERIFY(rc::check([] {
            const auto history = anyHistory();
            Scratch scratch;
            std::vector<Entry> kept;
            postAll(*scratch.record, history.entries, 1000, &kept);
            const auto before = answersOf(*scratch.record);
            MadeUpHistory more(*rc::gen::arbitrary<unsigned>(), 8);
            for (auto& entry : more.entries) {
                if (amends(entry) || std::holds_alternative<ItemEntered>(entry.body) ||
                    std::holds_alternative<BalloonEntered>(entry.body))
                    continue;
                entry.id = EntryId("more-" + entry.id.text());
                RC_ASSERT(scratch.record->append({{entry, 0}}, "more").has_value());
                Entry undo;
                undo.id = EntryId("undo-" + entry.id.text());
                undo.on = entry.on;
                undo.body = EntryVoided{entry.id, "undone"};
                RC_ASSERT(scratch.record->append({{undo, 0}}, "more").has_value());
            }
            RC_ASSERT(answersOf(*scratch.record) == before);
        }));
    }
    void clocksAskedTogetherAreThoseOfEachDay() {
        QVERIFY(rc::check([] {
            const auto history = anyHistory();
            Scratch scratch;
            postAll(*scratch.record, history.entries, 1000);
            std::vector<ItemDay> days;
            const auto items = scratch.record->facts({}, MadeUpHistory::dayAt(400)).value();
            for (int number = -2; number < MadeUpHistory::lastDay + 4; number += *rc::gen::inRange(1, 5))
                for (const auto& facts : items)
                    days.push_back({facts.id, MadeUpHistory::dayAt(number)});
            const auto clocks = scratch.record->clocks(days).value();
            RC_ASSERT(clocks.size() == days.size());
            for (std::size_t i = 0; i < days.size(); ++i) {
                const auto facts = scratch.record->facts({std::nullopt, {days[i].item}}, days[i].day).value();
                RC_ASSERT(clocks[i] == (facts.empty() ? std::nullopt : std::optional(facts.front().clock)));
            }
        }));
    }
    void oneItemAndOneBalloonAnswerAsEverythingDoes() {
        QVERIFY(rc::check([] {
            const auto history = anyHistory();
            Scratch scratch;
            postAll(*scratch.record, history.entries, 1000);
            for (const int number : asked) {
                const auto on = MadeUpHistory::dayAt(number);
                const auto all = scratch.record->facts({}, on).value();
                for (const auto& fabric : fabricOf(*scratch.record, on)) {
                    std::vector<FabricHistory> alone;
                    RC_ASSERT(scratch.record
                                  ->fabric({fabric.item}, on, [&](const FabricHistory& each) { alone.push_back(each); })
                                  .has_value());
                    RC_ASSERT(alone == std::vector{fabric});
                }
                for (const auto& facts : all) {
                    const auto alone = scratch.record->facts({std::nullopt, {facts.id}}, on).value();
                    RC_ASSERT(alone == std::vector{facts});
                    if (facts.balloon) {
                        const auto together = scratch.record->facts({facts.balloon, {}}, on).value();
                        RC_ASSERT(std::find(together.begin(), together.end(), facts) != together.end());
                    }
                }
            }
        }));
    }
};

CROWNRING_TEST(RandomHistoriesTest, QCoreApplication)

}

#include "random_histories_test.moc"
