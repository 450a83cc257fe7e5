// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Lists
import Crownring.Parts

// One sort of what releases rest on: what the record holds of it, and how to enter more.
Column {
    id: block

    required property string title
    required property string about
    required property ChoiceModel rows
    required property list<string> verbs // what the buttons say
    required property list<string> codes // their objects' names

    property int columns: 1

    signal asked(index: int)
    signal correct(entry: string)

    spacing: Theme.gap

    Heading {
        width: parent.width
        text: block.title
        font.pixelSize: Theme.textLarge
    }
    Label {
        width: parent.width
        text: block.about
        soft: true
    }
    Flow {
        width: parent.width
        spacing: Theme.snug
        Repeater {
            model: block.verbs
            Button {
                required property int index
                required property string modelData
                objectName: block.codes[index] ?? ""
                text: modelData
                onClicked: block.asked(index)
            }
        }
    }
    Grid {
        id: grid
        width: parent.width
        columns: block.columns
        columnSpacing: Theme.broad
        Repeater {
            model: block.rows
            Item {
                id: row
                required property string value
                required property string label
                required property string detail
                required property bool chosen // it holds on the day asked
                width: (grid.width - (grid.columns - 1) * grid.columnSpacing) / grid.columns
                height: Math.max(words.height, mend.height) + 2 * Theme.snug
                Column {
                    id: words
                    y: Theme.snug
                    anchors.left: parent.left
                    anchors.right: mend.left
                    anchors.rightMargin: Theme.gap
                    spacing: 2
                    Label {
                        width: parent.width
                        text: row.label
                        font.bold: true
                        soft: !row.chosen
                    }
                    Label {
                        width: parent.width
                        visible: text !== ""
                        text: row.detail
                        font.pixelSize: Theme.textSmall
                        color: row.chosen ? Theme.inkSoft : Theme.ember
                    }
                }
                Button {
                    id: mend
                    y: Theme.snug
                    anchors.right: parent.right
                    quiet: true
                    text: qsTr("Correct …")
                    Accessible.name: qsTr("Correct: %1").arg(row.label)
                    onClicked: block.correct(row.value)
                }
                Rule {
                    anchors.bottom: parent.bottom
                    width: parent.width
                }
            }
        }
    }
    Label {
        width: parent.width
        visible: block.rows.count === 0
        text: qsTr("Nothing yet.")
    }
}
