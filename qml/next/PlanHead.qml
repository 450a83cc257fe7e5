// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Next

// What visits are planned with, what the plan is worth, what cannot be kept and why, what is wished of it.
Column {
    id: head

    required property PlanDesk desk
    property bool unfolded: false // what is not planned for
    readonly property real inner: head.width - 2 * Theme.wide

    signal stationsAsked
    signal calendarAsked

    component Told: Column {
        id: told
        property string title
        property var lines: [] // texts
        width: head.inner
        visible: told.lines.length > 0
        spacing: Theme.tight
        Heading {
            width: parent.width
            text: told.title
        }
        Repeater {
            model: told.lines
            Label {
                required property string modelData
                width: told.width
                text: modelData
            }
        }
    }

    padding: Theme.wide
    spacing: Theme.wide

    Column {
        width: head.inner
        spacing: Theme.snug
        Label {
            objectName: "plan.stations"
            width: parent.width
            text: head.desk.stations !== "" ? head.desk.stations : qsTr("First choose the file of stations: which there are, when they are open, how many balloons they take in a week, what a visit, the way there and the work cost.")
            font.bold: head.desk.stations !== ""
        }
        Flow {
            width: parent.width
            spacing: Theme.snug
            Repeater {
                model: [6, 12, 24]
                Chip {
                    required property int modelData
                    objectName: "plan.months." + modelData
                    text: qsTr("%n months", "", modelData)
                    chosen: head.desk.months === modelData
                    onClicked: head.desk.months = modelData
                }
            }
            Repeater {
                model: [1, 5, 10]
                Chip {
                    required property int modelData
                    text: qsTr("chance of a lapse up to %1 %").arg(modelData)
                    Accessible.name: qsTr("A chance of up to %1 % that something runs out before its visit").arg(modelData)
                    chosen: head.desk.percent === modelData
                    onClicked: head.desk.percent = modelData
                }
            }
        }
        Flow {
            width: parent.width
            spacing: Theme.snug
            Button {
                objectName: "plan.plan"
                primary: true
                visible: !head.desk.working
                enabled: head.desk.stations !== ""
                text: head.desk.planned ? qsTr("Plan again") : qsTr("Plan the visits")
                onClicked: head.desk.plan()
            }
            Button {
                objectName: "plan.stop"
                visible: head.desk.working
                text: qsTr("Stop")
                onClicked: head.desk.stop()
            }
            Button {
                objectName: "plan.choose"
                text: qsTr("Choose the stations …")
                onClicked: head.stationsAsked()
            }
        }
        Label {
            objectName: "plan.step"
            width: parent.width
            visible: head.desk.working
            text: head.desk.step
            font.bold: true
            Accessible.role: Accessible.ProgressBar
        }
        Label {
            objectName: "plan.problem"
            width: parent.width
            visible: text !== ""
            text: head.desk.problem
            color: Theme.ember
            Accessible.role: Accessible.AlertMessage
        }
        Label {
            width: parent.width
            visible: head.desk.overtaken
            text: qsTr("The record or the day has changed since this was planned: plan again.")
            font.bold: true
            Accessible.role: Accessible.AlertMessage
        }
    }
    Column {
        width: head.inner
        visible: head.desk.planned
        spacing: Theme.snug
        Repeater {
            model: head.desk.worth
            Label {
                required property int index
                required property string modelData
                objectName: "plan.worth." + index
                width: head.inner
                text: modelData
                font.bold: index < 2
            }
        }
        Button {
            objectName: "plan.calendar"
            visible: head.desk.change.length > 0
            enabled: head.desk.writable
            text: qsTr("Into the calendar …")
            onClicked: head.calendarAsked()
        }
        Label {
            width: parent.width
            visible: head.desk.change.length === 0
            text: qsTr("The calendar has these visits already.")
            soft: true
        }
    }
    Column {
        width: head.inner
        visible: head.desk.wishes.count > 0
        spacing: Theme.tight
        Heading {
            width: parent.width
            text: qsTr("As you wish")
        }
        Repeater {
            model: head.desk.wishes
            Item {
                id: wish
                required property int index
                required property string label
                width: head.inner
                height: Math.max(words.implicitHeight, drop.height)
                Label {
                    id: words
                    anchors.verticalCenter: parent.verticalCenter
                    width: parent.width - drop.width - Theme.gap
                    text: wish.label
                }
                Button {
                    id: drop
                    anchors.right: parent.right
                    enabled: !head.desk.working
                    text: qsTr("No longer …")
                    Accessible.name: qsTr("No longer: %1").arg(wish.label)
                    onClicked: head.desk.dropWish(wish.index)
                }
            }
        }
    }
    Told {
        title: qsTr("Cannot be kept")
        lines: head.desk.notKept
    }
    Told {
        title: qsTr("Planned in the record, and no part of this")
        lines: head.desk.loose
    }
    Button {
        visible: head.desk.leftOut.length > 0
        text: head.unfolded ? qsTr("Fold what is not planned for") : qsTr("What is not planned for …")
        onClicked: head.unfolded = !head.unfolded
    }
    Told {
        title: qsTr("Not planned for")
        lines: head.unfolded ? head.desk.leftOut : []
    }
}
