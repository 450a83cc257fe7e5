// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Bench

// The parts in the order in which one works, each with how much of it is settled.
RowList {
    id: parts

    required property InspectionDesk desk

    objectName: "bench.parts"
    name: qsTr("Parts of the work")
    model: parts.desk.parts
    onOpened: index => parts.desk.partAt = index
    delegate: Line {
        id: row
        required property int index
        required property string label
        required property string detail
        required property int number
        required chosen
        height: Math.max(Theme.touch + Theme.snug, words.implicitHeight + 2 * Theme.snug)
        Accessible.name: qsTr("%1, %2").arg(row.label).arg(row.detail)
        onClicked: {
            parts.currentIndex = row.index;
            parts.desk.partAt = row.index;
        }
        contentItem: Item {
            StateBox {
                id: box
                anchors.verticalCenter: parent.verticalCenter
                settledAs: row.number === 0 ? 1 : 0
            }
            Column {
                id: words
                anchors.left: box.right
                anchors.leftMargin: Theme.gap
                anchors.right: parent.right
                anchors.verticalCenter: parent.verticalCenter
                Label {
                    width: parent.width
                    text: row.label
                    font.bold: row.chosen
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
        }
    }
}
