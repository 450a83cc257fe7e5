// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts

// A planned flight or visit: when, what, what the record says of it. A chosen one can be changed or taken back.
Line {
    id: row

    required property int index
    required property string entry
    required property string day
    required property string title
    required property string says
    required property list<string> lines
    required property bool visit
    required property bool good
    required property string spoken

    signal changeAsked
    signal takeBackAsked

    height: body.implicitHeight + 2 * Theme.gap
    Accessible.name: row.spoken

    contentItem: Item {
        Rectangle { // told by the words beside it too
            id: edge
            width: 6
            height: body.implicitHeight
            color: row.visit ? Theme.rattan : row.good ? Theme.sky : Theme.ember
        }
        Column {
            id: body
            anchors.left: edge.right
            anchors.leftMargin: Theme.gap
            anchors.right: parent.right
            spacing: Theme.tight
            Label {
                width: parent.width
                text: row.day
                soft: true
                font.pixelSize: Theme.textSmall
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                text: row.title
                font.bold: true
                font.pixelSize: Theme.textLarge
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                text: row.says
                font.bold: !row.good
                Accessible.ignored: true
            }
            Repeater {
                model: row.lines
                Label {
                    required property string modelData
                    width: body.width
                    text: modelData
                    Accessible.ignored: true
                }
            }
            Flow {
                width: parent.width
                visible: row.chosen
                spacing: Theme.snug
                Button {
                    text: qsTr("Change …")
                    onClicked: row.changeAsked()
                }
                Button {
                    text: qsTr("Take back …")
                    onClicked: row.takeBackAsked()
                }
            }
        }
    }
}
