// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Crownring.Envelope
import Crownring.Balloons

PlaceCase {
    id: test
    name: "Fabric"
    subject: page

    BalloonsPage {
        id: page
        width: 1200
        height: 2000
        onReadingAsked: (item, given) => test.asked = [item, given.quantity, given.gore, given.row].join("|")
        onAct: (kind, balloon, item) => test.acted = [kind, balloon, item].join("|")
    }
    property string asked: ""
    property string acted: ""

    function test_fromTheBalloonToTheForecastOfItsEnvelope() {
        soonIs(page.place.balloons, "count", 40);
        page.showBalloon("QE-MIST");
        pressNamed("subject.fabric");

        // The answers come from another thread; the readings are there before.
        const map = named("fabric.map");
        verify(map.panels.count > 0);
        const slider = named("fabric.ahead");
        verify(slider.visible);
        verify(findNamed("fabric.answers").children.length > 5);

        // Time goes on by key, and the map tells what is expected.
        const before = map.panels.data(map.panels.index(0, 0), PanelModel.TextRole);
        slider.forceActiveFocus();
        keyClick(Qt.Key_PageUp);
        soon(() => findBy(page, item => item instanceof Text && item.visible && item.text.startsWith("What is expected in 25 h")) !== null);
        verify(map.forecast);
        verify(map.panels.data(map.panels.index(0, 0), PanelModel.TextRole) !== before);
        keyClick(Qt.Key_PageDown);
        soon(() => findText("What was read, the latest at each place") !== null);
        verify(!map.forecast);

        // A panel is chosen, and a reading is entered there.
        const enter = named("fabric.enter");
        verify(!enter.enabled);
        map.choose(3, 18);
        soon(() => enter.enabled);
        enter.clicked();
        compare(test.asked, "ENV-1009|grab-strength|3|18");

        pressNamed("fabric.leaf.chart");
        named("ageing.picture");
        named("fabric.lot").clicked();
        compare(test.acted, "fabric.stated||ENV-1009");
        pressNamed("fabric.leaf.table");
        soon(() => findNamed("fabric.map") === null);
    }
}
