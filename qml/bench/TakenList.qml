// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Bench

// What was read, latest first; the latest can be taken back.
Column {
    id: list

    required property ReadingDesk reader
    property bool atWork: true

    visible: list.reader.taken.count > 0
    spacing: Theme.snug

    Item {
        width: parent.width
        height: Theme.touch
        Label {
            anchors.left: parent.left
            anchors.right: back.left
            anchors.verticalCenter: parent.verticalCenter
            text: qsTr("Taken: %1").arg(list.reader.taken.count)
            font.bold: true
        }
        Button {
            id: back
            objectName: "bench.takeback"
            anchors.right: parent.right
            visible: list.atWork
            text: qsTr("Take back the last")
            onClicked: list.reader.takeBack()
        }
    }
    Column {
        width: parent.width
        Repeater {
            model: list.reader.taken
            Item {
                id: row
                required property string label
                required property string detail
                required property int standing
                width: list.width
                height: words.implicitHeight + 2 * Theme.snug
                Rectangle {
                    width: 4
                    height: parent.height
                    visible: row.standing === 1
                    color: Theme.ember
                }
                Column {
                    id: words
                    x: Theme.gap
                    width: parent.width - x
                    anchors.verticalCenter: parent.verticalCenter
                    Label {
                        width: parent.width
                        text: row.label
                        font.bold: row.standing === 1
                    }
                    Label {
                        width: parent.width
                        visible: text !== ""
                        text: row.detail
                        soft: true
                        font.pixelSize: Theme.textSmall
                    }
                }
                Rule {
                    anchors.bottom: parent.bottom
                    width: parent.width
                }
            }
        }
    }
}
