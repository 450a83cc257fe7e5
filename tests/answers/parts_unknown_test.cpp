// SPDX-License-Identifier: GPL-3.0-or-later

/// A balloon is not clear while something is fitted to it of which nothing can be said; of two states of one moment the
/// one that restricts holds. Unknown is never clear (02).

#include "answers/balloon_lines.h"
#include "answers/check_rig_up.h"
#include "said.h"
#include "store/scratch.h"
#include "test_class.h"
#include "whole_balloon.h"

#include <QtTest>

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* anotherBasket =
    R"({"entry":"item.entered","on":"2024-01-01","item":"B9","kind":"basket","id":"b9"}
{"entry":"item.fitted","on":"2024-02-01","balloon":"QE-ONE","item":"B9"})";
constexpr const char* itsEntryVoided =
    R"({"entry":"entry.voided","on":"2024-03-01","voids":"b9","reason":"of another shop"})";
constexpr const char* gaugeInTheBurner =
    R"({"entry":"item.entered","on":"2024-01-01","item":"G","kind":"instrument","id":"g"}
{"entry":"item.fitted","on":"2024-02-01","to":"R1","item":"G"})";
constexpr const char* gaugeVoided =
    R"({"entry":"entry.voided","on":"2024-03-01","voids":"g","reason":"of another shop"})";
constexpr const char* enteredLater =
    R"({"entry":"item.entered","on":"2024-12-01","item":"LATE","kind":"other"}
{"entry":"item.fitted","on":"2024-02-01","to":"R1","item":"LATE"})";
constexpr const char* outAtOnce =
    R"({"entry":"item.state","on":"2024-03-01","item":"C1","state":"scrapped","id":"a-out"})";
constexpr const char* inAtOnce =
    R"({"entry":"item.state","on":"2024-03-01","item":"C1","state":"in-service","id":"z-in"})";

std::vector<Question> twoStatesIn(Record& record) {
    auto questions = record.questions().value();
    std::erase_if(questions, [](const Question& each) { return each.kind != Question::Kind::TwoStates; });
    return questions;
}

}

class PartsUnknownTest : public QObject {
    Q_OBJECT
private slots:
    void aBalloonWithAPartOutOfServiceIsNotClear() {
        const Scratch shed;
        posted(*shed.record, aWholeBalloon);
        const auto asked = [&] {
            return balloonLines(*shed.record, Registration("QE-ONE"), day("2024-03-01")).value();
        };
        {
            const auto before = asked();
            QCOMPARE(before.lines.front().standing(), Standing::Clear);
        }
        posted(*shed.record, R"({"entry":"item.state","on":"2024-03-01","item":"C1","state":"scrapped"})");
        const auto answer = asked();
        QCOMPARE(answer.lines.front().standing(), Standing::Unproven);
        QVERIFY(!answer.lines.front().isGoverned());
    }

    void aBalloonWithAPartThatIsNotInTheRecordIsNotClear() {
        const Scratch shed;
        posted(*shed.record, aWholeBalloon);
        posted(*shed.record, anotherBasket);
        for (const auto& balloon : {std::optional<Registration>(), std::optional(Registration("QE-ONE"))}) {
            const auto answer = balloonLines(*shed.record, balloon, day("2024-03-01")).value();
            QCOMPARE(answer.lines.front().notEntered, 0);
        }
        posted(*shed.record, itsEntryVoided);
        for (const auto& balloon : {std::optional<Registration>(), std::optional(Registration("QE-ONE"))}) {
            const auto answer = balloonLines(*shed.record, balloon, day("2024-03-01")).value();
            QCOMPARE(answer.lines.front().notEntered, 1);
            QCOMPARE(answer.lines.front().standing(), Standing::Unproven);
        }
    }

    void aKitWithAPartThatIsNotInTheRecordMayNotFly() {
        const std::vector<ItemId> asked{ItemId("E1"), ItemId("B1"), ItemId("R1"), ItemId("C1")};
        const auto unknownIn = [&](Record& record, const char* on) {
            const auto answer = checkRigUp(record, asked, day(on), {}).value();
            QTEST_ASSERT(answer.verdict.mayFly == answer.verdict.reasons.empty());
            const auto& reasons = answer.verdict.reasons;
            QTEST_ASSERT(reasons.empty() || reasons.front().kind == RigUpReason::Kind::NotEntered);
            return reasons.empty() ? std::string() : reasons.front().unknown->text();
        };
        const Scratch shed;
        posted(*shed.record, aWholeBalloon);
        posted(*shed.record, gaugeInTheBurner);
        QCOMPARE(unknownIn(*shed.record, "2024-03-01"), std::string());
        posted(*shed.record, gaugeVoided);
        QCOMPARE(unknownIn(*shed.record, "2024-03-01"), std::string("G"));
        QCOMPARE(unknownIn(*shed.record, "2024-01-31"), std::string()); // not in it yet
        const Scratch late;
        posted(*late.record, aWholeBalloon);
        posted(*late.record, enteredLater);
        QCOMPARE(unknownIn(*late.record, "2024-03-01"), std::string("LATE"));
        QCOMPARE(unknownIn(*late.record, "2024-12-01"), std::string());
    }

    void ofTwoStatesOfOneMomentTheOneThatRestrictsHolds() {
        for (const bool outFirst : {true, false}) {
            const Scratch shed;
            posted(*shed.record, aWholeBalloon);
            posted(*shed.record, outFirst ? outAtOnce : inAtOnce);
            posted(*shed.record, outFirst ? inAtOnce : outAtOnce);
            const auto facts = shed.record->facts({{}, {ItemId("C1")}}, day("2024-03-01")).value();
            QVERIFY(facts[0].out && facts[0].out->state == ServiceState::Scrapped);
            QCOMPARE(shed.record->facts({}, day("2024-03-01")).value()[3].out, facts[0].out);
            const auto questions = twoStatesIn(*shed.record);
            QCOMPARE(questions.size(), std::size_t(1));
            QCOMPARE(questions[0].subject, std::string("C1"));
            QCOMPARE(questions[0].stamp.id, EntryId("z-in"));
            QCOMPARE(spoken(questions[0].detail), std::string("scrapped on 2024-03-01"));
        }
    }
};

CROWNRING_TEST(PartsUnknownTest, QCoreApplication)

#include "parts_unknown_test.moc"
