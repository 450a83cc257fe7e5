// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Lists
import Crownring.Parts

// Questions and their answers, in as many columns as there is room for.
Grid {
    id: list

    required property ChoiceModel rows
    property int columnWidth: 280
    readonly property real cell: (list.width - (list.columns - 1) * list.columnSpacing) / list.columns

    columns: Math.max(1, Math.floor((list.width + list.columnSpacing) / (list.columnWidth + list.columnSpacing)))
    columnSpacing: Theme.broad
    rowSpacing: Theme.gap
    visible: list.rows.count > 0

    Repeater {
        model: list.rows
        Facts {
            required property string label
            required property string detail
            width: list.cell
            name: label
            text: detail
        }
    }
}
