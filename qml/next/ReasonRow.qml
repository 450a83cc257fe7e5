// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts

// One reason of a rig-up answer, or one thing to mind.
Line {
    id: row

    required property int index
    required property string item
    required property string requirement
    required property string title
    required property string says
    required property string source
    required property string mend
    required property string word
    required property int standing
    required property double used
    required property string spoken

    height: body.implicitHeight + 2 * Theme.gap
    focusPolicy: Qt.StrongFocus
    held: row.visualFocus
    Accessible.role: Accessible.Button
    Accessible.name: row.spoken
    Keys.onReturnPressed: row.clicked()

    contentItem: Item {
        GoreGauge {
            id: gauge
            anchors.top: parent.top
            width: 24
            standing: row.standing
            used: row.used
            decoration: true
        }
        Column {
            id: body
            anchors.left: gauge.right
            anchors.leftMargin: Theme.gap
            anchors.right: parent.right
            spacing: Theme.tight
            Label {
                width: parent.width
                text: row.title
                font.bold: true
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                text: row.word.toLowerCase() === row.says.toLowerCase() ? row.word : qsTr("%1. %2").arg(row.word).arg(row.says)
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                visible: row.mend !== ""
                text: row.mend
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                text: row.source
                soft: true
                font.pixelSize: Theme.textSmall
                Accessible.ignored: true
            }
        }
    }
}
