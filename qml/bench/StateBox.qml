// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts

// Empty while open, a tick when done, a bar when not applicable. The word stands beside it.
Rectangle {
    id: box

    property int settledAs: 0

    width: 22
    height: 22
    radius: Theme.radius
    color: box.settledAs === 1 ? Theme.sky : Theme.sheet
    border.width: box.settledAs === 0 ? 2 : Theme.hair
    border.color: box.settledAs === 1 ? Theme.sky : Theme.edge
    LineSign {
        anchors.centerIn: parent
        width: 16
        height: 16
        visible: box.settledAs === 1
        shape: LineSign.Tick
        tone: Theme.skyInk
    }
    Rectangle {
        anchors.centerIn: parent
        width: 12
        height: 2
        visible: box.settledAs === 2
        color: Theme.inkSoft
    }
}
