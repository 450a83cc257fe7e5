// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Bench

// Why it cannot be signed yet, and what answers each reason. What can be gone to is a tap away.
Column {
    id: list

    required property ReleaseDesk release
    property int barring: 0
    property bool unfolded: false
    readonly property int few: 5
    readonly property int shown: list.unfolded ? list.release.refusals.count : list.few

    signal lineAsked(line: string, item: string)
    signal readingAsked(entry: string, equipment: bool)
    signal workAsked(entry: string, key: string) // to be corrected; without an entry to be described
    signal defectsAsked

    function go(row: int, line: string) {
        const entry = list.release.entryOfRefusal(row);
        switch (list.release.wayOfRefusal(row)) {
        case "line":
            return list.lineAsked(line, list.release.itemOfRefusal(row));
        case "reading":
            return list.readingAsked(entry, false);
        case "equipment":
            return list.readingAsked(entry, true);
        case "grade":
            return list.workAsked(entry, "grade");
        case "work":
            return list.workAsked(entry, "");
        case "describe":
            return list.workAsked("", "");
        case "defects":
            return list.defectsAsked();
        }
    }

    Label {
        width: parent.width
        bottomPadding: Theme.tight
        text: list.release.refusals.count === 1 ? qsTr("1 reason why it cannot be signed yet") : qsTr("%1 reasons why it cannot be signed yet").arg(list.release.refusals.count)
        font.bold: true
        font.pixelSize: Theme.textLarge
        Accessible.role: Accessible.AlertMessage
    }
    Rule { width: parent.width }
    Repeater {
        model: list.release.refusals
        Line {
            id: row
            required property int index
            required property string value
            required property string label
            required property string detail
            readonly property bool leads: list.release.wayOfRefusal(row.index) !== ""
            objectName: "bench.refusal." + row.index
            visible: row.index < list.shown
            width: list.width
            height: Math.max(Theme.touch, words.implicitHeight + 2 * Theme.snug)
            leftPadding: Theme.gap
            focusPolicy: row.leads ? Qt.StrongFocus : Qt.NoFocus
            held: row.visualFocus
            Accessible.name: qsTr("%1. %2").arg(row.label).arg(row.detail)
            Accessible.role: row.leads ? Accessible.Button : Accessible.ListItem
            onClicked: list.go(row.index, row.value)
            Keys.onReturnPressed: row.clicked()
            Keys.onEnterPressed: row.clicked()
            contentItem: Item {
                Column {
                    id: words
                    anchors.left: parent.left
                    anchors.right: sign.left
                    anchors.verticalCenter: parent.verticalCenter
                    Label {
                        width: parent.width
                        text: row.label
                        font.bold: true
                        Accessible.ignored: true
                    }
                    Label {
                        width: parent.width
                        visible: text !== ""
                        text: row.detail
                        soft: true
                        font.pixelSize: Theme.textSmall
                        Accessible.ignored: true
                    }
                }
                LineSign {
                    id: sign
                    anchors.right: parent.right
                    anchors.verticalCenter: parent.verticalCenter
                    width: 16
                    height: 16
                    visible: row.leads
                    shape: LineSign.Forward
                    tone: Theme.inkSoft
                }
            }
            Rectangle {
                width: 4
                height: parent.height
                color: Theme.ember
            }
        }
    }
    Flow {
        width: parent.width
        spacing: Theme.snug
        topPadding: Theme.snug
        Button {
            objectName: "bench.refusals.all"
            visible: list.release.refusals.count > list.few
            text: list.unfolded ? qsTr("The first %1 only").arg(list.few) : qsTr("All %1 reasons").arg(list.release.refusals.count)
            onClicked: list.unfolded = !list.unfolded
        }
        Button {
            objectName: "bench.todefects"
            visible: list.barring > 0
            text: qsTr("To the defects ›")
            onClicked: list.defectsAsked()
        }
    }
}
