// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Crownring.Bench

PlaceCase {
    id: test
    name: "Bench"
    subject: page

    BenchPage {
        id: page
        anchors.fill: parent
        onAct: (kind, inspection, defect, item) => test.acted = [kind, inspection, defect, item].join(" ")
        onFindingAsked: (inspection, item, line, finding) => test.acted = ["finding", inspection, item, line, finding].join(" ")
    }
    property string acted: ""

    function initTestCase() {
        soon(() => page.place.ready && page.place.inspections.count > 0);
    }
    function init() {
        test.acted = "";
        page.phone = false;
        page.detailShown = false;
        soon(() => !page.opening.opened);
    }

    function openOne(balloon) {
        page.beginVisit(balloon);
        soon(() => page.opening.opened);
        soon(() => page.opening.visit.canOpen);
        pressNamed("bench.visit.open");
        soon(() => page.detailShown && page.desk.loaded && page.desk.open);
        soon(() => !page.opening.opened);
        soon(() => named("bench.line.0.none").x > 0);
    }

    function test_aBalloonIsOpenedByOneTapMore() {
        const before = page.place.inspections.count;
        openOne("QE-OVA");
        soonIs(page.place.inspections, "count", before + 1);
        verify(page.desk.title.startsWith("QE-OVA"));
        verify(page.desk.linesOpen > 20);
    }

    function test_withoutABalloonNothingCanBeOpened() {
        page.beginVisit("");
        soon(() => page.opening.opened);
        verify(!page.opening.visit.canOpen);
        verify(!named("bench.visit.open").enabled);
        keyClick(Qt.Key_Escape);
        soon(() => !page.opening.opened);
    }

    function test_aBalloonIsFoundByTyping() {
        page.beginVisit("");
        soon(() => page.opening.opened);
        const balloons = named("bench.visit.balloon");
        balloons.forceActiveFocus();
        for (const letter of ["q", "e", "-", "o", "v"])
            keyClick(letter);
        soon(() => balloons.popup.opened);
        soon(() => balloons.textAt(balloons.highlightedIndex).toUpperCase().includes("QE-OV"), balloons.textAt(balloons.highlightedIndex));
        const found = balloons.valueAt(balloons.highlightedIndex);
        keyClick(Qt.Key_Return);
        soon(() => page.opening.visit.balloon === found);
        keyClick(Qt.Key_Escape);
        soon(() => !page.opening.opened);
    }

    function test_returnInTheListShowsAnInspection() {
        const list = named("bench.inspections");
        list.forceActiveFocus();
        keyClick(Qt.Key_Return);
        soon(() => page.detailShown && page.desk.loaded);
        compare(page.desk.inspection, page.place.inspections.valueAt(0));
        soon(() => named("bench.segment.checklist").activeFocus);
    }

    function test_aLineIsSettledTakenBackAndSavedEachTime() {
        openOne("QE-IVY");
        const lines = page.desk.lines;
        const settledAs = row => lines.data(lines.index(row, 0), CheckLineModel.SettledAsRole);
        const before = page.desk.linesOpen;
        pressNamed("bench.line.0.done");
        soon(() => settledAs(0) === 1);
        compare(page.desk.problem, "");
        compare(page.desk.linesOpen, before - 1);
        pressNamed("bench.line.0.done");
        soon(() => settledAs(0) === 0);
        pressNamed("bench.line.0.none");
        pressNamed("bench.line.0.none.fitted"); // what does not apply says why
        soon(() => settledAs(0) === 2);
        soon(() => !page.desk.saving);
        compare(page.desk.problem, "");
    }

    function test_aFindingIsWrittenByKeyboardAlone() {
        openOne("QE-IVY");
        const lines = page.desk.lines;
        const finder = named("bench.line.1.finding");
        finder.forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Return);
        soon(() => named("bench.line.1.text").activeFocus);
        for (const letter of "scuffed")
            keyClick(letter);
        keyClick(Qt.Key_Return);
        soon(() => lines.data(lines.index(1, 0), CheckLineModel.FindingRole) === "scuffed");
        soon(() => finder.activeFocus);
    }

    function test_theRestOfAPartIsSettledAndTheNextShown() {
        openOne("QE-IVY");
        const part = page.desk.partAt;
        const before = page.desk.linesOpen;
        verify(page.desk.restOpen > 0);
        const rest = page.desk.restOpen;
        named("bench.rest").forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Return);
        soon(() => page.desk.linesOpen <= before - rest);
        // Crown ring and load tapes want a look of their own: the keyboard stands on one after the other.
        for (let look = 0; look < 6 && page.desk.partAt === part; ++look) {
            const at = page.desk.nextLook();
            verify(at >= 0);
            soon(() => named("bench.line." + at + ".done").activeFocus);
            keyClick(Qt.Key_Return);
        }
        verify(page.desk.partAt !== part);
        soon(() => !page.desk.saving);
        compare(page.desk.problem, "");
    }

    function test_aHeldLoadIsTakenByATapOnTheMapAndTakenBack() {
        openOne("QE-IVY");
        pressNamed("bench.segment.readings");
        const form = page.readings;
        const at = seriesOf("grab-strength");
        verify(at >= 0);
        form.current = at;
        soon(() => form.held && form.placed);
        const map = named("bench.map");
        wait(50);
        map.forceActiveFocus(Qt.TabFocusReason);
        map.choose(3, 5);
        keyClick(Qt.Key_Return);
        verify(form.question.includes("No test equipment"));
        named("bench.question.keep").clicked();
        soonIs(form.taken, "count", 1);
        pressNamed("bench.takeback");
        soonIs(form.taken, "count", 0);
    }

    function test_aFigureIsEnteredAtAPlaceAndAnImpossibleOneAsks() {
        openOne("QE-IVY");
        pressNamed("bench.segment.readings");
        const form = page.readings;
        const at = seriesOf("air-permeability");
        verify(at >= 0);
        form.current = at;
        wait(50);
        const figure = named("bench.figure");
        const map = named("bench.map");
        map.tapped(2, 4);
        soon(() => figure.activeFocus);
        for (const letter of "12.5")
            keyClick(letter);
        keyClick(Qt.Key_Return);
        verify(form.question.includes("No test equipment")); // asked once
        named("bench.question.keep").clicked();
        soonIs(form.taken, "count", 1);
        compare(figure.text, "");
        soon(() => figure.activeFocus);
        map.tapped(3, 4);
        for (const letter of "99999999")
            keyClick(letter);
        keyClick(Qt.Key_Return);
        verify(form.question !== "");
        soon(() => named("bench.question.mend").activeFocus);
        keyClick(Qt.Key_Space);
        compare(form.question, "");
        compare(figure.text, "99999999");
        soon(() => figure.activeFocus);
        compare(form.taken.count, 1);
    }

    function test_aDefectIsAskedForWithItsInspection() {
        openOne("QE-IVY");
        pressNamed("bench.segment.defects");
        pressNamed("bench.defect.found");
        compare(test.acted, ["defect.found", page.desk.inspection, "", ""].join(" "));
    }

    function test_whatReleasesRestOnIsEnteredFromItsLeaf() {
        pressNamed("bench.leaf.shop");
        for (const act of [["person", "person.entitled"], ["tester", "tester.calibrated"], ["type", "type.described"], ["limit", "limit.stated"], ["line", "checklist.adopted"]]) {
            const button = named("bench.shop." + act[0]);
            button.clicked();
            compare(test.acted, act[1] + "   ");
        }
        pressNamed("bench.leaf.inspections");
        soon(() => findNamed("bench.inspections") !== null);
    }

    function test_nothingIsSignedWhileLinesAreOpen() {
        openOne("QE-IVY");
        pressNamed("bench.segment.release");
        soon(() => page.release.refusals.count > 0);
        verify(!named("bench.sign").enabled);
        verify(page.release.caution.includes("it never declares a balloon airworthy"));
        soon(() => findText(page.release.caution) !== null);
        for (let row = 0; row < page.release.refusals.count; ++row) {
            const refusal = named("bench.refusal." + row);
            if (page.release.wayOfRefusal(row) !== "line")
                continue;
            refusal.clicked();
            compare(page.leaf, 0);
            // The line that the reason is about is opened, and the keyboard stands on it.
            const lines = page.desk.lines;
            for (let at = 0; at < lines.count; ++at) {
                const done = findNamed("bench.line." + at + ".done");
                if (done !== null && done.activeFocus) {
                    compare(lines.data(lines.index(at, 0), CheckLineModel.LineRole), refusal.value);
                    return;
                }
            }
            fail("the keyboard stands on no line");
        }
        fail("no refusal leads to a line");
    }

    function test_aFindingLeadsToADefect() {
        openOne("QE-IVY");
        page.desk.setFinding(1, "scuffed at gore 5");
        soon(() => findNamed("bench.line.1.defect") !== null);
        pressNamed("bench.line.1.defect");
        const lines = page.desk.lines;
        compare(test.acted, ["finding", page.desk.inspection, lines.data(lines.index(1, 0), CheckLineModel.ItemRole), lines.data(lines.index(1, 0), CheckLineModel.LineRole), "scuffed at gore 5"].join(" "));
    }

    function test_abandoningNeedsNoSignatoryAndReturnDoesNotDoIt() {
        openOne("QE-IVY");
        page.showLeaf(3);
        page.release.outcome = 2;
        soon(() => page.release.maySign, "may be abandoned");
        compare(findNamed("bench.signer"), null); // nothing is signed for
        pressNamed("bench.sign");
        soon(() => named("bench.sign.back").activeFocus, "the way back has the keyboard");
        keyClick(Qt.Key_Return); // the default is to go back
        soon(() => findNamed("bench.sign.confirm") === null, "gone");
        verify(page.desk.open);
        wait(500); // a sheet on its way out takes the tap
        pressNamed("bench.sign");
        soon(() => findNamed("bench.sign.confirm") !== null, "asked again");
        pressNamed("bench.sign.confirm");
        soon(() => page.desk.loaded && page.desk.abandoned, "abandoned");
        compare(page.desk.endedAs, 2);
        soon(() => findText("Nothing is released and nothing was signed for. What was written stays in the record.") !== null);
        compare(findText("What was signed"), null);
    }

    function test_aReleaseAfterIncompleteMaintenanceSaysHowFarItReaches() {
        openOne("QE-IVY");
        page.showLeaf(3);
        page.release.outcome = 3;
        soon(() => findNamed("bench.until") !== null && named("bench.until").visible);
        page.release.bounds.until = "31.12.2026";
        page.release.bounds.aloft = "1:00";
        page.release.bounds.flights = "2";
        compare(page.release.bounds.problem, "");
        soon(() => named("bench.bounds").text.includes("2"), "said back");
        page.release.bounds.flights = "often";
        verify(page.release.bounds.problem !== "" && !page.release.maySign);
        page.release.outcome = 0;
        soon(() => findNamed("bench.until") === null || !named("bench.until").visible, "asked of no other end");
    }

    function test_nothingOfOneInspectionStandsUnderAnother() {
        openOne("QE-IVY");
        page.showLeaf(3);
        soon(() => page.release.sections.count > 0 && page.release.refusals.count > 0);
        page.showInspection("OL-2026-017"); // released
        page.showLeaf(3);
        soon(() => page.desk.loaded && page.release.statement !== "");
        compare(page.release.sections.count, 0);
        compare(page.release.refusals.count, 0);
        soon(() => findNamed("bench.sign") === null);
        soon(() => findText("What was signed") !== null);
    }

    function test_aPhoneHasAStripOfParts() {
        page.phone = true;
        openOne("QE-IVY");
        const strip = named("bench.part");
        verify(strip.visible);
        compare(findNamed("bench.parts"), null);
        strip.pickedAt(1);
        compare(page.desk.partAt, 1);
        press(findBy(page, item => item.text === "‹ Back" && item.visible));
        verify(!page.detailShown);
    }

    function seriesOf(quantity) {
        const series = page.readings.series;
        for (let at = 0; at < series.count; ++at)
            if (series.valueAt(at) === quantity)
                return at;
        return -1;
    }
}
