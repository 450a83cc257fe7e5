// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts

// A place with nothing in it says what to do first.
Item {
    id: empty

    required property string title
    property string text: ""
    property string action: ""
    property string other: "" // another way on
    property int shape: LineSign.Balloons

    signal acted
    signal otherActed

    Column {
        anchors.centerIn: parent
        width: Math.min(360, parent.width - 2 * Theme.broad)
        spacing: Theme.gap
        LineSign {
            anchors.horizontalCenter: parent.horizontalCenter
            width: 56
            height: 56
            shape: empty.shape
            tone: Theme.rattan
        }
        Label {
            width: parent.width
            horizontalAlignment: Text.AlignHCenter
            text: empty.title
            font.pixelSize: Theme.textLarge
            font.bold: true
        }
        Label {
            width: parent.width
            horizontalAlignment: Text.AlignHCenter
            text: empty.text
            soft: true
        }
        Button {
            anchors.horizontalCenter: parent.horizontalCenter
            visible: empty.action !== ""
            text: empty.action
            primary: true
            onClicked: empty.acted()
        }
        Button {
            anchors.horizontalCenter: parent.horizontalCenter
            visible: empty.other !== ""
            text: empty.other
            onClicked: empty.otherActed()
        }
    }
}
