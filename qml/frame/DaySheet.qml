// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk

// "On which day?"
Sheet {
    id: sheet

    title: qsTr("On which day?")
    widest: 440
    tallest: 420
    onOpened: {
        field.text = Day.asked;
        problem.text = "";
        field.forceActiveFocus();
        field.selectAll();
    }

    function ask() {
        problem.text = Day.ask(field.text);
        if (problem.text === "")
            sheet.close();
    }

    Scroll {
        anchors.fill: parent
        spacing: Theme.gap
        Label {
            width: parent.width
            text: qsTr("The whole program answers for the end of that day, past or to come: what was fitted, what the clocks said, what is due. Nothing is written.")
            soft: true
        }
        Row {
            width: parent.width
            spacing: Theme.snug
            Field {
                id: field
                width: parent.width - go.width - Theme.snug
                name: qsTr("Day, YYYY-MM-DD")
                placeholderText: name
                wrong: problem.text !== ""
                inputMethodHints: Qt.ImhPreferNumbers
                onAccepted: sheet.ask()
            }
            Button {
                id: go
                primary: true
                text: qsTr("Ask")
                onClicked: sheet.ask()
            }
        }
        Label {
            id: problem
            width: parent.width
            visible: text !== ""
            color: Theme.ember
            Accessible.role: Accessible.AlertMessage
        }
        Label {
            width: parent.width
            text: Day.spoken
            font.bold: true
        }
        Flow {
            width: parent.width
            spacing: Theme.snug
            Button { text: qsTr("Today"); onClicked: { Day.askToday(); field.text = Day.asked; } }
            Button { text: qsTr("− 1 year"); onClicked: { Day.stepMonths(-12); field.text = Day.asked; } }
            Button { text: qsTr("− 1 month"); onClicked: { Day.stepMonths(-1); field.text = Day.asked; } }
            Button { text: qsTr("− 1 day"); onClicked: { Day.stepDays(-1); field.text = Day.asked; } }
            Button { text: qsTr("+ 1 day"); onClicked: { Day.stepDays(1); field.text = Day.asked; } }
            Button { text: qsTr("+ 1 month"); onClicked: { Day.stepMonths(1); field.text = Day.asked; } }
            Button { text: qsTr("+ 1 year"); onClicked: { Day.stepMonths(12); field.text = Day.asked; } }
        }
    }
}
