// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme

// A strip over the whole width that must be seen: another day, a record that may only be read.
Rectangle {
    id: banner

    property string text: ""
    property string action: ""
    property color edge: Theme.straw

    signal acted

    implicitHeight: Math.max(Theme.touch, words.implicitHeight + 2 * Theme.snug)
    color: Theme.shade
    Rectangle {
        width: 6
        height: parent.height
        color: banner.edge
    }
    Label {
        id: words
        anchors.left: parent.left
        anchors.leftMargin: Theme.broad
        anchors.right: button.visible ? button.left : parent.right
        anchors.rightMargin: Theme.gap
        anchors.verticalCenter: parent.verticalCenter
        text: banner.text
        Accessible.role: Accessible.AlertMessage
    }
    Button {
        id: button
        anchors.right: parent.right
        anchors.rightMargin: Theme.snug
        anchors.verticalCenter: parent.verticalCenter
        visible: banner.action !== ""
        quiet: true
        text: banner.action
        font.bold: true
        onClicked: banner.acted()
    }
}
