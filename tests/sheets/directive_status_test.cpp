// SPDX-License-Identifier: GPL-3.0-or-later

/// The status list of a balloon says of each directive what 14 CFR 91.417(a)(2)(v) asks (gist read): number, revision
/// with its date, method of compliance, and where it recurs when it is due next.

#include "paper/document_text.h"
#include "said.h"
#include "sheets/directive_status.h"
#include "test_class.h"

#include <QtTest>

namespace directive_status_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

DirectiveStatusLine line() {
    DirectiveStatusLine made;
    made.directive = DirectiveId("AD-1");
    made.revision = "2";
    made.title = "Look at the valve";
    made.issuer = "Authority of Q";
    made.effective = CivilDate::parse("2025-03-01").value();
    made.item = ItemId("R1");
    made.standing = "clear";
    made.method = "paragraph 1";
    made.on = CivilDate::parse("2025-03-10").value();
    made.hours = Minutes(24750);
    made.next = CivilDate::parse("2026-03-10").value();
    return made;
}

std::string paperOf(const DirectiveStatusLine& only) {
    return paper::toText(
        directiveStatus(Registration("QE-ONE"), CivilDate::parse("2025-04-01").value(), {only}, english), english, 400);
}

bool says(const std::string& paper, const char* text) { return paper.find(text) != std::string::npos; }

}

class DirectiveStatusTest : public QObject {
    Q_OBJECT
private slots:
    void itHasWhatTheRuleAsks() {
        const auto paper = paperOf(line());
        for (const auto* text : {"QE-ONE", "AD-1", "revision 2", "Authority of Q", "R1", "paragraph 1", "412:30"})
            QVERIFY2(says(paper, text), (std::string(text) + " in " + paper).c_str());
        for (const auto* date : {"2025-03-01", "2025-03-10", "2026-03-10"})
            QVERIFY2(says(paper, spoken(CivilDate::parse(date).value()).c_str()), date);
    }
    void whatIsOverdueStandsOut() {
        auto overdue = line();
        overdue.standing = "lapsed";
        QVERIFY(says(paperOf(overdue), "OVERDUE"));
        QVERIFY(!says(paperOf(line()), "OVERDUE"));
        overdue.atOnce = true; // nothing was flown since it took effect
        QVERIFY(says(paperOf(overdue), "BEFORE THE NEXT FLIGHT") && !says(paperOf(overdue), "OVERDUE"));
    }
    void whatIsNotKnownIsNotCalledNotApplicable() {
        auto unknown = line();
        unknown.standing = "unproven";
        unknown.why = "no serial number";
        QVERIFY(says(paperOf(unknown), "Not shown: no serial"));
        QVERIFY(!says(paperOf(unknown), "Not applicable"));
    }
    void otherMeansNameTheirDocument() {
        auto other = line();
        other.by = "AMOC 77";
        QVERIFY(says(paperOf(other), "AMOC 77"));
    }
};

CROWNRING_TEST(DirectiveStatusTest)

}

#include "directive_status_test.moc"
