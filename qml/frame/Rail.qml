// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk

// The places at the left of a desk.
Rectangle {
    id: rail

    property int place: 0

    signal chosen(place: int)

    width: Theme.rail
    color: Theme.sheet
    Accessible.role: Accessible.PageTabList
    Accessible.name: qsTr("Places")

    Column {
        y: Theme.gap
        width: parent.width
        spacing: Theme.snug
        PlaceButton {
            text: qsTr("Next")
            shape: LineSign.Next
            here: rail.place === 0
            onClicked: rail.chosen(0)
        }
        PlaceButton {
            text: qsTr("Balloons")
            shape: LineSign.Balloons
            here: rail.place === 1
            onClicked: rail.chosen(1)
        }
        PlaceButton {
            text: qsTr("Bench")
            shape: LineSign.Bench
            here: rail.place === 2
            onClicked: rail.chosen(2)
        }
        PlaceButton {
            text: qsTr("Rules")
            shape: LineSign.Rules
            here: rail.place === 3
            onClicked: rail.chosen(3)
        }
        PlaceButton {
            text: qsTr("Record")
            shape: LineSign.Record
            here: rail.place === 4
            onClicked: rail.chosen(4)
        }
    }
    IconButton {
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Theme.gap
        name: Habits.dark ? qsTr("Light tones") : qsTr("Dark tones")
        shape: Habits.dark ? LineSign.Sun : LineSign.Moon
        onClicked: Habits.dark = !Habits.dark
    }
    Rule {
        anchors.right: parent.right
        height: parent.height
        width: Theme.hair
    }
}
