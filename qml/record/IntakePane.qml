// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Dialogs
import Crownring.Theme
import Crownring.Parts
import Crownring.Record

// Flights from a file: a log (CSV) or a track (IGC). What is found is shown first; nothing is written before it is accepted.
Item {
    id: pane

    required property FlightIntake intake

    Column {
        id: head
        x: Theme.wide
        y: Theme.wide
        width: parent.width - 2 * Theme.wide
        spacing: Theme.gap

        Label {
            width: parent.width
            visible: !pane.intake.open // then the room is the rows'
            text: qsTr("Choose a flight log (CSV with a header row) or a track of a flight recorder (IGC). You see every flight before anything is written.")
        }
        Row {
            spacing: Theme.snug
            Button {
                primary: !pane.intake.open
                text: pane.intake.open ? qsTr("Another file …") : qsTr("Choose a file …")
                onClicked: chooser.open()
            }
            Button {
                visible: pane.intake.open
                text: qsTr("Leave")
                onClicked: pane.intake.close()
            }
        }
        Label {
            width: parent.width
            visible: pane.intake.open
            text: pane.intake.reading ? qsTr("Reading %1 …").arg(pane.intake.file) : qsTr("%1: %2").arg(pane.intake.file).arg(pane.intake.summary)
            font.bold: true
        }
        Label {
            width: parent.width
            visible: text !== ""
            text: pane.intake.problem
            color: Theme.ember
            Accessible.role: Accessible.AlertMessage
        }
        Label {
            width: parent.width
            visible: text !== ""
            text: pane.intake.columns
            soft: true
        }
        Label {
            width: parent.width
            visible: text !== ""
            text: pane.intake.remarks
            soft: true
        }
        Flow {
            width: parent.width
            spacing: Theme.snug
            visible: pane.intake.open
            ChoiceField {
                name: qsTr("Balloon of every row")
                model: pane.intake.balloons
                value: pane.intake.balloon
                onPicked: value => pane.intake.balloon = value
            }
            CheckLine {
                text: qsTr("times are UTC")
                checked: pane.intake.timesAreUtc
                onToggled: pane.intake.timesAreUtc = checked
            }
        }
        Answer {
            visible: pane.intake.asksDateOrder
            question: qsTr("How are its dates written?")
            answers: [qsTr("day first"), qsTr("month first"), qsTr("year first")]
            values: ["day-first", "month-first", "year-first"]
            onGiven: value => pane.intake.datesAre(value)
        }
        Answer {
            visible: pane.intake.asksDurationUnit
            question: qsTr("What are its durations?")
            answers: [qsTr("minutes"), qsTr("decimal hours"), qsTr("hours.minutes")]
            values: ["minutes", "hours", "hours.minutes"]
            onGiven: value => pane.intake.durationsAre(value)
        }
        Answer {
            visible: pane.intake.asksTemperatureUnit
            question: qsTr("What are its temperatures?")
            answers: [qsTr("°C"), qsTr("°F")]
            values: ["celsius", "fahrenheit"]
            onGiven: value => pane.intake.temperaturesAre(value)
        }
        Answer {
            visible: pane.intake.asksFuelUnit
            question: qsTr("What is its fuel measured in?")
            answers: [qsTr("kg"), qsTr("litres"), qsTr("lb"), qsTr("US gal")]
            values: ["kg", "l", "lb", "usg"]
            onGiven: value => pane.intake.fuelIs(value)
        }
        Answer {
            visible: pane.intake.asksLoadUnit
            question: qsTr("What are its loads weighed in?")
            answers: [qsTr("kg"), qsTr("lb")]
            values: ["kg", "lb"]
            onGiven: value => pane.intake.loadsAre(value)
        }
    }
    RowList {
        id: rows
        anchors.top: head.bottom
        anchors.topMargin: Theme.gap
        anchors.bottom: foot.top
        width: parent.width
        name: qsTr("Flights found")
        model: pane.intake.rows
        delegate: Line {
            id: row
            required property int index
            required property int line
            required property string day
            required property string says
            required property string fate
            required property bool taken
            required property bool bad
            height: words.implicitHeight + 2 * Theme.snug
            Accessible.name: qsTr("Line %1: %2, %3").arg(row.line).arg(row.says).arg(row.fate)
            contentItem: Item {
                Column {
                    id: words
                    anchors.left: parent.left
                    anchors.right: fate.left
                    anchors.rightMargin: Theme.gap
                    anchors.verticalCenter: parent.verticalCenter
                    spacing: 2
                    Label {
                        width: parent.width
                        text: row.says
                        color: row.taken || row.bad ? Theme.ink : Theme.inkSoft
                        Accessible.ignored: true
                    }
                    Label {
                        width: parent.width
                        text: row.day === "" ? qsTr("line %1").arg(row.line) : qsTr("line %1 · %2").arg(row.line).arg(row.day)
                        soft: true
                        font.pixelSize: Theme.textSmall
                        Accessible.ignored: true
                    }
                }
                Label {
                    id: fate
                    anchors.right: parent.right
                    anchors.verticalCenter: parent.verticalCenter
                    width: 110
                    horizontalAlignment: Text.AlignRight
                    text: row.fate
                    font.bold: row.taken || row.bad
                    color: row.bad ? Theme.ember : Theme.ink
                    Accessible.ignored: true
                }
            }
        }
    }
    Item {
        id: foot
        anchors.bottom: parent.bottom
        width: parent.width
        height: pane.intake.acceptable > 0 ? 68 : 0
        visible: pane.intake.acceptable > 0
        Rule { width: parent.width }
        Button {
            anchors.right: parent.right
            anchors.rightMargin: Theme.wide
            anchors.verticalCenter: parent.verticalCenter
            primary: true
            enabled: !pane.intake.reading
            text: pane.intake.verb
            onClicked: pane.intake.accept()
        }
    }

    FileDialog {
        id: chooser
        title: qsTr("Choose a flight log or a track")
        nameFilters: [qsTr("Flight logs and tracks (*.csv *.txt *.igc)"), qsTr("All files (*)")]
        onAccepted: pane.intake.openFile(selectedFile)
    }

    component Answer: Column {
        id: answer
        property string question: ""
        property list<string> answers
        property list<string> values
        signal given(value: string)
        spacing: Theme.tight
        Label {
            text: answer.question
            font.bold: true
        }
        Row {
            spacing: Theme.snug
            Repeater {
                model: answer.answers
                Button {
                    required property int index
                    required property string modelData
                    text: modelData
                    onClicked: answer.given(answer.values[index])
                }
            }
        }
    }
}
