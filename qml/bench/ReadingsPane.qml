// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Window
import Crownring.Theme
import Crownring.Parts
import Crownring.Envelope
import Crownring.Bench

// Readings of one quantity on one item. A held load is taken by tapping where it held; a figure is typed, and after each
// one the next place that is asked for is chosen.
Item {
    id: pane

    required property ReadingDesk reader
    property bool phone: false
    readonly property bool wide: !pane.phone && pane.width >= 680
    readonly property bool atWork: pane.reader.desk !== null && pane.reader.desk.open
    property bool changing: false // who writes, and with what, where these stand folded
    property bool following: false // a reading was handed over: the keyboard goes on to what is read next
    readonly property alias after: after
    readonly property bool mapShown: pane.reader.placed && pane.reader.current >= 0

    // The place for the next figure; a held load waits for the tap.
    function goOn() {
        if (!pane.mapShown || !pane.atWork)
            return;
        const before = [map.chosenGore, map.chosenRow];
        if (!map.chooseNextAsked())
            return;
        if (before[0] === map.chosenGore && before[1] === map.chosenRow)
            map.choose(0, 0); // it was the last one
        else if (!pane.reader.held)
            pane.reader.tap(map.chosenGore, map.chosenRow);
    }
    function begin() {
        map.choose(0, 0);
        pane.goOn();
        if (pane.following && pane.visible && pane.atWork && !(pane.reader.held && pane.reader.placed))
            form.takeFocus();
        pane.following = false;
    }
    // The keyboard goes to what is read.
    function lead() {
        pane.following = true;
        beginning.restart();
    }
    // To the test equipment, where that is missing.
    function showEquipment() {
        pane.changing = true;
        conditions.takeTester();
    }
    // Where the series at hand has enough by now, the next one that asks.
    function skip() {
        if (form.next >= 0)
            pane.reader.current = form.next;
    }

    readonly property string current: pane.reader.current
    readonly property bool held: pane.reader.held
    onCurrentChanged: beginning.restart()
    onHeldChanged: beginning.restart()

    // Equipment that was chosen, and not by going to another series: back to the figure.
    readonly property string equipment: pane.reader.tester
    onEquipmentChanged: {
        if (pane.atWork && pane.equipment !== "" && pane.Window.activeFocusItem instanceof ChoiceField)
            form.takeFocus();
    }

    // After the map has taken in the panels of the series.
    Timer {
        id: beginning
        interval: 0
        onTriggered: pane.begin()
    }

    Connections {
        target: pane.reader
        function onSaved() {
            pane.following = true;
            form.clear();
            pane.goOn();
        }
    }
    AfterReading {
        id: after
        reader: pane.reader
        onTookOnOthers: skipping.restart()
    }
    // After the record has answered.
    Timer {
        id: skipping
        interval: 50
        onTriggered: {
            if (pane.reader.desk.saving)
                return skipping.restart();
            pane.following = true;
            pane.skip();
        }
    }
    // What is handed over with Control held is the same on the others.
    Keys.onReturnPressed: event => {
        if ((event.modifiers & Qt.ControlModifier) && pane.reader.desk.saving)
            after.takeOnAll();
    }

    EmptyPlace {
        anchors.fill: parent
        visible: pane.reader.series.count === 0
        title: qsTr("Nothing is to be read")
        text: qsTr("No line of this checklist asks for a reading.")
        shape: LineSign.Bench
    }
    Scroll {
        id: scroll
        width: pane.wide && pane.mapShown ? 372 : parent.width
        height: parent.height
        visible: pane.reader.series.count > 0
        margin: pane.phone ? Theme.gap : Theme.wide
        spacing: Theme.gap

        ReadingForm {
            id: form
            width: Math.min(parent.width, 560)
            reader: pane.reader
            atWork: pane.atWork
            terse: pane.phone
            onPlaceAsked: map.forceActiveFocus(Qt.TabFocusReason)
            onEquipmentAsked: pane.showEquipment()
        }
        Button {
            objectName: "bench.held.all"
            visible: pane.atWork && after.alike > 0
            text: qsTr("It held on all %1").arg(after.alike)
            Accessible.name: qsTr("It held on all %1: %2").arg(after.alike).arg(after.alikeItems)
            onClicked: {
                after.takeOnAll();
                pane.reader.tap(0, 0);
            }
        }
        Label {
            width: Math.min(parent.width, 560)
            visible: pane.atWork && text !== ""
            text: after.alikeItems
            soft: true
            font.pixelSize: Theme.textSmall
        }
        Button {
            objectName: "bench.same"
            visible: pane.atWork && after.others > 0
            text: qsTr("%1 on the other %2 too (Ctrl+Enter)").arg(after.latest).arg(after.others)
            onClicked: after.takeOnOthers()
        }
        Item {
            width: Math.min(parent.width, 560)
            height: Theme.touch
            visible: pane.reader.taken.count > 0
            Label {
                anchors.left: parent.left
                anchors.right: back.left
                anchors.verticalCenter: parent.verticalCenter
                text: qsTr("Taken: %1").arg(pane.reader.taken.count)
                font.bold: true
            }
            Button {
                id: back
                objectName: "bench.takeback"
                anchors.right: parent.right
                visible: pane.atWork
                text: qsTr("Take back the last")
                onClicked: pane.reader.takeBack()
            }
        }
        CheckLine {
            objectName: "bench.settling"
            width: Math.min(parent.width, 560)
            visible: pane.atWork
            text: qsTr("A test is done with its last reading")
            checked: after.settling
            onToggled: after.settling = checked
        }
        Item {
            width: Math.min(parent.width, 560)
            height: Math.max(Theme.touch, terms.implicitHeight)
            visible: pane.atWork && !pane.wide
            Label {
                id: terms
                objectName: "bench.terms"
                width: change.x - Theme.snug
                anchors.verticalCenter: parent.verticalCenter
                text: pane.reader.terms
                font.pixelSize: Theme.textSmall
            }
            Button {
                id: change
                objectName: "bench.terms.change"
                anchors.right: parent.right
                anchors.verticalCenter: parent.verticalCenter
                text: pane.changing ? qsTr("Fold") : qsTr("Change …")
                onClicked: pane.changing = !pane.changing
            }
        }
        ReadingConditions {
            id: conditions
            width: Math.min(parent.width, 560)
            visible: pane.atWork && (pane.wide || pane.changing)
            reader: pane.reader
        }
        Item {
            id: inside
            width: parent.width
            height: Math.max(240, scroll.height - form.height - 3 * Theme.gap) // all of it below the form
            visible: pane.mapShown && !pane.wide
        }
        LimitText {
            width: Math.min(parent.width, 560)
            visible: pane.phone
            reader: pane.reader
        }
        Button {
            objectName: "bench.signs"
            visible: pane.mapShown && pane.wide
            text: map.legendShown ? qsTr("Hide the signs of the map") : qsTr("What the signs of the map mean")
            onClicked: map.legendShown = !map.legendShown
        }
        Label {
            objectName: "bench.notasked"
            width: Math.min(parent.width, 560)
            visible: text !== ""
            text: pane.reader.notAsked
            color: Theme.ember
            font.pixelSize: Theme.textSmall
        }
        TakenList {
            width: Math.min(parent.width, 560)
            reader: pane.reader
        }
    }
    Rule {
        anchors.left: scroll.right
        width: Theme.hair
        height: parent.height
        visible: beside.visible
    }
    Item {
        id: beside
        anchors.left: scroll.right
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.bottom: parent.bottom
        anchors.margins: Theme.gap
        visible: pane.mapShown && pane.wide
    }
    EnvelopeMap {
        id: map
        objectName: "bench.map"
        parent: pane.wide ? beside : inside
        anchors.fill: parent
        visible: pane.mapShown
        phone: !pane.wide
        legendShown: false
        panels: pane.reader.panels
        gores: pane.reader.gores
        rows: pane.reader.rows
        onTapped: (gore, row) => {
            if (!pane.atWork)
                return;
            pane.reader.tap(gore, row);
            if (!pane.reader.held)
                form.takeFocus();
        }
    }
}
