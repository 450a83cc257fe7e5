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
std::string notified(const std::string& event, const std::string& balloon) {
    return R"({"entry":"event.notified","on":"2026-05-22","to":"authority","ref":"R-1","event":)" + quoted(event) +
           R"(,"balloon":)" + quoted(balloon) + "}";
}
const std::string aFlight = R"({"entry":"flight.logged","id":"f","on":"2026-05-19","balloon":"QE-ONE","minutes":50})";
const std::string another = R"({"entry":"balloon.entered","on":"2026-01-01","balloon":"QE-TWO"})";
const std::string packedWet = R"({"entry":"event.reported","on":"2026-05-20","item":"E1","event":"packed-wet"})";
const std::string intoRunDry =
    R"({"entry":"entry.corrected","on":"2026-05-21","by":"Ada Rhos","note":"misread","replaces":"e","with":{"event":"coil-run-dry"}})";
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
    /// Else all of the balloon would be due, and nothing that looks for it on the rest.
    void whatHappensToOneItemIsReportedOfThat() {
        for (const auto* event : {"coil-run-dry", "flame-contact", "packed-wet"}) {
            Shop shop;
            const auto problems = problemsOf(shop.record(), reported(event));
            QCOMPARE(problems.size(), std::size_t{1});
            QCOMPARE(problems.front().fault, Fault(EntryFault::EventOfAnItem));
            QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
        }
        Shop shop;
        shop.say(packedWet);
        shop.say(mildew);
        QVERIFY(std::ranges::any_of(problemsOf(shop.record(), intoRunDry), [](const Problem& each) {
            return each.fault == Fault(EntryFault::EventOfAnItem);
        }));
    }
    /// A report outside is of an event of that balloon: else it would stop a clock of another.
    void aReportNamesAnEventOfThatBalloon() {
        Shop shop;
        shop.say(mildew);
        shop.say(aFlight);
        shop.say(another);
        const auto problems = problemsOf(shop.record(), notified("nothing", "QE-ONE"));
        QCOMPARE(problems.size(), std::size_t{1});
        QCOMPARE(problems.front().fault, Fault(EntryFault::NotTheEvent));
        QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
        QCOMPARE(problemsOf(shop.record(), notified("f", "QE-ONE")).front().fault, Fault(EntryFault::NotTheEvent));
        QCOMPARE(problemsOf(shop.record(), notified("e", "QE-TWO")).front().fault, Fault(EntryFault::NotTheEvent));
        shop.say(notified("e", "QE-ONE"));
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
