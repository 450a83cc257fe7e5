// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Crownring.Desk
import Crownring.Balloons

PlaceCase {
    id: test
    name: "Balloons"
    subject: page

    BalloonsPage {
        id: page
        anchors.fill: parent
        onAct: (kind, balloon, item) => test.acted = [kind, balloon, item].join("|")
        onDueAsked: (item, requirement) => test.due = item + "|" + requirement
    }
    property string acted: ""
    property string due: ""

    function test_theRegisterOpensAPage() {
        soonIs(page.place.balloons, "count", 40);
        page.showBalloon("QE-OVA");
        verify(page.subject.found);
        verify(page.subject.items.count > 0);
        soon(() => page.subject.history.count > 10);
    }
    function test_aPhoneShowsOneAtATime() {
        page.phone = true;
        page.width = 360;
        page.showBalloon("QE-OVA");
        wait(50);
        page.phone = false;
    }
    function test_anItemOnAnotherDay() {
        page.showItem("BRN-302");
        verify(page.subject.found);
        Day.ask("2020-01-01");
        soon(() => !page.subject.found);
        Day.askToday();
        soon(() => page.subject.found);
    }
    function test_anItemIsShownAfterTheFabricOfTheFleet() {
        page.showLots();
        page.showItem("BRN-302");
        verify(page.leaf !== 2); // whose page would stand under the item's name
        page.showBalloon("QE-OVA");
        compare(page.leaf, 0);
    }
    function test_mineLeavesTheOthersOut() {
        soonIs(page.place.balloons, "count", 40);
        Habits.setMine("QE-OVA", true);
        Habits.mineOnly = true;
        soonIs(page.place.balloons, "count", 1);
        Habits.setMine("QE-OVA", false);
        soonIs(page.place.balloons, "count", 40);
        Habits.mineOnly = false;
    }
}
