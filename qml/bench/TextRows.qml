// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Lists
import Crownring.Parts

// A heading and what stands under it, each with its gauge where it has a standing; nothing where there is nothing.
Column {
    id: block

    required property string title
    required property ChoiceModel rows
    readonly property int count: block.rows.count

    visible: block.count > 0
    spacing: Theme.gap

    Label {
        width: parent.width
        text: block.title
        font.bold: true
        font.pixelSize: Theme.textLarge
    }
    Repeater {
        model: block.rows
        Row {
            id: row
            required property string label
            required property string detail
            required property int standing
            spacing: Theme.gap
            GoreGauge {
                id: gauge
                visible: row.standing >= 0
                standing: row.standing
                used: 0.4
                decoration: true
            }
            Column {
                width: block.width - (gauge.visible ? gauge.width + Theme.gap : 0)
                spacing: 2
                Label {
                    width: parent.width
                    text: row.label
                    font.bold: row.standing >= 0
                    soft: row.standing < 0
                }
                Label {
                    width: parent.width
                    visible: text !== ""
                    text: row.detail
                }
            }
        }
    }
}
