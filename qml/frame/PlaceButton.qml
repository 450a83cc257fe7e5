// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import Crownring.Theme
import Crownring.Parts

// One place on the rail or the bar: its drawing and its word.
T.AbstractButton {
    id: button

    property int shape: LineSign.None
    property bool here: false
    property bool below: false // on the bar: the load tape runs above

    implicitWidth: Theme.rail
    implicitHeight: Theme.bar + Theme.snug
    Accessible.role: Accessible.PageTab
    Accessible.name: button.text
    Accessible.selected: button.here
    Keys.onReturnPressed: button.clicked()
    Keys.onEnterPressed: button.clicked()

    contentItem: Item {
        Column {
            anchors.centerIn: parent
            spacing: Theme.tight
            LineSign {
                anchors.horizontalCenter: parent.horizontalCenter
                width: 24
                height: 24
                shape: button.shape
                tone: button.here ? Theme.ink : Theme.inkSoft
            }
            Text {
                textFormat: Text.PlainText
                anchors.horizontalCenter: parent.horizontalCenter
                text: button.text
                color: button.here ? Theme.ink : Theme.inkSoft
                font.pixelSize: Theme.textSmall
                font.bold: button.here
                Accessible.ignored: true
            }
        }
    }
    background: Rectangle {
        color: button.down ? Theme.shade : "transparent"
        Rectangle {
            visible: button.here
            width: button.below ? parent.width - 2 * Theme.wide : 4
            height: button.below ? 4 : parent.height - Theme.wide
            x: button.below ? Theme.wide : 0
            y: button.below ? 0 : Theme.snug
            color: Theme.rattan
        }
        FocusRing { shown: button.visualFocus; outset: -4 }
    }
}
