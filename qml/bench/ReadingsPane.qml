// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
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
    }

    readonly property string current: pane.reader.current
    readonly property bool held: pane.reader.held
    onCurrentChanged: beginning.restart()
    onHeldChanged: beginning.restart()

    // A reading went to the record; what it asks for next may be of another series.
    property bool following: false

    // After the map has taken in the panels of the series.
    Timer {
        id: beginning
        interval: 0
        onTriggered: {
            pane.begin();
            if (pane.following)
                form.takeFocus();
            pane.following = false;
        }
    }

    Connections {
        target: pane.reader
        function onSaved() {
            pane.following = form.typed();
            form.clear();
            pane.goOn();
        }
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
            atWork: pane.atWork
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
