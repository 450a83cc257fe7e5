// SPDX-License-Identifier: GPL-3.0-or-later

/// What the reader refuses of directives, answers and lists of parts.

#include "problem/faults/directives/directive_fault.h"
#include "problem/faults/entry_fault.h"
#include "record/entry_json.h"
#include "test_class.h"

#include <QtTest>

namespace directive_refusal_test {

using namespace crownring;

namespace {

const std::string begun =
    R"({"entry":"directive.issued","on":"2026-05-01","directive":"AD-1","revision":"0","title":"t","issuer":"A","issued_by":"authority","state":"Q","effective":"2026-05-20","source":"s","applies":)";
const std::string answerBegun = R"({"entry":"directive.answered","on":"2026-05-01","directive":"AD-1","revision":"0",)";

void refused(const std::string& line, Fault fault) {
    const auto entry = entryFrom(line);
    QVERIFY(!entry);
    QVERIFY(entry.error().fault == fault);
}

}

}

using namespace directive_refusal_test;

class DirectiveRefusalTest : public QObject {
    Q_OBJECT
private slots:
    void aMandatoryOneSaysByWhen() {
        refused(begun + R"({"kinds":["burner"]}})", DirectiveFault::NoDeadline);
        QVERIFY(entryFrom(begun + R"({"kinds":["burner"]},"force":"recommended"})"));
        QVERIFY(entryFrom(begun + R"({"kinds":["burner"]},"first":{"days":30}})"));
    }
    void itSaysWhichKindsItIsFor() {
        refused(begun + R"({"types":["T"]},"first":{"days":30}})", EntryFault::KeyMissing);
        refused(begun + R"({"kinds":["balloon"]},"first":{"days":30}})", EntryFault::NoKindOfItem);
    }
    void anAnswerIsForOneThing() {
        refused(answerBegun + R"("answer":"done","method":"m"})", DirectiveFault::OfItemOrBalloon);
        refused(answerBegun + R"("answer":"done","method":"m","item":"E1","balloon":"QE-ONE"})",
                DirectiveFault::OfItemOrBalloon);
        refused(answerBegun + R"("answer":"done","method":"m","balloon":"QE-ONE","clock":{"minutes":7}})",
                DirectiveFault::ClockOfBalloon);
    }
    void whatGoesWithTheOtherAnswerIsRefused() {
        refused(answerBegun + R"("answer":"done","method":"m","why":"w","item":"E1"})", DirectiveFault::SaidOfTheOther);
        refused(answerBegun + R"("answer":"not-applicable","why":"w","amoc":"a","item":"E1"})",
                DirectiveFault::SaidOfTheOther);
    }
    void aPartIsInOnePlaceAndNotTooDeep() {
        const std::string listed = R"({"entry":"parts.listed","on":"2026-05-01","item":"R1","parts":[)";
        refused(listed + R"({"part":"valve","serial":"7"},{"part":"valve","serial":"7"}]})", DirectiveFault::PartTwice);
        refused(
            listed +
                R"({"part":"a","parts":[{"part":"b","parts":[{"part":"c","parts":[{"part":"d","parts":[{"part":"e"}]}]}]}]}]})",
            DirectiveFault::PartsTooDeep);
    }
};

CROWNRING_TEST(DirectiveRefusalTest)

#include "directive_refusal_test.moc"
