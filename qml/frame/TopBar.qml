// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk

// The name of the place, the search and the day that is asked.
Item {
    id: bar

    property bool phone: false
    property string title: ""

    signal searchAsked
    signal dayAsked

    implicitHeight: 56

    Heading {
        anchors.left: parent.left
        anchors.leftMargin: Theme.wide
        anchors.right: buttons.left
        anchors.verticalCenter: parent.verticalCenter
        text: bar.title
        font.pixelSize: bar.phone ? Theme.textTitle : Theme.textDisplay
        elide: Text.ElideRight
        wrapMode: Text.NoWrap
    }
    Row {
        id: buttons
        anchors.right: parent.right
        anchors.rightMargin: bar.phone ? Theme.gap : Theme.wide
        anchors.verticalCenter: parent.verticalCenter
        spacing: bar.phone ? 0 : Theme.snug
        IconButton {
            visible: bar.phone
            name: Habits.dark ? qsTr("Light tones") : qsTr("Dark tones")
            shape: Habits.dark ? LineSign.Sun : LineSign.Moon
            onClicked: Habits.dark = !Habits.dark
        }
        IconButton {
            visible: bar.phone
            name: qsTr("Search")
            shape: LineSign.Glass
            onClicked: bar.searchAsked()
        }
        Button {
            visible: !bar.phone
            text: qsTr("Search  Ctrl+K")
            Accessible.name: qsTr("Search, Control K")
            onClicked: bar.searchAsked()
        }
        Button {
            text: bar.phone ? Day.asked : Day.isToday ? qsTr("Today, %1").arg(Day.asked) : Day.asked
            Accessible.name: qsTr("On which day? Now %1").arg(Day.asked)
            onClicked: bar.dayAsked()
        }
    }
    Rule {
        anchors.bottom: parent.bottom
        width: parent.width
    }
}
