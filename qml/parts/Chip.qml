// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import Crownring.Theme
import Crownring.Parts

// A filter that is on or off, with the gauge of a standing and a number where it has them.
T.AbstractButton {
    id: chip

    property bool chosen: false
    property int standing: -1
    property int number: -1
    property real most: 10000 // no wider than that: what is longer wraps

    implicitHeight: Math.max(Theme.touch, line.implicitHeight + 2 * Theme.snug)
    implicitWidth: Math.max(Theme.touch, line.implicitWidth + 2 * Theme.snug)
    checked: chip.chosen
    Accessible.role: Accessible.CheckBox
    Accessible.checkable: true
    Accessible.checked: chip.chosen
    Accessible.name: chip.number >= 0 ? qsTr("%1, %2").arg(chip.text).arg(chip.number) : chip.text
    Keys.onReturnPressed: chip.clicked()
    Keys.onEnterPressed: chip.clicked()

    contentItem: Item {
        Row {
            id: line
            anchors.centerIn: parent
            spacing: 6
            GoreGauge {
                anchors.verticalCenter: parent.verticalCenter
                visible: chip.standing >= 0
                standing: chip.standing
                used: 0.4
                decoration: true
                width: 15
                height: 24
            }
            Text {
                id: words
                textFormat: Text.PlainText
                anchors.verticalCenter: parent.verticalCenter
                width: Math.min(implicitWidth, chip.most - 2 * Theme.snug)
                wrapMode: Text.Wrap
                text: chip.text
                color: Theme.ink
                font.pixelSize: Theme.text
                font.bold: chip.chosen
                Accessible.ignored: true

                KeptNames { of: words }
            }
            Text {
                textFormat: Text.PlainText
                anchors.verticalCenter: parent.verticalCenter
                visible: chip.number >= 0
                text: chip.number
                color: Theme.inkSoft
                font.pixelSize: Theme.text
                Accessible.ignored: true
            }
        }
    }
    background: Item {
        Rectangle {
            anchors.fill: parent
            anchors.topMargin: 4
            anchors.bottomMargin: 4
            radius: Theme.radius
            color: chip.chosen ? Theme.shade : chip.down ? Theme.shade : "transparent"
            border.width: chip.chosen ? 2 : Theme.hair
            border.color: chip.chosen ? Theme.ink : Theme.hairline
            FocusRing { shown: chip.visualFocus }
        }
    }
}
