// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Lists
import Crownring.Parts

// What is signed by, and who has confirmed it against which rule; what nobody has leads to where it is read.
Column {
    id: note

    required property ChoiceModel wording

    signal wordingAsked(key: string)

    spacing: Theme.tight

    Repeater {
        model: note.wording
        Column {
            id: text
            required property int index
            required property string value
            required property string label
            required property string detail
            required property bool chosen
            width: note.width
            spacing: Theme.tight
            Label {
                objectName: "wording.signed." + text.index
                width: parent.width
                text: qsTr("%1: %2").arg(text.label).arg(text.detail)
                soft: text.chosen
                color: text.chosen ? Theme.inkSoft : Theme.ember
                font.bold: !text.chosen
                font.pixelSize: text.chosen ? Theme.textSmall : Theme.text
            }
            Button {
                objectName: "wording.read." + text.index
                visible: !text.chosen
                text: qsTr("Read and confirm it …")
                onClicked: note.wordingAsked(text.value)
            }
        }
    }
}
