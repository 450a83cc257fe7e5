// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Dialogs
import Crownring.Theme
import Crownring.Parts
import Crownring.Lists
import Crownring.Next

// The calendar: months with dues as bands and visits as blocks. A visit is dragged, or moved by keys and buttons; what it
// means is said before it is written.
Item {
    id: pane

    required property CalendarDesk desk
    required property ChoiceModel balloons
    property bool phone: false
    property bool table: false
    property string chosen: ""      // the entry of a visit
    property string chosenTitle: ""
    readonly property real labelWidth: pane.phone ? 0 : 320

    signal planAsked(kind: string)
    signal correct(entry: string)
    signal voidEntry(entry: string)

    Binding {
        target: pane.desk
        property: "months"
        value: pane.phone ? 6 : 12
    }
    Column {
        id: top
        width: parent.width
        spacing: Theme.snug
        Flow {
            x: Theme.wide
            width: parent.width - 2 * Theme.wide
            spacing: Theme.snug
            Button {
                width: Theme.touch
                text: qsTr("‹")
                Accessible.name: qsTr("Earlier months")
                onClicked: pane.desk.turn(-3)
            }
            Button {
                text: qsTr("Now")
                onClicked: pane.desk.turnToNow()
            }
            Button {
                width: Theme.touch
                text: qsTr("›")
                Accessible.name: qsTr("Later months")
                onClicked: pane.desk.turn(3)
            }
            ChoiceField {
                objectName: "calendar.balloon"
                name: qsTr("Balloon")
                empty: qsTr("all balloons")
                model: pane.balloons
                value: pane.desk.balloon
                onPicked: value => pane.desk.balloon = value
            }
            Button {
                visible: pane.desk.balloon !== ""
                text: qsTr("All balloons")
                onClicked: pane.desk.balloon = ""
            }
            Chip {
                objectName: "calendar.table"
                text: qsTr("As a table")
                chosen: pane.table
                onClicked: pane.table = !pane.table
            }
            Button {
                text: qsTr("Plan a visit …")
                onClicked: pane.planAsked("visit.planned")
            }
            Button {
                text: qsTr("Save …")
                onClicked: {
                    saver.selectedFile = pane.desk.proposedFile();
                    saver.open();
                }
            }
        }
        Label {
            x: Theme.wide
            width: parent.width - 2 * Theme.wide
            visible: pane.desk.renewing
            text: qsTr("The record has changed: being asked again …")
            soft: true
        }
        Item { // what the months and columns are called
            id: names
            x: Theme.wide + (pane.phone ? 0 : pane.labelWidth + Theme.gap)
            width: parent.width - x - Theme.wide
            height: 20
            visible: pane.desk.ready && !(pane.table && pane.phone)
            Repeater {
                model: pane.table ? [] : pane.desk.monthNames
                Label {
                    required property int index
                    required property string modelData
                    x: (pane.desk.monthsAt[index] ?? 0) * names.width + 3
                    text: modelData
                    soft: true
                    font.pixelSize: Theme.textSmall
                }
            }
            Row {
                visible: pane.table
                Repeater {
                    model: [qsTr("first day"), qsTr("likely"), qsTr("last day")]
                    Label {
                        required property string modelData
                        width: 120
                        text: modelData
                        soft: true
                        font.pixelSize: Theme.textSmall
                    }
                }
            }
        }
        Rule { width: parent.width }
    }
    RowList {
        id: rows
        anchors.top: top.bottom
        anchors.bottom: panel.top
        width: parent.width
        visible: pane.desk.ready
        name: qsTr("Visits and dues, by day")
        model: pane.desk.lines
        Keys.onLeftPressed: event => rows.step(event, -1)
        Keys.onRightPressed: event => rows.step(event, 1)
        onOpened: index => rows.choose(index)

        function valueAt(index: int, role: int): string {
            return String(pane.desk.lines.data(pane.desk.lines.index(index, 0), role));
        }
        function choose(index: int) {
            rows.currentIndex = index;
            const entry = rows.valueAt(index, CalendarModel.EntryRole);
            if (entry !== "") {
                if (pane.chosen !== entry)
                    pane.desk.leaveIt();
                pane.chosen = entry;
                pane.chosenTitle = rows.valueAt(index, CalendarModel.TitleRole) + ", " + rows.valueAt(index, CalendarModel.DaysRole);
            } else if (pane.desk.balloon === "") {
                pane.desk.balloon = rows.valueAt(index, CalendarModel.BalloonRole);
            }
        }
        function step(event: var, days: int) {
            const entry = rows.valueAt(rows.currentIndex, CalendarModel.EntryRole);
            event.accepted = entry !== "" && entry !== "undefined";
            if (!event.accepted)
                return;
            rows.choose(rows.currentIndex);
            pane.desk.move(entry, event.modifiers & Qt.ShiftModifier ? 7 * days : days);
        }
        delegate: CalendarRow {
            id: line
            desk: pane.desk
            phone: pane.phone
            table: pane.table
            labelWidth: pane.labelWidth
            chosen: line.visit && pane.chosen === line.entry
            onClicked: rows.choose(line.index)
            onMoved: days => {
                rows.choose(line.index);
                pane.desk.move(line.entry, days);
            }
        }
        footer: Column {
            width: rows.width
            Label {
                width: parent.width
                padding: Theme.wide
                text: qsTr("A band reaches from the day before which it is due in one case of ten to that before which it is in nine; the mark is where it is as likely before as after. A mark alone is certain.")
                soft: true
                font.pixelSize: Theme.textSmall
            }
            Caution { width: parent.width }
        }
    }
    EmptyPlace {
        anchors.fill: rows
        visible: !pane.desk.ready
        title: pane.desk.problem !== "" ? qsTr("No answer") : qsTr("Asking the record …")
        text: pane.desk.problem
    }
    Rectangle { // the visit that is chosen, and what it would mean elsewhere
        id: panel
        anchors.bottom: parent.bottom
        width: parent.width
        height: pane.chosen === "" ? 0 : Math.min(inside.implicitHeight + 2 * Theme.gap, pane.height * 0.6)
        visible: pane.chosen !== ""
        color: Theme.sheet
        Rule { width: parent.width }
        Scroll {
            anchors.fill: parent
            margin: Theme.gap
            Column {
                id: inside
                width: parent.width
                spacing: Theme.snug
                Label {
                    objectName: "calendar.proposal"
                    width: parent.width
                    text: pane.desk.proposal !== "" ? pane.desk.proposal : pane.chosenTitle
                    font.bold: true
                    font.pixelSize: Theme.textLarge
                }
                Repeater {
                    model: pane.desk.means
                    Label {
                        required property string modelData
                        width: inside.width
                        text: modelData
                    }
                }
                Flow {
                    width: parent.width
                    spacing: Theme.snug
                    Repeater {
                        model: [
                            { text: qsTr("‹ a week"), days: -7 },
                            { text: qsTr("‹ a day"), days: -1 },
                            { text: qsTr("a day ›"), days: 1 },
                            { text: qsTr("a week ›"), days: 7 }
                        ]
                        Button {
                            required property var modelData
                            text: modelData.text
                            onClicked: pane.desk.move(pane.chosen, modelData.days)
                        }
                    }
                    Button {
                        visible: pane.desk.proposal === ""
                        text: qsTr("Letter to the station …")
                        onClicked: {
                            letter.selectedFile = pane.desk.proposedLetter(pane.chosen);
                            letter.open();
                        }
                    }
                    Button {
                        visible: pane.desk.proposal === ""
                        text: qsTr("Change …")
                        onClicked: pane.correct(pane.chosen)
                    }
                    Button {
                        visible: pane.desk.proposal === ""
                        text: qsTr("Take back …")
                        onClicked: pane.voidEntry(pane.chosen)
                    }
                    Button {
                        visible: pane.desk.proposal === ""
                        quiet: true
                        text: qsTr("Close")
                        onClicked: pane.chosen = ""
                    }
                }
                Flow {
                    width: parent.width
                    visible: pane.desk.proposal !== ""
                    spacing: Theme.snug
                    Field {
                        id: by
                        objectName: "calendar.by"
                        width: 200
                        name: qsTr("Written by")
                        placeholderText: name
                        text: pane.desk.writer
                    }
                    Button {
                        objectName: "calendar.move"
                        primary: true
                        enabled: by.text.trim() !== "" && !pane.desk.saving
                        text: qsTr("Move it")
                        onClicked: pane.desk.moveIt(by.text)
                    }
                    Button {
                        text: qsTr("Leave it")
                        onClicked: pane.desk.leaveIt()
                    }
                }
            }
        }
    }
    FileDialog {
        id: saver
        title: qsTr("Save the months")
        fileMode: FileDialog.SaveFile
        acceptLabel: qsTr("Save")
        defaultSuffix: "pdf"
        nameFilters: [qsTr("PDF, a page a month (*.pdf)"), qsTr("Table (*.csv)")]
        onAccepted: pane.desk.save(saver.selectedFile)
    }
    FileDialog {
        id: letter
        title: qsTr("Save the letter, its text and the file for the station")
        fileMode: FileDialog.SaveFile
        acceptLabel: qsTr("Save")
        defaultSuffix: "pdf"
        nameFilters: [qsTr("PDF (*.pdf)")]
        onAccepted: pane.desk.writeLetter(pane.chosen, letter.selectedFile)
    }
}
