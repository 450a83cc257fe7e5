// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Crownring.Envelope
import Crownring.Samples

PlaceCase {
    id: test
    name: "EnvelopeMap"
    width: 900
    height: 500
    subject: map

    SamplePanels { id: sample }
    EnvelopeMap {
        id: map
        width: 900
        height: 500
        panels: sample
        gores: 24
        rows: 14
        onTapped: (gore, row) => test.heard.push(gore + "/" + row)
    }
    property var heard: []

    function init() {
        test.heard = [];
        map.gores = 24;
        map.phone = false;
        map.forecast = false;
        map.lots = [];
        map.width = 900;
        map.height = 500;
        map.choose(0, 0);
    }
    function field() {
        return findBy(map, item => item.chosenArea !== undefined);
    }
    function view() {
        return findBy(map, item => item.contentX !== undefined && item.contentItem !== undefined && item.contentWidth > 100 && findBy(item, inner => inner === field()) !== null);
    }
    function middleOf(gore, row) {
        const before = [map.chosenGore, map.chosenRow];
        map.choose(gore, row);
        const area = field().chosenArea;
        const middle = Qt.point(area.x + area.width / 2, area.y + area.height / 2); // `area` follows what is chosen
        map.choose(before[0], before[1]);
        return middle;
    }

    function test_aTapChoosesThePanelUnderIt() {
        const at = middleOf(3, 12);
        mouseClick(field(), at.x, at.y);
        compare(test.heard, ["3/12"]);
        compare(map.chosenGore, 3);
        compare(map.chosenRow, 12);
        compare(map.chosenText, "gore 3, row 12: not read");
        soon(() => findText(map.chosenText) !== null);
    }
    function test_twoQuickTapsAreTwoTaps() {
        const at = middleOf(5, 10);
        mouseDoubleClickSequence(field(), at.x, at.y);
        compare(test.heard, ["5/10", "5/10"]);
    }
    function test_aPressThatIsReleasedElsewhereIsNoTap() {
        const from = middleOf(3, 12);
        const to = middleOf(6, 12);
        mousePress(field(), from.x, from.y);
        mouseMove(field(), to.x, to.y);
        mouseRelease(field(), to.x, to.y);
        compare(test.heard, []);
    }
    function test_theKeyboardAloneReachesEveryPanel() {
        field().focus = false;
        field().forceActiveFocus(Qt.TabFocusReason);
        compare(map.chosenText, "gore 15, row 14: not read, a reading is asked for"); // the first that the plan asks for
        keyClick(Qt.Key_Right);
        keyClick(Qt.Key_Down);
        compare(map.chosenGore, 16);
        compare(map.chosenRow, 13);
        keyClick(Qt.Key_Return);
        keyClick(Qt.Key_Space);
        compare(test.heard, ["16/13", "16/13"]);
    }
    function test_aScreenReaderHearsThePanel() {
        map.choose(1, 14);
        compare(field().Accessible.name, "gore 1, row 14: held at 133 N");
    }
    function test_onADeskItFitsAndOnAPhonePanelsAreWideEnoughToHit() {
        verify(view().contentWidth <= view().width, view().contentWidth + " in " + view().width);
        verify(view().contentHeight <= view().height);
        verify(field().panelWidth >= 28 && field().panelHeight >= 28);
        map.phone = true;
        map.width = 360;
        map.height = 420;
        compare(field().panelWidth, 44);
        compare(field().panelHeight, 44);
        verify(view().contentWidth > view().width);
    }
    function test_theChosenPanelIsScrolledIntoView() {
        map.phone = true;
        map.width = 360;
        map.height = 420;
        for (const panel of [[24, 1], [1, 14], [12, 7], [24, 14]]) {
            map.choose(panel[0], panel[1]);
            const area = field().chosenArea;
            const corner = field().mapToItem(view(), area.x, area.y);
            verify(corner.x >= 0 && corner.x + area.width <= view().width, panel + " at " + corner);
            verify(corner.y >= 0 && corner.y + area.height <= view().height, panel + " at " + corner);
        }
    }
    function test_aDragScrollsAndIsNoTap() {
        map.phone = true;
        map.width = 360;
        map.height = 420;
        map.choose(1, 14);
        map.choose(0, 0);
        const flick = view();
        mousePress(flick, 250, 150);
        for (let x = 250; x >= 60; x -= 10)
            mouseMove(flick, x, 150, 10);
        mouseRelease(flick, 60, 150);
        compare(test.heard, []);
        verify(flick.contentX > 50, flick.contentX);
    }
    function test_onAPhoneTheSignsAreABehindAButton() {
        map.phone = true;
        map.width = 360;
        map.height = 420;
        map.legendShown = false;
        verify(findText("held: at least this much") === null);
        press(spoken("What the signs mean"));
        soon(() => findText("held: at least this much") !== null);
        press(spoken("Show the map"));
        verify(findText("held: at least this much") === null);
        map.legendShown = Qt.binding(() => !map.phone);
    }
    function test_aForecastHasSignsOfItsOwn() {
        verify(findText("expected beyond its limit") === null);
        map.forecast = true;
        soon(() => findText("expected beyond its limit") !== null);
        verify(findText("fails its limit") === null);
        verify(findText("held: at least this much") === null);
        verify(findText("dots: readings taken there") !== null);
    }
    function test_eachLotStandsBelowTheSignsWithItsTexture() {
        verify(findText("lot A-17") === null);
        map.lots = ["A-17", "B-2"];
        soon(() => findText("lot A-17") !== null && findText("lot B-2") !== null);
        const signs = ["lot A-17", "lot B-2"].map(name => findBy(findText(name).parent, item => item.lot !== undefined && item.tones !== undefined));
        compare(signs.map(sign => sign.lot), [1, 2]);
        soon(() => findText("lot A-17").mapToItem(map, 0, 0).y > findText("dots: earlier readings").mapToItem(map, 0, 0).y);
        map.lots = [];
        soon(() => findText("lot A-17") === null);
    }
    function test_withoutGoresItSaysWhatIsMissing() {
        map.gores = 0;
        verify(!field().visible);
        verify(findBy(map, item => item instanceof Text && item.visible && item.text.startsWith("The map needs to know")) !== null);
    }
}
