// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk

// What has just happened, with a way back for ten seconds.
Rectangle {
    id: bar

    visible: Notice.shown
    implicitHeight: Math.max(Theme.touch + Theme.snug, words.implicitHeight + 2 * Theme.gap)
    radius: Theme.radius
    color: Theme.sheet
    border.width: Theme.hair
    border.color: Theme.edge

    Rectangle {
        width: 6
        height: parent.height
        color: Notice.trouble ? Theme.ember : Theme.sky
    }
    Label {
        id: words
        anchors.left: parent.left
        anchors.leftMargin: Theme.wide
        anchors.right: buttons.left
        anchors.verticalCenter: parent.verticalCenter
        text: Notice.text
        maximumLineCount: 4
        elide: Text.ElideRight
        Accessible.role: Accessible.AlertMessage
    }
    Row {
        id: buttons
        anchors.right: parent.right
        anchors.rightMargin: Theme.tight
        anchors.verticalCenter: parent.verticalCenter
        Button {
            visible: Notice.undoable
            quiet: true
            text: qsTr("Undo")
            onClicked: Notice.undo()
        }
        IconButton {
            name: qsTr("Put the notice away")
            shape: LineSign.Close
            onClicked: Notice.dismiss()
        }
    }
}
