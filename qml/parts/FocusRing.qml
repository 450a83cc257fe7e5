// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme

// Where the keyboard is.
Rectangle {
    id: ring

    property bool shown: false
    property int outset: 2

    anchors.fill: parent
    anchors.margins: -ring.outset
    visible: ring.shown
    color: "transparent"
    border.width: 2
    border.color: Theme.ink
    radius: Theme.radius + ring.outset
    z: 10
}
