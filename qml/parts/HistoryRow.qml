// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme

// One entry of the journal as a sentence.
Line {
    id: row

    required property int index
    required property string entry
    required property string sentence
    required property string facts
    required property bool voided
    required property string spoken

    height: Math.max(52, body.implicitHeight + row.topPadding + row.bottomPadding)
    Accessible.name: row.spoken

    contentItem: Item {
        Column {
            id: body
            width: parent.width
            anchors.verticalCenter: parent.verticalCenter
            spacing: 2
            Label {
                width: parent.width
                text: row.sentence
                font.strikeout: row.voided
                color: row.voided ? Theme.inkSoft : Theme.ink
                elide: Text.ElideRight
                maximumLineCount: 2
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                text: row.facts
                soft: true
                font.pixelSize: Theme.textSmall
                elide: Text.ElideRight
                maximumLineCount: 1
                Accessible.ignored: true
            }
        }
    }
}
