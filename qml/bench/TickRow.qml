// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts

// Something that comes along or not, with its standing.
Line {
    id: row

    required property string label
    required property string detail
    required property int standing
    required chosen

    height: Math.max(Theme.touch + Theme.gap, words.implicitHeight + 2 * Theme.snug)
    focusPolicy: Qt.StrongFocus
    held: row.visualFocus
    Accessible.role: Accessible.CheckBox
    Accessible.checkable: true
    Accessible.checked: row.chosen
    Accessible.name: qsTr("%1, %2").arg(row.label).arg(row.detail)
    Keys.onReturnPressed: row.clicked()
    Keys.onEnterPressed: row.clicked()

    contentItem: Item {
        StateBox {
            id: box
            anchors.verticalCenter: parent.verticalCenter
            settledAs: row.chosen ? 1 : 0
        }
        Column {
            id: words
            anchors.left: box.right
            anchors.leftMargin: Theme.gap
            anchors.right: gauge.left
            anchors.rightMargin: Theme.snug
            anchors.verticalCenter: parent.verticalCenter
            Label {
                width: parent.width
                text: row.label
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                text: row.detail
                soft: true
                font.pixelSize: Theme.textSmall
                Accessible.ignored: true
            }
        }
        GoreGauge {
            id: gauge
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            visible: row.standing >= 0
            standing: row.standing
            used: 0.4
            decoration: true
        }
    }
}
