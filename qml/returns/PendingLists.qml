// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Returns

// The lists of discrepancies that ground a balloon: what still stands, each leading to its row, and the approval.
Column {
    id: block

    required property ReturnDesk desk
    property bool phone: false // there it is folded, so that the page keeps its room
    property bool unfolded: false
    readonly property bool roomy: !block.phone || block.unfolded

    signal dueAsked(item: string, requirement: string)
    signal approvalAsked(inspection: string)
    signal rectifyAsked(kind: string, item: string, requirement: string)
    signal readingAsked(item: string, requirement: string)

    spacing: Theme.tight

    Label {
        objectName: "returns.asking"
        width: block.width
        visible: block.desk.askingLists
        text: qsTr("A list of discrepancies grounds it. What is on it is being asked …")
        font.bold: true
    }
    Button {
        objectName: "returns.unfold"
        visible: block.phone && !block.desk.askingLists
        text: block.unfolded ? qsTr("Fold the list") : qsTr("What is on the list …")
        onClicked: block.unfolded = !block.unfolded
    }
    Repeater {
        model: block.desk.lists
        Label {
            required property string label
            required property string detail
            width: block.width
            visible: block.roomy
            text: qsTr("%1: %2").arg(label).arg(detail)
            font.bold: true
        }
    }
    Repeater {
        model: block.desk.listed
        Line {
            id: row
            required property int index
            required property string value
            required property string label
            required property string detail
            required property var model // its `chosen` says that it still stands
            readonly property bool stands: row.model.chosen
            readonly property bool defect: block.desk.isDefect(row.index)
            readonly property bool read: block.desk.isRead(row.index) // no statement answers it
            objectName: "returns.listed." + row.index
            visible: block.roomy
            width: block.width
            height: Math.max(Theme.touch, words.implicitHeight + 2 * Theme.tight)
            leftPadding: Theme.gap
            held: row.visualFocus
            focusPolicy: Qt.StrongFocus
            Accessible.role: Accessible.Button
            Accessible.name: qsTr("%1. %2").arg(row.label).arg(row.detail)
            onClicked: block.dueAsked(block.desk.itemAt(row.index), row.value)
            Keys.onReturnPressed: row.clicked()
            Keys.onEnterPressed: row.clicked()
            contentItem: Item {
                Column {
                    id: words
                    anchors.left: parent.left
                    anchors.right: mend.visible ? mend.left : sign.left
                    anchors.rightMargin: Theme.snug
                    anchors.verticalCenter: parent.verticalCenter
                    Label {
                        width: parent.width
                        text: row.label
                        font.bold: row.stands
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
                Button {
                    id: mend
                    objectName: "returns.listed." + row.index + ".rectify"
                    anchors.right: sign.left
                    anchors.rightMargin: Theme.snug
                    anchors.verticalCenter: parent.verticalCenter
                    visible: row.stands
                    text: row.read ? qsTr("Read it in a visit …") : row.defect ? qsTr("Rectify …") : qsTr("Requirement done …")
                    Accessible.name: row.read ? qsTr("Read it in a visit: %1").arg(row.label) : row.defect ? qsTr("Rectify: %1").arg(row.label) : qsTr("Requirement done: %1").arg(row.label)
                    onClicked: {
                        if (row.read)
                            return block.readingAsked(block.desk.itemAt(row.index), row.value);
                        block.rectifyAsked(row.defect ? "defect.cleared" : "requirement.done", block.desk.itemAt(row.index), row.value);
                    }
                }
                LineSign {
                    id: sign
                    anchors.right: parent.right
                    anchors.verticalCenter: words.verticalCenter
                    width: 16
                    height: 16
                    shape: row.stands ? LineSign.Forward : LineSign.Tick
                    tone: Theme.inkSoft
                }
            }
            Rectangle {
                width: 4
                height: parent.height
                visible: row.stands
                color: Theme.ember
            }
        }
    }
    Repeater {
        model: block.desk.lists
        Button {
            required property int index
            required property string value
            objectName: "returns.approve." + index
            visible: block.roomy
            text: block.desk.lists.count > 1 ? qsTr("Approve the return to service after %1 …").arg(value) : qsTr("Approve the return to service …")
            onClicked: block.approvalAsked(value)
        }
    }
}
