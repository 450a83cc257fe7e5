// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts

// The places at the bottom of a phone.
Rectangle {
    id: bar

    property int place: 0

    signal chosen(place: int)

    height: Theme.bar
    color: Theme.sheet
    Accessible.role: Accessible.PageTabList
    Accessible.name: qsTr("Places")

    Rule { width: parent.width }
    Row {
        anchors.fill: parent
        PlaceButton {
            width: bar.width / 5
            height: bar.height
            below: true
            text: qsTr("Next")
            shape: LineSign.Next
            here: bar.place === 0
            onClicked: bar.chosen(0)
        }
        PlaceButton {
            width: bar.width / 5
            height: bar.height
            below: true
            text: qsTr("Balloons")
            shape: LineSign.Balloons
            here: bar.place === 1
            onClicked: bar.chosen(1)
        }
        PlaceButton {
            width: bar.width / 5
            height: bar.height
            below: true
            text: qsTr("Bench")
            shape: LineSign.Bench
            here: bar.place === 2
            onClicked: bar.chosen(2)
        }
        PlaceButton {
            width: bar.width / 5
            height: bar.height
            below: true
            text: qsTr("Rules")
            shape: LineSign.Rules
            here: bar.place === 3
            onClicked: bar.chosen(3)
        }
        PlaceButton {
            width: bar.width / 5
            height: bar.height
            below: true
            text: qsTr("Record")
            shape: LineSign.Record
            here: bar.place === 4
            onClicked: bar.chosen(4)
        }
    }
}
