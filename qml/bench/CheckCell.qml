// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import Crownring.Theme
import Crownring.Parts
import Crownring.Bench

// One item's cell of a line: a tap says that nothing was found there, another takes it back.
T.AbstractButton {
    id: cell

    required property InspectionDesk desk
    required property int at
    required property string title
    required property string subject
    required property string finding
    required property string readings
    required property string tester
    required property int settledAs
    required property bool asksTester

    signal said
    signal byItself // it is not said with a tap

    readonly property string stateWord: cell.settledAs === 0 ? qsTr("open") : cell.settledAs === 1 ? qsTr("done") : qsTr("not applicable")

    objectName: "bench.cell." + cell.at
    implicitWidth: 116
    implicitHeight: Math.max(Theme.touch + Theme.snug, words.implicitHeight + 2 * Theme.snug)
    Accessible.role: Accessible.CheckBox
    Accessible.checkable: true
    Accessible.checked: cell.settledAs === 1
    Accessible.name: qsTr("%1 on %2: %3").arg(cell.title).arg(cell.subject).arg(cell.stateWord)
    Keys.onReturnPressed: cell.clicked()
    Keys.onEnterPressed: cell.clicked()
    onClicked: {
        if (!cell.desk.open || cell.settledAs === 2 || cell.asksTester && cell.tester === "")
            cell.byItself();
        else {
            cell.desk.settle(cell.at, cell.settledAs === 1 ? 0 : 1);
            cell.said();
        }
    }

    contentItem: Item {
        StateBox {
            id: box
            x: Theme.snug
            anchors.verticalCenter: parent.verticalCenter
            settledAs: cell.settledAs
        }
        Column {
            id: words
            anchors.left: box.right
            anchors.leftMargin: Theme.snug
            anchors.right: parent.right
            anchors.rightMargin: Theme.tight
            anchors.verticalCenter: parent.verticalCenter
            Label {
                width: parent.width
                text: cell.subject
                elide: Text.ElideMiddle
                maximumLineCount: 1
                font.pixelSize: Theme.textSmall
                font.bold: cell.settledAs === 1
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                visible: text !== ""
                text: cell.finding !== "" ? qsTr("a finding") : cell.readings
                elide: Text.ElideRight
                maximumLineCount: 1
                soft: cell.finding === ""
                font.pixelSize: Theme.textSmall
                Accessible.ignored: true
            }
        }
    }
    background: Rectangle {
        radius: Theme.radius
        color: cell.settledAs === 1 || cell.down ? Theme.shade : "transparent"
        border.width: Theme.hair
        border.color: cell.settledAs === 0 ? Theme.edge : Theme.hairline
        FocusRing { shown: cell.visualFocus }
    }
}
