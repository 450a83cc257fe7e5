// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Crownring.Screen
import Crownring.Next

TestCase {
    id: test
    name: "Next"
    when: windowShown
    width: 1200
    height: 800
    visible: true

    NextPage {
        id: page
        anchors.fill: parent
        onBalloonAsked: balloon => test.asked = balloon
        onAct: (kind, balloon, item, requirement) => test.acted = [kind, item, requirement].join(" ")
    }
    property string asked: ""
    property string acted: ""

    function init() {
        page.leaf = 0;
        page.place.clearFilters();
        tryVerify(() => page.place.ready && page.place.list.count > 300);
    }

    function test_aTapOnAWeekLeavesItsRows() {
        const calendar = page.place.calendar;
        let bin = -1;
        let total = 0;
        for (let at = 2; at < calendar.count - 1 && bin < 0; ++at) {
            total = calendar.data(calendar.index(at, 0), HorizonModel.TotalRole);
            if (total > 0)
                bin = at;
        }
        verify(bin >= 2);
        const spoken = calendar.data(calendar.index(bin, 0), HorizonModel.SpokenRole);
        const button = findWithName(page, spoken);
        verify(button !== null);
        mouseClick(button);
        tryCompare(page.place.list, "count", total);
        verify(page.place.filtered);
        mouseClick(button);
        tryVerify(() => page.place.list.count > total);
    }

    function test_theLaneIsReachedAndUsedByKeyboard() {
        const lane = findWithName(page, "Horizon by date");
        verify(lane !== null);
        lane.forceActiveFocus();
        compare(lane.currentIndex, 0);
        keyClick(Qt.Key_Right);
        compare(lane.currentIndex, 1);
        keyClick(Qt.Key_Return);
        compare(page.place.calendarBin, 1);
        keyClick(Qt.Key_Return);
        compare(page.place.calendarBin, -1);
    }

    function test_returnOnARowShowsWhatIsBehindIt() {
        const rows = findWithName(page, "What is due");
        rows.forceActiveFocus();
        compare(rows.currentIndex, 0);
        keyClick(Qt.Key_Down);
        keyClick(Qt.Key_Return);
        const title = String(page.place.list.data(page.place.list.index(1, 0), DueModel.TitleRole));
        tryVerify(() => findText(page, title) !== null);
        const done = findWithName(page, "Requirement done …");
        mouseClick(done);
        compare(test.acted, "requirement.done " + page.place.list.data(page.place.list.index(1, 0), DueModel.ItemRole) + " "
                + page.place.list.data(page.place.list.index(1, 0), DueModel.RequirementRole));
    }

    function test_theCautionStandsUnderTheList() {
        verify(findText(page, "Crownring keeps records and computes; it never declares a balloon airworthy. The licensed person, the competent authority and the manufacturer's current instructions decide.") !== null);
    }

    function test_wordsFilter() {
        const field = findWithName(page, "Item, serial …");
        field.forceActiveFocus();
        for (const letter of "QE-OVA")
            keyClick(letter);
        tryVerify(() => page.place.words === "QE-OVA");
        tryVerify(() => page.place.list.count > 0 && page.place.list.count < 60);
        keyClick(Qt.Key_Escape);
        tryCompare(page.place, "words", "");
    }

    function test_nothingLeftSaysWhatToDo() {
        page.place.words = "nothing has such a name";
        tryCompare(page.place.list, "count", 0);
        const clear = findWithName(page, "Clear the filters");
        verify(clear !== null && clear.visible);
        mouseClick(clear);
        tryVerify(() => page.place.list.count > 300);
    }

    function test_rigUpAnswersWithReasons() {
        page.leaf = 1;
        page.check.balloon = "QE-OVA";
        tryVerify(() => page.check.answered);
        verify(findText(page, page.check.headline) !== null);
        compare(page.check.mayFly, page.check.reasons.count === 0);
        page.check.clearKit();
        tryVerify(() => !page.check.answered);
    }

    function findWithName(item, name) {
        if (item.Accessible && item.visible && item.Accessible.name === name)
            return item;
        return walk(item, child => findWithName(child, name));
    }
    function findText(item, text) {
        if (item instanceof Text && item.visible && item.text === text)
            return item;
        return walk(item, child => findText(child, text));
    }
    function walk(item, look) {
        for (let at = 0; at < item.children.length; ++at) {
            const found = look(item.children[at]);
            if (found !== null)
                return found;
        }
        return null;
    }
}
