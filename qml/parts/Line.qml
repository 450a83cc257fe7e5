// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import Crownring.Theme

// The ground of every row in a list: paper, a hairline below, a rattan edge where the row is chosen.
T.ItemDelegate {
    id: line

    property bool chosen: false
    property bool held: ListView.isCurrentItem && ListView.view !== null && ListView.view.activeFocus

    width: ListView.view ? ListView.view.width : implicitWidth
    leftPadding: Theme.wide
    rightPadding: Theme.wide
    topPadding: Theme.snug
    bottomPadding: Theme.snug
    focusPolicy: Qt.NoFocus
    Accessible.role: Accessible.ListItem
    Accessible.selected: line.chosen
    background: Rectangle {
        color: line.chosen || line.down ? Theme.shade : "transparent"
        Rectangle {
            width: 4
            height: parent.height
            visible: line.chosen
            color: Theme.rattan
        }
        Rule {
            anchors.bottom: parent.bottom
            width: parent.width
        }
        FocusRing { shown: line.held; outset: -2 }
    }
}
