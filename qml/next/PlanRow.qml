// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts

// A visit of the plan: which balloon, where, what it costs, what is done there and why then.
Line {
    id: row

    required property int index
    required property string title
    required property string cost
    required property string mark
    required property list<string> covers
    required property bool held
    required property bool written
    required property string spoken

    height: body.implicitHeight + 2 * Theme.gap
    Accessible.name: row.spoken

    contentItem: Item {
        Rectangle { // told by the words beside it too
            id: edge
            width: 6
            height: body.implicitHeight
            color: row.written || row.held ? Theme.rattan : Theme.sky
        }
        Column {
            id: body
            anchors.left: edge.right
            anchors.leftMargin: Theme.gap
            anchors.right: parent.right
            spacing: Theme.tight
            Label {
                width: parent.width
                text: row.title
                font.bold: true
                font.pixelSize: Theme.textLarge
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                text: row.mark !== "" ? qsTr("%1 · %2").arg(row.cost).arg(row.mark) : row.cost
                soft: true
                Accessible.ignored: true
            }
            Repeater {
                model: row.covers
                Label {
                    required property string modelData
                    width: body.width
                    text: modelData
                    Accessible.ignored: true
                }
            }
        }
    }
}
