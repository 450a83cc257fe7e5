// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Dialogs
import Crownring.Theme
import Crownring.Lists
import Crownring.Parts
import Crownring.Bench

// The parts of the work and the lines of the one at hand. The bar below settles what is left of it and goes on.
Item {
    id: pane

    required property InspectionDesk desk
    property bool phone: false

    signal readingsAsked(item: string, line: string)
    signal finished

    readonly property string detailOfPart: {
        const parts = pane.desk.parts;
        return pane.partAt < 0 ? "" : String(parts.data(parts.index(pane.partAt, 0), ChoiceModel.DetailRole) ?? "");
    }

    function settleAndGoOn() {
        rest.forceActiveFocus(); // what is being typed is kept first
        pane.desk.settleRest();
        if (!pane.desk.nextPart())
            pane.finished();
    }

    readonly property int partAt: pane.desk.partAt // none while another inspection is read
    onPartAtChanged: scroll.contentY = 0

    // First for the keyboard, last for the eye.
    Rectangle {
        id: bar
        z: 1
        anchors.bottom: parent.bottom
        anchors.left: lines.left
        anchors.right: parent.right
        height: 60
        color: Theme.sheet
        visible: pane.desk.loaded && pane.desk.open
        Rule { width: parent.width }
        Button {
            id: rest
            objectName: "bench.rest"
            anchors.fill: parent
            anchors.margins: Theme.snug
            anchors.leftMargin: Theme.wide
            anchors.rightMargin: Theme.wide
            primary: pane.desk.restOpen > 0
            text: pane.desk.restOpen === 0 ? qsTr("Go on ›") : pane.desk.restOpen === pane.desk.lines.count
                ? (pane.desk.restOpen === 1 ? qsTr("Nothing found on it ›") : qsTr("Nothing found on all %1 ›").arg(pane.desk.restOpen)) : qsTr("Nothing found on the other %1 ›").arg(pane.desk.restOpen)
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
            displayText: qsTr("%1 · %2").arg(pane.desk.partTitle).arg(pane.detailOfPart)
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
                text: qsTr("%1 · %2").arg(pane.desk.partTitle).arg(pane.detailOfPart)
            }
            Repeater {
                model: pane.desk.lines
                CheckLineRow {
                    width: scroll.width - 2 * scroll.margin
                    desk: pane.desk
                    onReadingsAsked: pane.readingsAsked(item, line)
                    onPhotographShown: digest => photograph.show(digest)
                    onPhotographAsked: {
                        chooser.row = index;
                        chooser.open();
                    }
                }
            }
        }
    }
    PhotographSheet { id: photograph }
    FileDialog {
        id: chooser
        property int row: -1
        title: qsTr("Choose a photograph")
        nameFilters: [qsTr("Pictures (*.jpg *.jpeg *.png)"), qsTr("All files (*)")]
        onAccepted: pane.desk.addPhotograph(chooser.row, selectedFile)
    }
}
