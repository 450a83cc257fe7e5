// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts

// One group of due rows: what it is, what governs it, what else comes with it, what is left and when it is due.
Line {
    id: row

    required property int index
    required property string title
    required property string governs
    required property string also
    required property int standing
    required property string standingWord
    required property double used
    required property string remains
    required property string due
    required property string spoken

    readonly property bool wide: row.width >= 480

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
            Item {
                width: parent.width
                height: title.implicitHeight
                Label {
                    id: title
                    width: Math.min(implicitWidth, parent.width)
                    text: row.title
                    font.bold: true
                    elide: Text.ElideRight
                    wrapMode: Text.NoWrap
                    Accessible.ignored: true
                }
                Label {
                    anchors.left: title.right
                    anchors.leftMargin: Theme.snug
                    anchors.right: parent.right
                    visible: row.wide && row.also !== ""
                    text: row.governs
                    elide: Text.ElideRight
                    wrapMode: Text.NoWrap
                    Accessible.ignored: true
                }
            }
            Label {
                width: parent.width
                visible: text !== ""
                text: row.wide && row.also !== "" ? row.also : row.governs
                soft: true
                font.pixelSize: Theme.textSmall
                elide: Text.ElideRight
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
        }
        Column {
            id: state
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            width: Math.max(84, Math.min(176, row.width * 0.38))
            Label {
                width: parent.width
                horizontalAlignment: Text.AlignRight
                text: row.remains === "" ? row.standingWord : row.remains
                font.bold: true
                elide: Text.ElideRight
                maximumLineCount: 1
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                horizontalAlignment: Text.AlignRight
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
