// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme

// One requirement of one item: what, where, how it stands, what is left and when it is due.
Line {
    id: row

    required property int index
    required property string item
    required property string requirement
    required property string where
    required property string title
    required property int standing
    required property string standingWord
    required property double used
    required property string remains
    required property string due
    required property string remark
    required property string spoken

    height: Math.max(Theme.touch, body.implicitHeight + 2 * Theme.tight)
    Accessible.name: row.spoken

    contentItem: Item {
        GoreGauge {
            id: gauge
            anchors.verticalCenter: parent.verticalCenter
            standing: row.standing
            used: row.used
            decoration: true
        }
        Column {
            id: body
            anchors.left: gauge.right
            anchors.leftMargin: Theme.gap
            anchors.right: state.left
            anchors.rightMargin: Theme.gap
            anchors.verticalCenter: parent.verticalCenter
            spacing: 2
            Label {
                width: parent.width
                text: row.title
                elide: Text.ElideRight
                maximumLineCount: row.width < 480 ? 3 : 1
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                text: row.remark === "" ? row.where : qsTr("%1 · %2").arg(row.where).arg(row.remark)
                soft: true
                font.pixelSize: Theme.textSmall
                elide: Text.ElideRight
                maximumLineCount: row.width < 480 ? 2 : 1
                Accessible.ignored: true
            }
        }
        Column {
            id: state
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            spacing: 2
            readonly property real most: Math.max(84, Math.min(176, row.width * 0.38))
            Label {
                anchors.right: parent.right
                width: Math.min(implicitWidth, state.most)
                wrapMode: Text.NoWrap
                text: row.remains === "" ? row.standingWord : row.remains
                font.bold: true
                elide: Text.ElideRight
                maximumLineCount: 1
                Accessible.ignored: true
            }
            Label {
                anchors.right: parent.right
                width: Math.min(implicitWidth, state.most)
                wrapMode: Text.NoWrap
                text: row.remains === "" ? row.due : row.due === "" ? row.standingWord : qsTr("%1 · %2").arg(row.due).arg(row.standingWord)
                soft: true
                font.pixelSize: Theme.textSmall
                elide: Text.ElideRight
                maximumLineCount: 1
                visible: text !== ""
                Accessible.ignored: true
            }
        }
    }
}
