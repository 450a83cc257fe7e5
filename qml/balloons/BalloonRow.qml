// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts

// One balloon of the register.
Line {
    id: row

    required property int index
    required property string balloon
    required property string title
    required property string flown
    required property string worst
    required property string lost
    required property string word
    required property string remains
    required property int standing
    required property double used
    required property string spoken

    height: Math.max(68, state.implicitHeight + 2 * Theme.snug, names.implicitHeight + 2 * Theme.snug)
    Accessible.name: row.spoken

    contentItem: Item {
        GoreGauge {
            id: gauge
            anchors.verticalCenter: parent.verticalCenter
            width: 26
            standing: row.standing
            used: row.used
            decoration: true
        }
        Column {
            id: names
            anchors.left: gauge.right
            anchors.leftMargin: Theme.gap
            anchors.right: state.left
            anchors.rightMargin: Theme.gap
            anchors.verticalCenter: parent.verticalCenter
            spacing: 2
            Label {
                width: parent.width
                text: row.balloon
                font.bold: true
                font.pixelSize: Theme.textLarge
                elide: Text.ElideRight
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                text: row.title === "" ? row.flown : qsTr("%1 · %2").arg(row.title).arg(row.flown)
                soft: true
                font.pixelSize: Theme.textSmall
                elide: Text.ElideRight
                maximumLineCount: 4 // a phone's column is narrow: rather two lines more than a cut
                Accessible.ignored: true
            }
        }
        Column {
            id: state
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            spacing: 2
            width: Math.max(104, Math.min(220, row.width * 0.42))
            Label {
                width: parent.width
                horizontalAlignment: Text.AlignRight
                text: row.remains === "" ? row.word : qsTr("%1 · %2").arg(row.word).arg(row.remains)
                font.bold: true
                maximumLineCount: 2
                elide: Text.ElideRight
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                horizontalAlignment: Text.AlignRight
                visible: row.lost !== ""
                text: row.lost
                font.bold: true
                font.pixelSize: Theme.textSmall
                maximumLineCount: 4
                elide: Text.ElideRight
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                horizontalAlignment: Text.AlignRight
                visible: row.worst !== ""
                text: row.worst
                soft: true
                font.pixelSize: Theme.textSmall
                elide: Text.ElideRight
                maximumLineCount: 4 // which item governs stands last
                Accessible.ignored: true
            }
        }
    }
}
