// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/amendment.h"
#include "record/entry_json.h"
#include "record/random_entries.h"
#include "test_class.h"

#include <QtTest>
#include <nlohmann/json.hpp>
#include <rapidcheck.h>

#include <algorithm>

namespace amendment_test {

using namespace crownring;

namespace {

Entry entry(const std::string& line) {
    const auto read = entryFrom(std::string_view(line));
    return read ? *read : throw std::runtime_error(text(read.error()));
}

const Entry flight =
    entry(R"({"entry":"flight.logged","id":"f1","on":"2024-05-01","balloon":"A","minutes":60,"note":"calm"})");

Entry correction(const char* id, const char* replaces, const char* with, const char* on = "2024-06-01") {
    return entry(std::string(R"({"entry":"entry.corrected","id":")") + id + R"(","on":")" + on + R"(","replaces":")" +
                 replaces + R"(","with":)" + with + "}");
}
Entry voiding(const char* id, const char* voids, const char* on = "2024-06-01") {
    return entry(std::string(R"({"entry":"entry.voided","id":")") + id + R"(","on":")" + on + R"(","voids":")" + voids +
                 R"(","reason":"never flown"})");
}

std::int64_t minutesOf(const Amended& result) {
    return std::get<FlightLogged>(result.entry.value().body).use.minutes.value();
}

/// The settled points read as a recursion, without regard to order: what `one` says, given all that was ever written.
std::optional<Entry> oracle(const Entry& one, const std::vector<Entry>& all) {
    std::vector<Entry> corrections;
    for (const auto& other : all) {
        if (amends(other) != one.id)
            continue;
        const auto says = oracle(other, all);
        if (says && std::holds_alternative<EntryVoided>(says->body))
            return std::nullopt;
        if (says)
            corrections.push_back(*says);
    }
    std::sort(corrections.begin(), corrections.end(), [](const Entry& a, const Entry& b) {
        return std::pair(momentOf(a), a.id) < std::pair(momentOf(b), b.id);
    });
    auto object = toJson(one);
    for (const auto& each : corrections) {
        auto next = object;
        const auto patch = nlohmann::json::parse(std::get<EntryCorrected>(each.body).with);
        for (const auto& [key, value] : patch.items()) {
            next.erase(key);
            if (!value.is_null())
                next[key] = value;
        }
        if (const auto sensible = entryFrom(next))
            object = toJson(*sensible);
    }
    return *entryFrom(object);
}

}

class AmendmentTest : public QObject {
    Q_OBJECT
private slots:
    void anEntryThatNobodyAmendsSaysWhatItSaid() { QVERIFY(amended(flight, {}).entry == flight); }

    void aCorrectionIsAShallowPatchAndNullRemovesAKey() {
        const std::vector amendments = {correction("c1", "f1", R"({"minutes":75,"note":null,"kit":["E1"]})")};
        const auto result = amended(flight, amendments);
        QVERIFY(
            *result.entry ==
            entry(R"({"entry":"flight.logged","id":"f1","on":"2024-05-01","balloon":"A","minutes":75,"kit":["E1"]})"));
        QCOMPARE(result.appliedInOrder, std::vector{EntryId("c1")});
    }

    void correctionsApplyInTheOrderOfTheirOwnMomentsThenIds() {
        const std::vector late = {correction("c1", "f1", R"({"minutes":70})", "2024-07-01"),
                                  correction("c2", "f1", R"({"minutes":80})", "2024-06-01")};
        QCOMPARE(minutesOf(amended(flight, late)), 70);
        const std::vector sameMoment = {correction("b", "f1", R"({"minutes":80})"),
                                        correction("a", "f1", R"({"minutes":70})")};
        QCOMPARE(minutesOf(amended(flight, sameMoment)), 80);
    }

    void aVoidBeatsACorrectionWheneverItIsDated() {
        const std::vector amendments = {voiding("v1", "f1", "2024-06-01"),
                                        correction("c1", "f1", R"({"minutes":70})", "2024-07-01")};
        QVERIFY(!amended(flight, amendments).entry);
    }

    void aVoidCanBeVoidedAndThatOneToo() {
        std::vector amendments = {voiding("v1", "f1"), voiding("v2", "v1")};
        QVERIFY(amended(flight, amendments).entry == flight);
        amendments.push_back(voiding("v3", "v2"));
        QVERIFY(!amended(flight, amendments).entry);
    }

    void aCorrectionThatIsVoidedNoLongerApplies() {
        const std::vector amendments = {correction("c1", "f1", R"({"minutes":70})"), voiding("v1", "c1")};
        QVERIFY(amended(flight, amendments).entry == flight);
    }

    void aCorrectionCanItselfBeCorrected() {
        std::vector amendments = {correction("c1", "f1", R"({"minutes":70})"),
                                  correction("c2", "c1", R"({"with":{"minutes":71}})")};
        QCOMPARE(minutesOf(amended(flight, amendments)), 71);
        // Also in its date, and so in its turn.
        amendments = {correction("c1", "f1", R"({"minutes":70})", "2024-06-01"),
                      correction("c2", "f1", R"({"minutes":80})", "2024-06-02"),
                      correction("c3", "c1", R"({"on":"2024-06-03"})")};
        QCOMPARE(minutesOf(amended(flight, amendments)), 70);
    }

    void aCorrectionWhoseResultMakesNoSenseIsLeftOutAndNamed() {
        const std::vector amendments = {correction("c1", "f1", R"({"minutes":-5})", "2024-06-01"),
                                        correction("c2", "f1", R"({"landings":2})", "2024-06-02"),
                                        correction("c3", "f1", R"({"serial":"7"})", "2024-06-03")};
        const auto result = amended(flight, amendments);
        QCOMPARE(minutesOf(result), 60);
        QCOMPARE(std::get<FlightLogged>(result.entry->body).use.landings.value(), 2);
        QCOMPARE(result.notApplicable, (std::vector{EntryId("c1"), EntryId("c3")}));
        QCOMPARE(result.appliedInOrder, std::vector{EntryId("c2")});
    }

    void aRequiredKeyCannotBeRemoved() {
        const auto result = patched(flight, R"({"balloon":null})");
        QVERIFY(!result);
        QCOMPARE(result.error().code(), Code::MissingKey);
        QCOMPARE(patched(flight, "[]").error().code(), Code::BadValue);
    }

    void anyHistoryReadsAsTheSettledPointsSay() {
        QVERIFY(rc::check("every entry of a history", [] {
            const auto history = *random::anyHistory(random::Cast{});
            std::vector<Entry> amendments;
            std::copy_if(history.begin(), history.end(), std::back_inserter(amendments),
                         [](const Entry& each) { return amends(each).has_value(); });
            for (const auto& each : history)
                RC_ASSERT(amended(each, amendments).entry == oracle(each, history));
        }));
    }

    void theOrderOfArrivalDoesNotMatter() {
        QVERIFY(rc::check("amendments that arrive in another order that respects references", [] {
            const auto history = *random::anyHistory(random::Cast{});
            std::vector<Entry> waiting;
            std::copy_if(history.begin(), history.end(), std::back_inserter(waiting),
                         [](const Entry& each) { return amends(each).has_value(); });
            const auto first = waiting;
            // Draws one after another among those whose target has arrived or is no amendment.
            std::vector<Entry> second;
            while (!waiting.empty()) {
                std::vector<std::size_t> ready;
                for (std::size_t i = 0; i < waiting.size(); ++i)
                    if (std::none_of(waiting.begin(), waiting.end(),
                                     [&](const Entry& other) { return other.id == *amends(waiting[i]); }))
                        ready.push_back(i);
                const auto next = *rc::gen::elementOf(ready);
                second.push_back(waiting[next]);
                waiting.erase(waiting.begin() + static_cast<std::ptrdiff_t>(next));
            }
            for (const auto& each : history) {
                const auto a = amended(each, first);
                const auto b = amended(each, second);
                RC_ASSERT(a.entry == b.entry);
                RC_ASSERT(a.notApplicable == b.notApplicable);
                RC_ASSERT(a.appliedInOrder == b.appliedInOrder);
            }
        }));
    }
};

CROWNRING_TEST(AmendmentTest)

}

#include "amendment_test.moc"
