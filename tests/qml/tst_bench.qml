// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Crownring.Screen
import Crownring.Bench

TestCase {
    id: test
    name: "Bench"
    when: windowShown
    width: 1200
    height: 800
    visible: true

    BenchPage {
        id: page
        anchors.fill: parent
        onAct: (kind, inspection, defect, item) => test.acted = [kind, inspection, defect, item].join(" ")
    }
    property string acted: ""

    function initTestCase() {
        tryVerify(() => page.place.ready && page.place.inspections.count > 0);
    }
    function init() {
        test.acted = "";
        page.phone = false;
        page.detailShown = false;
        tryVerify(() => !page.opening.opened);
    }

    function openOne(balloon) {
        page.beginVisit(balloon);
        tryVerify(() => page.opening.opened);
        tryVerify(() => page.opening.visit.canOpen);
        mouseClick(named("bench.visit.open"));
        tryVerify(() => page.detailShown && page.desk.loaded && page.desk.open);
        tryVerify(() => !page.opening.opened);
        tryVerify(() => named("bench.line.0.none").x > 0); // laid out: what is pressed is where it stands
    }

    function test_aBalloonIsOpenedByOneTapMore() {
        const before = page.place.inspections.count;
        openOne("QE-OVA");
        tryCompare(page.place.inspections, "count", before + 1);
        verify(page.desk.title.startsWith("QE-OVA"));
        verify(page.desk.linesOpen > 20);
    }

    function test_withoutABalloonNothingCanBeOpened() {
        page.beginVisit("");
        tryVerify(() => page.opening.opened);
        verify(!page.opening.visit.canOpen);
        verify(!named("bench.visit.open").enabled);
        keyClick(Qt.Key_Escape);
        tryVerify(() => !page.opening.opened);
    }

    function test_returnInTheListShowsAnInspection() {
        const list = named("bench.inspections");
        list.forceActiveFocus();
        keyClick(Qt.Key_Return);
        tryVerify(() => page.detailShown && page.desk.loaded);
        compare(page.desk.inspection, page.place.inspections.valueAt(0));
        verify(named("bench.segment.checklist").activeFocus);
    }

    function test_aLineIsSettledTakenBackAndSavedEachTime() {
        openOne("QE-IVY");
        const lines = page.desk.lines;
        const settledAs = row => lines.data(lines.index(row, 0), CheckLineModel.StateRole);
        const before = page.desk.linesOpen;
        mouseClick(named("bench.line.0.done"));
        tryVerify(() => settledAs(0) === 1);
        compare(page.desk.problem, "");
        compare(page.desk.linesOpen, before - 1);
        mouseClick(named("bench.line.0.done"));
        tryVerify(() => settledAs(0) === 0);
        mouseClick(named("bench.line.0.none"));
        tryVerify(() => settledAs(0) === 2);
        tryVerify(() => !page.desk.saving);
        compare(page.desk.problem, "");
    }

    function test_aFindingIsWrittenByKeyboardAlone() {
        openOne("QE-IVY");
        const lines = page.desk.lines;
        const finder = named("bench.line.1.finding");
        finder.forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Return);
        verify(named("bench.line.1.text").activeFocus);
        for (const letter of "scuffed")
            keyClick(letter);
        keyClick(Qt.Key_Return);
        tryVerify(() => lines.data(lines.index(1, 0), CheckLineModel.FindingRole) === "scuffed");
        verify(finder.activeFocus);
    }

    function test_theRestOfAPartIsSettledAndTheNextShown() {
        openOne("QE-IVY");
        const part = page.desk.part;
        const before = page.desk.linesOpen;
        verify(page.desk.restOpen > 0);
        const rest = page.desk.restOpen;
        named("bench.rest").forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Return);
        verify(page.desk.part !== part);
        tryVerify(() => page.desk.linesOpen <= before - rest + 1 && page.desk.linesOpen < before);
        verify(named("bench.rest").activeFocus);
    }

    function test_aHeldLoadIsTakenByATapOnTheMapAndTakenBack() {
        openOne("QE-IVY");
        mouseClick(named("bench.segment.readings"));
        const form = page.readings;
        const at = seriesOf("grab-strength");
        verify(at !== "");
        form.current = at;
        tryVerify(() => form.held && form.placed);
        const map = named("bench.map");
        wait(50);
        map.forceActiveFocus(Qt.TabFocusReason);
        map.choose(3, 5);
        keyClick(Qt.Key_Return);
        tryCompare(form.taken, "count", 1);
        mouseClick(named("bench.takeback"));
        tryCompare(form.taken, "count", 0);
    }

    function test_aFigureIsEnteredAtAPlaceAndAnImpossibleOneAsks() {
        openOne("QE-IVY");
        mouseClick(named("bench.segment.readings"));
        const form = page.readings;
        const at = seriesOf("air-permeability");
        verify(at !== "");
        form.current = at;
        wait(50);
        const figure = named("bench.figure");
        const map = named("bench.map");
        map.tapped(2, 4);
        verify(figure.activeFocus);
        for (const letter of "12.5")
            keyClick(letter);
        keyClick(Qt.Key_Return);
        tryCompare(form.taken, "count", 1);
        compare(figure.text, "");
        verify(figure.activeFocus);
        map.tapped(3, 4);
        for (const letter of "99999999")
            keyClick(letter);
        keyClick(Qt.Key_Return);
        verify(form.question !== "");
        verify(named("bench.question.mend").activeFocus);
        keyClick(Qt.Key_Space);
        compare(form.question, "");
        compare(figure.text, "99999999");
        verify(figure.activeFocus);
        compare(form.taken.count, 1);
    }

    function test_aDefectIsAskedForWithItsInspection() {
        openOne("QE-IVY");
        mouseClick(named("bench.segment.defects"));
        mouseClick(named("bench.defect.found"));
        compare(test.acted, ["defect.found", page.desk.inspection, "", ""].join(" "));
    }

    function test_nothingIsSignedWhileLinesAreOpen() {
        openOne("QE-IVY");
        mouseClick(named("bench.segment.release"));
        tryVerify(() => page.release.refusals.count > 0);
        verify(!named("bench.sign").enabled);
        verify(page.release.caution.includes("it never declares a balloon airworthy"));
        verify(findText(page, page.release.caution) !== null);
        for (let row = 0; row < page.release.refusals.count; ++row) {
            const refusal = named("bench.refusal." + row);
            if (refusal.line === "")
                continue;
            refusal.clicked();
            compare(page.leaf, 0);
            return;
        }
        fail("no refusal leads to a line");
    }

    function test_nothingOfOneInspectionStandsUnderAnother() {
        openOne("QE-IVY");
        page.showLeaf(3);
        tryVerify(() => page.release.sections.count > 0 && page.release.refusals.count > 0);
        page.showInspection("OL-2026-017"); // released
        page.showLeaf(3);
        tryVerify(() => page.desk.loaded && page.release.statement !== "");
        compare(page.release.sections.count, 0);
        compare(page.release.refusals.count, 0);
        verify(!named("bench.sign").visible);
        verify(findText(page, "What was signed") !== null);
    }

    function test_aPhoneHasAStripOfParts() {
        page.phone = true;
        openOne("QE-IVY");
        const strip = named("bench.part");
        verify(strip.visible);
        verify(!named("bench.parts").visible);
        const second = page.desk.parts.valueAt(1);
        strip.picked(second);
        compare(page.desk.part, second);
        mouseClick(findBy(page, item => item.text === "‹ Back" && item.visible));
        verify(!page.detailShown);
    }

    function seriesOf(quantity) {
        const series = page.readings.series;
        for (let at = 0; at < series.count; ++at)
            if (series.valueAt(at).endsWith("|" + quantity))
                return series.valueAt(at);
        return "";
    }
    function named(name) {
        const found = findBy(page, item => item.objectName === name) ?? findBy(page.Window.window.contentItem, item => item.objectName === name);
        verify(found !== null, name);
        return found;
    }
    function findText(item, text) {
        return findBy(item, at => at instanceof Text && at.visible && at.text === text);
    }
    function findBy(item, fits) {
        if (fits(item))
            return item;
        for (let at = 0; at < item.children.length; ++at) {
            const found = findBy(item.children[at], fits);
            if (found !== null)
                return found;
        }
        return null;
    }
}
