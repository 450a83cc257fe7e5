// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Events

// Reports that may be owed, with their clocks, and that a balloon burns more than it did; nothing where there is neither.
Column {
    id: notes

    required property EventDesk desk
    property bool folded: true // many are a line until somebody asks

    signal notifiedAsked(given: var, about: string)
    signal fuelAsked

    readonly property bool wanted: notes.desk.clocks.count > 0 || notes.desk.fuel !== ""

    visible: notes.wanted
    spacing: Theme.hair

    Banner {
        objectName: "events.summary"
        width: parent.width
        visible: notes.desk.clocks.count > 0
        text: notes.desk.summary
        action: notes.folded ? qsTr("Show them") : qsTr("Fold")
        onActed: notes.folded = !notes.folded
    }
    Repeater {
        model: notes.folded ? null : notes.desk.clocks
        Rectangle {
            id: clock
            required property int index
            required property string label
            required property string detail
            objectName: "events.clock." + clock.index
            width: notes.width
            height: words.implicitHeight + 2 * Theme.snug
            color: Theme.paper
            Column {
                id: words
                x: Theme.broad
                y: Theme.snug
                width: parent.width - 2 * Theme.broad
                spacing: Theme.tight
                Label {
                    width: parent.width
                    text: clock.label
                    font.bold: true
                }
                Label {
                    width: parent.width
                    text: clock.detail
                    soft: true
                    font.pixelSize: Theme.textSmall
                }
                Button {
                    objectName: "events.notified." + clock.index
                    text: qsTr("It was reported …")
                    Accessible.name: qsTr("Enter that it was reported: %1").arg(clock.label)
                    onClicked: notes.notifiedAsked(notes.desk.givenFor(clock.index), clock.label)
                }
            }
            Rule {
                anchors.bottom: parent.bottom
                width: parent.width
            }
        }
    }
    Banner {
        objectName: "events.fuel"
        width: parent.width
        visible: notes.desk.fuel !== ""
        text: notes.desk.fuel
        action: qsTr("Report it …")
        onActed: notes.fuelAsked()
    }
}
