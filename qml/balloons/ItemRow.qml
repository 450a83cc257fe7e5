// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts

// One item with its clock and its worst standing.
Line {
    id: row

    required property int index
    required property string item
    required property string kind
    required property string about
    required property string where
    required property string clock
    required property string title
    required property string word
    required property string remains
    required property int standing
    required property double used
    required property string spoken

    height: Math.max(68, body.implicitHeight + 2 * Theme.snug, state.implicitHeight + 2 * Theme.snug)
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
                text: row.where === "" ? qsTr("%1 · %2").arg(row.item).arg(row.kind)
                                       : qsTr("%1 · %2 · %3").arg(row.item).arg(row.kind).arg(row.where)
                elide: Text.ElideRight
                maximumLineCount: 1
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                text: row.clock
                soft: true
                font.pixelSize: Theme.textSmall
                elide: Text.ElideRight
                maximumLineCount: 2
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                text: row.about
                visible: row.about !== ""
                soft: true
                font.pixelSize: Theme.textSmall
                elide: Text.ElideRight
                maximumLineCount: 1
                Accessible.ignored: true
            }
        }
        Column {
            id: state
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            spacing: 2
            width: Math.max(92, Math.min(180, row.width * 0.3))
            Label {
                width: parent.width
                horizontalAlignment: Text.AlignRight
                text: row.remains === "" ? row.word : qsTr("%1 · %2").arg(row.word).arg(row.remains)
                font.bold: true
                maximumLineCount: 2
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                horizontalAlignment: Text.AlignRight
                text: row.title
                visible: row.title !== ""
                soft: true
                font.pixelSize: Theme.textSmall
                elide: Text.ElideRight
                maximumLineCount: 3
                Accessible.ignored: true
            }
        }
    }
}
