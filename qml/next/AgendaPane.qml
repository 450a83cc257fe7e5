// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk
import Crownring.Next

// The days to come: who may fly this weekend, which visit comes next, what a flight would make due, and what is planned.
Item {
    id: pane

    required property AgendaDesk desk
    property bool phone: false
    property string chosen: "" // the entry of a row

    signal planAsked(kind: string)
    signal correct(entry: string)
    signal voidEntry(entry: string)

    Component {
        id: head
        Column {
            id: column
            width: parent ? parent.width : 0
            padding: Theme.wide
            topPadding: pane.phone ? Theme.gap : Theme.wide
            spacing: pane.phone ? Theme.gap : Theme.wide
            readonly property real inner: width - 2 * Theme.wide

            Column {
                width: column.inner
                spacing: Theme.tight
                Heading {
                    width: parent.width
                    text: qsTr("Nothing against a flight, %1").arg(pane.desk.weekend)
                }
                Label {
                    objectName: "agenda.mayFly"
                    width: parent.width
                    text: pane.desk.renewing ? qsTr("The record has changed: being asked again …")
                        : pane.desk.mayFly !== "" ? pane.desk.mayFly : qsTr("No balloon, by the record.")
                    font.bold: true
                    font.pixelSize: pane.phone ? Theme.text : Theme.textLarge
                }
                Label {
                    width: parent.width
                    text: qsTr("By the record, with what is fitted to them now.")
                    soft: true
                    font.pixelSize: Theme.textSmall
                }
            }
            Column {
                width: column.inner
                spacing: Theme.tight
                Heading {
                    width: parent.width
                    text: qsTr("Next visit")
                }
                Label {
                    objectName: "agenda.nextVisit"
                    width: parent.width
                    text: pane.desk.nextVisit !== "" ? pane.desk.nextVisit : qsTr("None is planned.")
                    font.bold: true
                    font.pixelSize: pane.phone ? Theme.text : Theme.textLarge
                }
                Repeater {
                    model: pane.desk.nextCovers
                    Label {
                        required property int index
                        required property string modelData
                        objectName: "agenda.covers." + index
                        width: column.inner
                        text: qsTr("covers %1").arg(modelData)
                    }
                }
            }
            Column {
                width: column.inner
                spacing: Theme.snug
                Heading {
                    width: parent.width
                    text: qsTr("If I fly …")
                }
                Flow {
                    width: parent.width
                    spacing: Theme.snug
                    ChoiceField {
                        objectName: "agenda.balloon"
                        name: qsTr("Balloon")
                        empty: qsTr("which balloon …")
                        model: pane.desk.balloons
                        value: pane.desk.balloon
                        onPicked: value => pane.desk.balloon = value
                    }
                    Field {
                        objectName: "agenda.hours"
                        width: 150
                        name: qsTr("Hours, h:mm or decimal")
                        placeholderText: qsTr("hours: 4 or 1:30")
                        wrong: pane.desk.wrong !== ""
                        onTextEdited: pane.desk.duration = text
                    }
                    Field {
                        width: 180
                        name: qsTr("Day, YYYY-MM-DD")
                        placeholderText: qsTr("Saturday, or a day")
                        onTextEdited: pane.desk.day = text
                    }
                }
                Label {
                    width: parent.width
                    visible: text !== ""
                    text: pane.desk.wrong !== "" ? pane.desk.wrong : pane.desk.understood
                    font.pixelSize: Theme.textSmall
                    font.bold: true
                    color: pane.desk.wrong !== "" ? Theme.ember : Theme.ink
                }
                Label {
                    objectName: "agenda.answer"
                    width: parent.width
                    visible: text !== ""
                    text: pane.desk.answer
                    font.bold: true
                }
                Column {
                    width: parent.width
                    Repeater {
                        model: pane.desk.makes
                        ReasonRow {
                            width: parent ? parent.width : 0
                            leftPadding: 0
                            rightPadding: 0
                        }
                    }
                }
                Label {
                    width: parent.width
                    visible: pane.desk.answer !== ""
                    text: qsTr("Supposed only: nothing is written.")
                    soft: true
                    font.pixelSize: Theme.textSmall
                }
            }
            Column {
                width: column.inner
                visible: pane.desk.mayNot.length > 0 || pane.desk.notChecked > 0
                spacing: Theme.tight
                Heading {
                    width: parent.width
                    text: qsTr("Something against it")
                }
                Repeater {
                    model: pane.desk.mayNot
                    Label {
                        required property string modelData
                        width: column.inner
                        text: modelData
                    }
                }
                Label {
                    width: parent.width
                    visible: pane.desk.notChecked > 0
                    text: qsTr("%n balloons more: call some your own to look at those.", "", pane.desk.notChecked)
                    soft: true
                }
            }
            Chip {
                objectName: "agenda.tellsLimits"
                most: column.inner
                text: qsTr("Tell me on the desktop when a balloon comes near a limit")
                chosen: Habits.tellsLimits
                onClicked: Habits.tellsLimits = !Habits.tellsLimits
            }
        }
    }
    Component {
        id: planned
        Column {
            width: parent ? parent.width : 0
            padding: Theme.wide
            spacing: Theme.snug
            Heading {
                width: parent.width - 2 * Theme.wide
                text: qsTr("Planned for the next two weeks")
            }
            Flow {
                width: parent.width - 2 * Theme.wide
                spacing: Theme.snug
                Button {
                    objectName: "agenda.flight"
                    primary: true
                    text: qsTr("Plan a flight …")
                    onClicked: pane.planAsked("flight.planned")
                }
                Button {
                    text: qsTr("Plan a visit …")
                    onClicked: pane.planAsked("visit.planned")
                }
                Button {
                    text: qsTr("A pause, a festival, a sale …")
                    onClicked: pane.planAsked("use.planned")
                }
            }
            Label {
                width: parent.width - 2 * Theme.wide
                visible: pane.desk.agenda.count === 0
                text: qsTr("Nothing is planned.")
                soft: true
            }
        }
    }

    Scroll {
        id: left
        width: Math.round(parent.width * 0.48)
        height: parent.height
        visible: !pane.phone && pane.desk.ready
        margin: 0
        Loader {
            width: left.width
            active: !pane.phone
            sourceComponent: head
        }
    }
    Rule {
        x: left.width
        width: Theme.hair
        height: parent.height
        visible: left.visible
    }
    RowList {
        id: rows
        x: pane.phone ? 0 : left.width + Theme.hair
        width: parent.width - x
        height: parent.height
        visible: pane.desk.ready
        name: qsTr("What is planned")
        model: pane.desk.agenda
        header: Column {
            width: rows.width
            onHeightChanged: {
                if (!rows.scrolled)
                    toTop.restart();
            }
            Loader {
                width: parent.width
                active: pane.phone
                visible: active
                sourceComponent: head
            }
            Loader {
                width: parent.width
                sourceComponent: planned
            }
            Rule { width: parent.width }
        }
        delegate: AgendaRow {
            id: line
            chosen: pane.chosen === line.entry
            onClicked: {
                rows.currentIndex = line.index;
                rows.choose(line.entry);
            }
            onChangeAsked: pane.correct(line.entry)
            onTakeBackAsked: pane.voidEntry(line.entry)
        }
        footer: Caution {
            width: rows.width
        }
        // What stands over the rows grows once it is there; until somebody scrolls it is looked at from its beginning.
        property bool scrolled: false
        onMovementStarted: rows.scrolled = true
        onOriginYChanged: {
            if (!rows.scrolled)
                toTop.restart();
        }
        onContentHeightChanged: {
            if (!rows.scrolled)
                toTop.restart();
        }
        onOpened: index => rows.choose(String(pane.desk.agenda.data(pane.desk.agenda.index(index, 0), AgendaModel.EntryRole)))

        function choose(entry: string) {
            rows.scrolled = true;
            pane.chosen = pane.chosen === entry ? "" : entry;
        }
    }
    Timer {
        id: toTop
        interval: 0
        onTriggered: rows.positionViewAtBeginning()
    }
    EmptyPlace {
        anchors.fill: parent
        visible: !pane.desk.ready
        title: pane.desk.problem !== "" ? qsTr("No answer") : qsTr("Asking the record …")
        text: pane.desk.problem
    }
}
