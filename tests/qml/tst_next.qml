// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Crownring.Desk
import Crownring.Next

PlaceCase {
    id: test
    name: "Next"
    subject: page

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
        soon(() => page.place.ready && page.place.list.count > 300);
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
        const button = spoken(calendar.data(calendar.index(bin, 0), HorizonModel.SpokenRole));
        press(button);
        soonIs(page.place.list, "count", total);
        verify(page.place.filtered);
        press(button);
        soon(() => page.place.list.count > total);
    }

    function test_theLaneIsReachedAndUsedByKeyboard() {
        const lane = spoken("Horizon by date");
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
        const rows = spoken("What is due");
        rows.forceActiveFocus();
        compare(rows.currentIndex, 0);
        keyClick(Qt.Key_Down);
        keyClick(Qt.Key_Return);
        const title = String(page.place.list.data(page.place.list.index(1, 0), DueModel.TitleRole));
        soon(() => findText(title) !== null);
        const requirement = String(page.place.list.data(page.place.list.index(1, 0), DueModel.RequirementRole));
        const isDefect = requirement.startsWith("defect/");
        press(spoken(isDefect ? "Rectify the defect …" : "Requirement done …"));
        compare(test.acted, (isDefect ? "defect.cleared " : "requirement.done ") + page.place.list.data(page.place.list.index(1, 0), DueModel.ItemRole) + " " + requirement);
    }

    function test_theCautionStandsUnderTheList() {
        soon(() => findText("Crownring keeps records and computes; it never declares a balloon airworthy. The licensed person, the competent authority and the manufacturer's current instructions decide.") !== null);
    }

    function test_wordsFilter() {
        const field = spoken("Item, serial …");
        field.forceActiveFocus();
        for (const letter of "QE-OVA")
            keyClick(letter);
        soon(() => page.place.words === "QE-OVA");
        soon(() => page.place.list.count > 0 && page.place.list.count < 60);
        keyClick(Qt.Key_Escape);
        soonIs(page.place, "words", "");
    }

    function test_nothingLeftSaysWhatToDo() {
        page.place.words = "nothing has such a name";
        soonIs(page.place.list, "count", 0);
        const clear = spoken("Take off the filters");
        press(clear);
        soon(() => page.place.list.count > 300);
    }

    function test_aGroupOpensByATapAndComesBack() {
        page.place.grouping = 1;
        soon(() => page.place.grouped && page.place.groups.count > 20);
        const groups = spoken("What is due, in groups");
        const first = page.place.groups.data(page.place.groups.index(0, 0), GroupModel.TitleRole);
        press(spoken(page.place.groups.data(page.place.groups.index(0, 0), GroupModel.SpokenRole)));
        soon(() => page.place.within === first && page.place.list.count < 100);
        verify(!groups.visible);
        pressNamed("next.leave");
        soon(() => page.place.within === "" && page.place.list.count > 300);
        pressNamed("next.each");
        soonIs(page.place, "grouping", 0);
    }

    function test_theDetailIsNeverOfARowThatIsHidden() {
        const model = page.place.list;
        const title = String(model.data(model.index(0, 0), DueModel.TitleRole));
        const where = String(model.data(model.index(0, 0), DueModel.WhereRole));
        soon(() => findText(title) !== null);
        page.place.standing = 5;
        soon(() => model.count > 0 && model.data(model.index(0, 0), DueModel.WhereRole) !== where);
        soon(() => page.place.holds(model.data(model.index(0, 0), DueModel.ItemRole), model.data(model.index(0, 0), DueModel.RequirementRole)));
        soon(() => findText(String(model.data(model.index(0, 0), DueModel.WhereRole))) !== null);
        page.place.words = "nothing has such a name";
        soonIs(model, "count", 0);
        soon(() => findSpoken("Requirement done …") === null && findSpoken("Rectify the defect …") === null);
    }

    function test_enterInThePlannedTimeLeavesTheKitAsItIs() {
        page.leaf = 1;
        page.check.balloon = "QE-OVA";
        soon(() => page.check.answered);
        const kit = page.check.kit;
        const field = spoken("Planned time, h:mm or hours");
        field.forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_1);
        keyClick(Qt.Key_Return);
        compare(page.check.kit, kit);
        verify(field.activeFocus);
        keyClick(Qt.Key_Enter);
        compare(page.check.kit, kit);
        page.check.clearKit();
        field.text = "";
        page.check.duration = "";
    }

    function test_rigUpAnswersWithReasons() {
        page.leaf = 1;
        page.check.balloon = "QE-OVA";
        soon(() => page.check.answered);
        soon(() => findText(page.check.headline) !== null);
        compare(page.check.mayFly, page.check.reasons.count === 0);
        page.check.clearKit();
        soon(() => !page.check.answered);
    }
}
