// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts

// A row of a list in which several are ticked: what it is, how it stands, and a way to its page.
Line {
    id: row

    required property int index
    property string label: ""
    property string detail: ""
    property string more: ""
    property string word: ""
    property string after: "" // under the word
    property int standing: -1
    property bool ticked: false
    property bool tickable: true
    property string spoken: ""
    readonly property bool narrow: row.width < 420 // then the word stands above the rest

    signal asked

    height: Math.max(Theme.touch + Theme.gap, words.implicitHeight + 2 * Theme.snug, row.narrow ? 0 : state.implicitHeight + 2 * Theme.snug)
    chosen: row.ticked
    Accessible.role: row.tickable ? Accessible.CheckBox : Accessible.ListItem
    Accessible.checkable: row.tickable
    Accessible.checked: row.ticked
    Accessible.name: row.spoken

    contentItem: Item {
        Rectangle {
            id: box
            anchors.verticalCenter: parent.verticalCenter
            width: row.tickable ? 22 : 0
            height: 22
            visible: row.tickable
            radius: Theme.radius
            color: row.ticked ? Theme.sky : Theme.sheet
            border.width: Theme.hair
            border.color: row.ticked ? Theme.sky : Theme.edge
            LineSign {
                anchors.centerIn: parent
                width: 16
                height: 16
                visible: row.ticked
                shape: LineSign.Tick
                tone: Theme.skyInk
            }
        }
        GoreGauge {
            id: gauge
            anchors.left: box.right
            anchors.leftMargin: row.tickable ? Theme.snug : 0
            anchors.verticalCenter: parent.verticalCenter
            width: visible ? 16 : 0
            visible: row.standing >= 0
            standing: row.standing
            used: 0.4
            decoration: true
        }
        Column {
            id: words
            anchors.left: gauge.right
            anchors.leftMargin: Theme.snug
            anchors.right: state.left
            anchors.rightMargin: Theme.snug
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
                visible: row.narrow && text !== ""
                text: row.after === "" || row.word === "" ? row.word : qsTr("%1 · %2").arg(row.word).arg(row.after)
                font.bold: true
                font.pixelSize: Theme.textSmall
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
            Label {
                width: parent.width
                visible: text !== ""
                text: row.more
                soft: true
                font.pixelSize: Theme.textSmall
                Accessible.ignored: true
            }
        }
        Column {
            id: state
            anchors.right: way.left
            anchors.rightMargin: Theme.tight
            anchors.verticalCenter: parent.verticalCenter
            width: row.narrow ? 0 : Math.max(80, Math.min(170, row.width * 0.3))
            visible: !row.narrow
            spacing: 2
            Label {
                width: parent.width
                horizontalAlignment: Text.AlignRight
                visible: text !== ""
                text: row.word
                font.bold: true
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                horizontalAlignment: Text.AlignRight
                visible: text !== ""
                text: row.after
                soft: true
                font.pixelSize: Theme.textSmall
                Accessible.ignored: true
            }
        }
        IconButton {
            id: way
            anchors.right: parent.right
            anchors.rightMargin: -Theme.gap
            anchors.verticalCenter: parent.verticalCenter
            focusPolicy: Qt.NoFocus // the list is one stop; there the right arrow goes
            name: qsTr("Page of %1").arg(row.label)
            shape: LineSign.Forward
            onClicked: row.asked()
        }
    }
}
