// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Bench

// What was read, latest first.
Column {
    id: list

    required property ReadingDesk reader

    visible: list.reader.taken.count > 0
    spacing: Theme.snug

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
