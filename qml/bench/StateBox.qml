// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts

// Empty while open, a tick when done, a bar when not applicable or abandoned; of an inspection also a list, in a heavy
// frame while it is pending, and a cross where its release was withdrawn or is no longer supported by the record. The
// word stands beside it.
Rectangle {
    id: box

    property int settledAs: 0 // 0 open, 1 done or released, 2 not applicable or abandoned, 3 closed with a list, 4 withdrawn, 5 no longer supported, 6 closed with a list that is pending

    width: 22
    height: 22
    radius: Theme.radius
    color: box.settledAs === 1 ? Theme.sky : Theme.sheet
    border.width: box.settledAs === 0 || box.settledAs === 6 ? 2 : Theme.hair
    border.color: box.settledAs === 1 ? Theme.sky : box.settledAs > 3 ? Theme.ember : Theme.edge
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
    Column {
        anchors.centerIn: parent
        visible: box.settledAs === 3 || box.settledAs === 6
        spacing: 2
        Repeater {
            model: 3
            Rectangle {
                width: 12
                height: 2
                color: box.settledAs === 6 ? Theme.ember : Theme.inkSoft
            }
        }
    }
    LineSign {
        anchors.centerIn: parent
        width: 16
        height: 16
        visible: box.settledAs === 4 || box.settledAs === 5
        shape: LineSign.Close
        tone: Theme.ember
    }
}
