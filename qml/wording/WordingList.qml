// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Wording

// All texts and checklists in use, who adopted and who confirmed each.
RowList {
    id: list

    required property WordingDesk desk

    name: qsTr("Texts and checklists")
    model: list.desk.texts
    header: Label {
        width: list.width
        padding: Theme.wide
        text: qsTr("An organisation adopts what it signs by; somebody who may sign it confirms it against the current rule. Another revision is to be confirmed again.")
        soft: true
    }
    delegate: Line {
        id: row
        required property int index
        required property string value
        required property string label
        required property string detail
        required property int number
        objectName: "wording.text." + row.index
        height: words.implicitHeight + 2 * Theme.gap
        Accessible.name: qsTr("%1, %2").arg(row.label).arg(row.detail)
        onClicked: {
            list.currentIndex = row.index;
            list.desk.show(row.value);
        }
        contentItem: Item {
            Column {
                id: words
                width: parent.width
                anchors.verticalCenter: parent.verticalCenter
                spacing: 2
                Label {
                    width: parent.width
                    text: row.label
                    font.bold: true
                    Accessible.ignored: true
                }
                Label {
                    width: parent.width
                    text: row.detail
                    soft: row.number === 1
                    color: row.number === 1 ? Theme.inkSoft : Theme.ember
                    font.pixelSize: Theme.textSmall
                    Accessible.ignored: true
                }
            }
        }
    }
    onOpened: index => list.desk.show(list.desk.texts.valueAt(index))
}
