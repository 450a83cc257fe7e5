// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Bench

// The parts of the work and the lines of the one at hand. The bar below settles what is left of it and goes on.
Item {
    id: pane

    required property InspectionDesk desk
    property bool phone: false

    signal readingsAsked(item: string, line: string)
    signal defectAsked(item: string, line: string, finding: string)
    signal readingsDue(item: string, line: string) // the part that one comes to begins with its readings
    signal finished
    signal directiveAsked(directive: string, revision: string, item: string, about: string)

    // A line is opened, and the keyboard stands on it.
    function openLine(at: int) {
        const group = groups.itemAt(pane.desk.grid.groupOf(at)) as CheckGroupRow;
        if (group !== null)
            group.open(at);
    }

    // The rest of the part, then what wants a look of its own one after the other, then the next part.
    property bool looking: false
    function settleAndGoOn() {
        rest.forceActiveFocus(); // what is being typed is kept first
        const settles = pane.desk.restOpen > 0;
        pane.desk.settleRest();
        pane.looking = settles && pane.desk.nextLook() >= 0;
        if (pane.looking)
            pane.lookOn();
        else
            pane.goOn();
    }
    function goOn() {
        pane.looking = false;
        if (!pane.desk.nextPart())
            return pane.finished();
        const waits = pane.desk.awaited();
        if (waits.length === 2)
            pane.readingsDue(waits[0], waits[1]);
    }
    function lookOn() {
        if (!pane.looking)
            return;
        const at = pane.desk.nextLook();
        const group = at < 0 ? null : groups.itemAt(pane.desk.grid.groupOf(at)) as CheckGroupRow;
        if (group !== null)
            group.look(at);
        else
            pane.goOn();
    }

    readonly property int partAt: pane.desk.partAt // none while another inspection is read
    onPartAtChanged: {
        scroll.contentY = 0;
        pane.looking = false;
    }

    // First for the keyboard, last for the eye.
    Rectangle {
        id: bar
        z: 1
        anchors.bottom: parent.bottom
        anchors.left: lines.left
        anchors.right: parent.right
        height: 60 + (left.visible ? left.implicitHeight + Theme.tight : 0)
        color: Theme.sheet
        visible: pane.desk.loaded && pane.desk.open
        Rule { width: parent.width }
        Label {
            id: left
            objectName: "bench.rest.left"
            x: Theme.wide
            y: Theme.tight
            width: parent.width - 2 * Theme.wide
            visible: text !== ""
            text: pane.desk.restLeft === "" ? "" : qsTr("Left alone: %1").arg(pane.desk.restLeft)
            soft: true
            font.pixelSize: Theme.textSmall
            elide: Text.ElideRight
            maximumLineCount: 2
        }
        Button {
            id: rest
            objectName: "bench.rest"
            anchors.left: parent.left
            anchors.right: parent.right
            anchors.bottom: parent.bottom
            height: 60 - 2 * Theme.snug
            anchors.margins: Theme.snug
            anchors.leftMargin: Theme.wide
            anchors.rightMargin: Theme.wide
            primary: pane.desk.restOpen > 0
            text: pane.desk.restOpen === 0 ? qsTr("Go on ›") : qsTr("Nothing found on %1 of %2 open ›").arg(pane.desk.restOpen).arg(pane.desk.partOpen)
            onClicked: pane.settleAndGoOn()
        }
    }

    PartList {
        id: parts
        width: 280
        height: parent.height
        visible: !pane.phone
        desk: pane.desk
    }
    Rule {
        anchors.left: parts.right
        width: Theme.hair
        height: parent.height
        visible: !pane.phone
    }
    Item {
        id: lines
        x: pane.phone ? 0 : parts.width + Theme.hair
        width: parent.width - x
        height: parent.height - (bar.visible ? bar.height : 0)

        ChoiceField {
            id: strip
            objectName: "bench.part"
            x: Theme.wide
            y: Theme.snug
            width: parent.width - 2 * Theme.wide
            height: visible ? implicitHeight : 0
            visible: pane.phone
            name: qsTr("Part of the work")
            model: pane.desk.parts
            at: pane.partAt
            displayText: qsTr("%1 · %2").arg(pane.desk.partTitle).arg(pane.desk.partDetail)
            onPickedAt: at => pane.desk.partAt = at
        }
        Scroll {
            id: scroll
            anchors.top: strip.visible ? strip.bottom : parent.top
            anchors.bottom: parent.bottom
            width: parent.width
            spacing: 0
            margin: pane.phone ? Theme.gap : Theme.wide
            Heading {
                width: parent.width
                visible: !pane.phone
                bottomPadding: Theme.tight
                text: qsTr("%1 · %2").arg(pane.desk.partTitle).arg(pane.desk.partDetail)
            }
            Label {
                objectName: "bench.untouched"
                width: parent.width
                visible: text !== ""
                bottomPadding: Theme.tight
                text: pane.desk.untouched
                soft: true
                font.pixelSize: Theme.textSmall
            }
            Repeater {
                id: groups
                model: pane.desk.grid
                CheckGroupRow {
                    width: scroll.width - 2 * scroll.margin
                    desk: pane.desk
                    phone: pane.phone
                    onSaid: pane.lookOn()
                    onReadingsAsked: item => pane.readingsAsked(item, line)
                    onPhotographShown: digest => photograph.show(digest)
                    onPhotographAsked: at => picker.ask(at)
                    onDirectiveAsked: (directive, revision, item, about) => pane.directiveAsked(directive, revision, item, about)
                    onDefectAsked: at => {
                        const rows = pane.desk.lines;
                        const row = rows.index(at, 0);
                        pane.defectAsked(String(rows.data(row, CheckLineModel.ItemRole)), line, String(rows.data(row, CheckLineModel.FindingRole)));
                    }
                }
            }
        }
    }
    PhotographSheet { id: photograph }
    PicturePicker {
        id: picker
        onChosen: (at, file) => pane.desk.addPhotograph(at, file)
    }
}
