// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts

// One field of an entry's form. The program says what kind it is, what it understood and what is wrong.
Column {
    id: field

    required property int index
    required property string key
    required property string label
    required property string hint
    required property int type // 0 text, 1 date, 2 made, 3 time, 4 duration, 5 count, 6 decimal, 7 choice, 8 several, 9 check
    required property string value
    required property var choices
    required property bool needed
    required property string problem
    required property string understood

    signal edited(value: string)
    signal toggled(choice: string)
    signal focused(item: Item)

    readonly property string name: field.needed ? qsTr("%1 (needed)").arg(field.label) : field.label

    spacing: Theme.tight

    Label {
        width: parent.width
        visible: field.type !== 9
        text: field.needed ? qsTr("%1 *").arg(field.label) : field.label
        font.bold: field.needed
        Accessible.ignored: true
    }
    Loader {
        width: parent.width
        sourceComponent: field.type === 7 && field.choices.length > 0 ? one : field.type === 8 ? some : field.type === 9 ? yes : typed
    }
    Label {
        width: parent.width
        visible: text !== ""
        text: field.understood === "" ? field.hint : qsTr("understood as %1").arg(field.understood)
        soft: true
        font.pixelSize: Theme.textSmall
    }
    Label {
        width: parent.width
        visible: field.problem !== ""
        text: field.problem
        color: Theme.ember
        font.bold: true
        Accessible.role: Accessible.AlertMessage
    }

    Component {
        id: typed
        Field {
            name: field.name
            text: field.value
            wrong: field.problem !== ""
            inputMethodHints: field.type === 5 ? Qt.ImhDigitsOnly : field.type >= 1 && field.type <= 6 ? Qt.ImhPreferNumbers : Qt.ImhNone
            onTextEdited: field.edited(text)
            onActiveFocusChanged: {
                if (activeFocus)
                    field.focused(field);
            }
        }
    }
    Component {
        id: one
        ChoiceField {
            name: field.name
            model: field.choices
            value: field.value
            wrong: field.problem !== ""
            onPicked: value => field.edited(value)
            onActiveFocusChanged: {
                if (activeFocus)
                    field.focused(field);
            }
        }
    }
    Component {
        id: some
        Flow {
            spacing: Theme.tight
            Accessible.role: Accessible.Grouping
            Accessible.name: field.name
            Repeater {
                model: field.choices
                Chip {
                    required property var modelData
                    text: modelData.label
                    chosen: modelData.chosen
                    onClicked: field.toggled(modelData.value)
                }
            }
        }
    }
    Component {
        id: yes
        CheckLine {
            text: field.label
            checked: field.value !== ""
            onToggled: field.edited(checked ? "true" : "")
        }
    }
}
