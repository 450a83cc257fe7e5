// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/shop.h"
#include "answers/events/awaited_events.h"
#include "problem/faults/entry_fault.h"
#include "said.h"
#include "test_class.h"

#include <QtTest>

namespace events_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

std::string quoted(const std::string& text) { return '"' + text + '"'; }
std::string reported(const std::string& event) {
    return R"({"entry":"event.reported","on":"2026-05-20","balloon":"QE-ONE","event":)" + quoted(event) + "}";
}
const std::string correctedInto =
    R"({"entry":"entry.corrected","on":"2026-05-21","by":"Ada Rhos","note":"misread","replaces":"e","with":{"event":"hardlanding"}})";
const std::string mildew =
    R"({"entry":"event.reported","id":"e","on":"2026-05-20","balloon":"QE-ONE","event":"mildew"})";

}

/// What nothing waits for grounds nothing (02: `triggered_by`); how near is nearly is common practice, no source.
class EventsTest : public QObject {
    Q_OBJECT
private slots:
    void whatIsNearlyKnownIsAskedBack() {
        for (const auto& [event, known] : {std::pair{"hardlanding", "hard-landing"},
                                           {"hard-landings", "hard-landing"},
                                           {"hard-lading", "hard-landing"},
                                           {"wirecontact", "wire-contact"},
                                           {"over-temprature", "over-temperature"},
                                           {"draged", "dragged"},
                                           {"fires", "fire"},
                                           {"mildwe", "mildew"}}) {
            Shop shop;
            const auto problems = problemsOf(shop.record(), reported(event));
            QCOMPARE(problems.size(), std::size_t{1});
            QCOMPARE(problems.front().fault, Fault(EntryFault::NearlyAnEventKnown));
            QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
            QVERIFY(spokenMend(problems.front()).find(known) != std::string::npos);
        }
    }
    void whatIsKnownOrLikeNoneIsTaken() {
        Shop shop;
        for (const auto* event : {"hard-landing", "fire", "increased-fuel-use", "hail", "ballooning-festival"})
            shop.say(reported(event));
        QVERIFY(!awaitedEvents(shop.record()).value().contains("hail"));
    }
    void noCorrectionMakesOneOfThem() {
        Shop shop;
        shop.say(mildew);
        const auto problems = problemsOf(shop.record(), correctedInto);
        QVERIFY(std::ranges::any_of(
            problems, [](const Problem& each) { return each.fault == Fault(EntryFault::NearlyAnEventKnown); }));
    }
};

CROWNRING_TEST(EventsTest, QCoreApplication)

}

#include "events_test.moc"
