// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Form

// One field of an entry's form. The program says what kind it is, what it understood, what is wrong and what it asks.
Column {
    id: field

    required property int index
    required property string key
    required property string label
    required property string hint
    required property int type // 0 text, 1 date, 2 made, 3 time, 4 duration, 5 count, 6 decimal, 7 choice, 8 several, 9 check, 10 lines, 11 one of a few, 12 kit, 13 photographs, 14 secret
    required property string value
    required property var choices
    required property string chosenLabel
    required property bool needed
    required property bool shown
    required property bool past
    required property string problem
    required property string wayTo
    required property string understood
    required property string question
    required property string meant
    required property EntryForm form

    signal edited(value: string)
    signal toggled(choice: string)
    signal focused(item: Item)
    signal daysAgo(days: int)
    signal monthAsked(written: string)

    readonly property string name: field.needed ? qsTr("%1 (needed)").arg(field.label) : field.label
    readonly property bool wrong: field.problem !== "" || field.question !== ""

    // Puts the keyboard into it.
    function enter() {
        if (input.item === null)
            return;
        (input.item as Item).forceActiveFocus(Qt.TabFocusReason);
        const typed = input.item as Field;
        if (typed !== null)
            typed.selectAll();
    }
    function componentOf(type: int): Component {
        switch (type) {
        case 1:
        case 2:
            return day;
        case 7:
            return field.choices.length > 6 ? many : field.choices.length > 0 ? one : typed;
        case 8:
            return some;
        case 9:
            return yes;
        case 10:
            return lines;
        case 11:
            return few;
        case 12:
            return kit;
        case 13:
            return photographs;
        case 14:
            return secret;
        default:
            return typed;
        }
    }

    objectName: "field." + field.key
    visible: field.shown
    spacing: Theme.tight

    Label {
        width: parent.width
        visible: field.type !== 9
        text: field.needed ? qsTr("%1 *").arg(field.label) : field.label
        font.bold: field.needed
        Accessible.ignored: true
    }
    Loader {
        id: input
        width: parent.width
        sourceComponent: field.componentOf(field.type)
    }
    Flow {
        width: parent.width
        visible: field.type === 0 && field.choices.length > 0 && field.value === ""
        spacing: Theme.tight
        Accessible.role: Accessible.Grouping
        Accessible.name: qsTr("%1, as before").arg(field.label)
        Repeater {
            model: field.type === 0 ? field.choices : []
            Chip {
                required property var modelData
                objectName: "before." + field.key + "." + modelData.value
                most: field.width
                text: modelData.label
                onClicked: field.edited(modelData.value)
            }
        }
    }
    Label {
        width: parent.width
        objectName: "understood." + field.key
        visible: text !== ""
        text: field.understood === "" ? field.hint : qsTr("understood as %1").arg(field.understood)
        soft: field.understood === ""
        font.bold: field.understood !== ""
        font.pixelSize: Theme.textSmall
    }
    Label {
        objectName: "problem." + field.key
        width: parent.width
        visible: field.problem !== ""
        text: field.problem
        color: Theme.ember
        font.bold: true
        Accessible.role: Accessible.AlertMessage
    }
    Button {
        objectName: "way." + field.key
        visible: field.wayTo !== ""
        text: qsTr("Go there")
        onClicked: field.form.go(field.wayTo)
    }
    Label {
        width: parent.width
        visible: field.question !== ""
        text: field.question
        font.bold: true
        Accessible.role: Accessible.AlertMessage
    }
    Flow {
        width: parent.width
        visible: field.question !== ""
        spacing: Theme.snug
        Button {
            objectName: "so." + field.key
            text: qsTr("It is so")
            onClicked: field.form.answer(field.index)
        }
        Button {
            objectName: "meant." + field.key
            visible: field.meant !== ""
            text: field.meant
            onClicked: field.edited(field.meant)
        }
    }

    Component {
        id: typed
        Field {
            objectName: "typed." + field.key
            name: field.name
            text: field.value
            wrong: field.wrong
            EnterKey.type: Qt.EnterKeyNext
            onAccepted: nextItemInFocusChain(true).forceActiveFocus(Qt.TabFocusReason)
            inputMethodHints: field.type === 5 ? Qt.ImhDigitsOnly : field.type >= 1 && field.type <= 6 ? Qt.ImhPreferNumbers : Qt.ImhNone
            onTextEdited: field.edited(text)
            onActiveFocusChanged: {
                if (activeFocus)
                    field.focused(field);
            }
        }
    }
    Component {
        id: secret
        SecretField {
            objectName: "secret." + field.key
            name: field.name
            text: field.value
            wrong: field.wrong
            onTextEdited: field.edited(text)
            onActiveFocusChanged: {
                if (activeFocus)
                    field.focused(field);
            }
        }
    }
    Component {
        id: day
        FocusScope {
            implicitHeight: days.implicitHeight
            Grid {
                id: days
                readonly property bool beside: width > Theme.phoneBelow / 2
                width: parent.width
                columns: days.beside ? 2 : 1
                spacing: Theme.tight
                Row {
                    width: days.beside && recent.visible ? parent.width - recent.width - Theme.tight : parent.width
                    Field {
                        objectName: "typed." + field.key
                        width: parent.width - Theme.touch
                        focus: true
                        name: field.name
                        text: field.value
                        wrong: field.wrong
                        inputMethodHints: Qt.ImhPreferNumbers
                        onTextEdited: field.edited(text)
                        onActiveFocusChanged: {
                            if (activeFocus)
                                field.focused(field);
                        }
                    }
                    IconButton {
                        objectName: "month." + field.key
                        name: qsTr("%1: pick from a month").arg(field.label)
                        shape: LineSign.Month
                        onClicked: field.monthAsked(field.value)
                    }
                }
                Row {
                    id: recent
                    visible: field.past
                    spacing: Theme.tight
                    Button {
                        objectName: "today." + field.key
                        text: qsTr("Today")
                        onClicked: field.daysAgo(0)
                    }
                    Button {
                        objectName: "yesterday." + field.key
                        text: qsTr("Yesterday")
                        onClicked: field.daysAgo(1)
                    }
                }
            }
        }
    }
    Component {
        id: one
        ChoiceField {
            objectName: "choice." + field.key
            name: field.name
            model: field.choices
            value: field.value
            wrong: field.wrong
            onPicked: value => field.edited(value)
            onActiveFocusChanged: {
                if (activeFocus)
                    field.focused(field);
            }
        }
    }
    Component {
        id: many
        ManyField {
            name: field.name
            key: field.key
            label: field.chosenLabel
            wrong: field.wrong
            seeking: field.form.sought === field.index
            sift: field.form.sift
            onAsked: field.form.seek(field.index)
            onDropped: field.form.seek(-1)
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
                    objectName: "some." + field.key + "." + modelData.value
                    most: field.width
                    text: modelData.label
                    chosen: modelData.chosen
                    onClicked: field.toggled(modelData.value)
                }
            }
        }
    }
    Component {
        id: few
        Flow {
            spacing: Theme.tight
            Accessible.role: Accessible.Grouping
            Accessible.name: field.name
            Repeater {
                model: field.choices
                Chip {
                    required property var modelData
                    objectName: "one." + field.key + "." + modelData.value
                    most: field.width
                    text: modelData.label
                    chosen: modelData.chosen
                    onClicked: field.edited(modelData.value)
                }
            }
        }
    }
    Component {
        id: yes
        CheckLine {
            objectName: "check." + field.key
            text: field.label
            checked: field.value !== ""
            onToggled: field.edited(checked ? "true" : "")
        }
    }
    Component {
        id: lines
        TextBox {
            objectName: "lines." + field.key
            name: field.name
            text: field.value
            onSaid: text => field.edited(text)
            onActiveFocusChanged: {
                if (activeFocus)
                    field.focused(field);
            }
        }
    }
    Component {
        id: photographs
        PhotographField {
            form: field.form
            row: field.index
            key: field.key
            name: field.name
            choices: field.choices
        }
    }
    Component {
        id: kit
        KitEditor {
            kit: field.form.kit
            onShownMore: {
                field.forceLayout();
                field.focused(field);
            }
        }
    }
}
