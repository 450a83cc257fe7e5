// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Next

// What can be done with the visit that is chosen; what another plan would cost, to be taken or left; what would be written
// into the calendar, by whom.
Rectangle {
    id: panel

    required property PlanDesk desk
    property int chosen: -1
    property bool writing: false
    property int weeks: 0 // later than it is
    property string station: ""

    readonly property bool trying: panel.desk.tried !== ""
    readonly property bool calendar: panel.writing && !panel.trying
    readonly property bool visit: panel.chosen >= 0 && panel.chosen < panel.desk.visits.count && !panel.trying && !panel.calendar
    readonly property bool shown: panel.trying || panel.calendar || panel.visit
    readonly property real wanted: inside.implicitHeight + 2 * Theme.gap

    signal closed

    function told(role: int): var {
        return panel.desk.visits.data(panel.desk.visits.index(panel.chosen, 0), role);
    }

    visible: panel.shown
    color: Theme.sheet
    onChosenChanged: {
        panel.weeks = 0;
        panel.station = panel.desk.stationOf(panel.chosen);
    }

    Rule { width: parent.width }
    Scroll {
        anchors.fill: parent
        margin: Theme.gap
        Column {
            id: inside
            width: parent.width
            spacing: Theme.snug

            Label {
                objectName: "plan.panel"
                width: parent.width
                text: panel.trying ? panel.desk.tried : panel.calendar ? qsTr("Into the calendar, all of it or nothing:") : panel.visit ? qsTr("%1, %2").arg(panel.told(PlanModel.TitleRole)).arg(panel.desk.weekOf(panel.chosen, 0)) : ""
                font.bold: true
                font.pixelSize: Theme.textLarge
            }
            Label {
                width: parent.width
                visible: panel.trying && panel.desk.working
                text: panel.desk.step
                Accessible.role: Accessible.ProgressBar
            }
            Repeater {
                model: panel.trying ? panel.desk.means : panel.calendar ? panel.desk.change : []
                Label {
                    required property int index
                    required property string modelData
                    objectName: "plan.means." + index
                    width: inside.width
                    text: modelData
                    font.bold: panel.trying && index === 0
                }
            }
            Flow { // another plan
                width: parent.width
                visible: panel.trying
                spacing: Theme.snug
                Button {
                    objectName: "plan.take"
                    primary: true
                    enabled: panel.desk.takeable
                    text: qsTr("Take it")
                    onClicked: panel.desk.take()
                }
                Button {
                    objectName: "plan.leave"
                    text: qsTr("Leave it")
                    onClicked: panel.desk.leave()
                }
            }
            Flow { // the calendar
                width: parent.width
                visible: panel.calendar
                spacing: Theme.snug
                Field {
                    id: by
                    objectName: "plan.by"
                    width: 200
                    name: qsTr("Written by")
                    placeholderText: name
                    text: panel.desk.writer
                }
                Button {
                    objectName: "plan.write"
                    primary: true
                    enabled: by.text.trim() !== "" && panel.desk.writable
                    text: qsTr("Write it")
                    onClicked: {
                        panel.desk.intoCalendar(by.text);
                        panel.closed();
                    }
                }
                Button {
                    text: qsTr("Leave it")
                    onClicked: panel.closed()
                }
            }
            Flow { // the visit, where it stands
                width: parent.width
                visible: panel.visit && !panel.desk.overtaken && !panel.desk.working
                spacing: Theme.snug
                Button {
                    objectName: "plan.hold"
                    visible: panel.visit && !panel.told(PlanModel.HeldRole) && !panel.told(PlanModel.WrittenRole)
                    text: qsTr("Hold it there")
                    onClicked: {
                        panel.desk.hold(panel.chosen);
                        panel.closed();
                    }
                }
                Button {
                    objectName: "plan.letGo"
                    visible: panel.visit && (panel.told(PlanModel.HeldRole) || panel.told(PlanModel.WrittenRole))
                    text: qsTr("Let it go …")
                    onClicked: panel.desk.letGo(panel.chosen)
                }
                Button {
                    objectName: "plan.notThere"
                    text: qsTr("Not there in that week …")
                    onClicked: panel.desk.forbid(panel.chosen, false)
                }
                Button {
                    objectName: "plan.notThen"
                    text: qsTr("Nowhere in that week …")
                    onClicked: panel.desk.forbid(panel.chosen, true)
                }
                Button {
                    quiet: true
                    text: qsTr("Close")
                    onClicked: panel.closed()
                }
            }
            Flow { // and elsewhere
                width: parent.width
                visible: panel.visit && !panel.desk.overtaken && !panel.desk.working
                spacing: Theme.snug
                Button {
                    objectName: "plan.earlier"
                    text: qsTr("‹ a week")
                    onClicked: --panel.weeks
                }
                Button {
                    objectName: "plan.later"
                    text: qsTr("a week ›")
                    onClicked: ++panel.weeks
                }
                ChoiceField {
                    objectName: "plan.place"
                    name: qsTr("Station")
                    model: panel.desk.places
                    value: panel.station
                    onPicked: value => panel.station = value
                }
                Button {
                    objectName: "plan.move"
                    enabled: panel.visit && (panel.weeks !== 0 || panel.station !== panel.desk.stationOf(panel.chosen))
                    text: panel.visit ? qsTr("Move it to %1 …").arg(panel.desk.weekOf(panel.chosen, panel.weeks)) : ""
                    onClicked: panel.desk.move(panel.chosen, panel.weeks, panel.station)
                }
            }
        }
    }
}
