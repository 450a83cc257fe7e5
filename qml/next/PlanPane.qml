// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Dialogs
import Crownring.Theme
import Crownring.Parts
import Crownring.Next

// The visit planner: by which stations, what the plan is worth, its visits by week; below what is done with one of them.
Item {
    id: pane

    required property PlanDesk desk
    property bool phone: false
    property int chosen: -1 // a row
    property bool writing: false

    Connections {
        target: pane.desk
        function onTriedChanged() {
            pane.writing = false;
            if (pane.desk.tried === "")
                pane.chosen = -1;
        }
    }
    Component {
        id: head
        PlanHead {
            width: parent ? parent.width : 0
            desk: pane.desk
            onStationsAsked: files.open()
            onCalendarAsked: {
                pane.chosen = -1;
                pane.writing = true;
            }
        }
    }
    Scroll {
        id: left
        width: Math.round(parent.width * 0.42)
        anchors.top: parent.top
        anchors.bottom: parent.bottom
        visible: !pane.phone
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
        anchors.top: parent.top
        anchors.bottom: panel.top
        width: parent.width - x
        name: qsTr("Visits of the plan, by week")
        model: pane.desk.visits
        section.property: "week"
        section.delegate: Heading {
            required property string section
            width: rows.width
            padding: Theme.wide
            bottomPadding: Theme.tight
            text: section
        }
        header: Column {
            width: rows.width
            Loader {
                width: parent.width
                active: pane.phone
                visible: active
                sourceComponent: head
            }
            Label {
                width: parent.width
                visible: !pane.phone && pane.desk.visits.count === 0
                padding: Theme.wide
                text: pane.desk.planned ? qsTr("No visit is needed within that time.") : qsTr("The visits stand here once they are planned.")
                soft: true
            }
        }
        delegate: PlanRow {
            id: line
            chosen: pane.chosen === line.index
            onClicked: rows.choose(line.index)
        }
        footer: Caution {
            width: rows.width
        }
        onOpened: index => rows.choose(index)

        function choose(index: int) {
            rows.currentIndex = index;
            if (pane.desk.tried !== "")
                return;
            pane.writing = false;
            pane.chosen = pane.chosen === index ? -1 : index;
        }
    }
    PlanPanel {
        id: panel
        x: rows.x
        anchors.bottom: parent.bottom
        width: rows.width
        height: panel.shown ? Math.min(panel.wanted, pane.height * 0.6) : 0
        desk: pane.desk
        chosen: pane.chosen
        writing: pane.writing
        onClosed: {
            pane.chosen = -1;
            pane.writing = false;
        }
    }
    FileDialog {
        id: files
        title: qsTr("The file of stations")
        acceptLabel: qsTr("Open")
        nameFilters: [qsTr("Stations (*.json)"), qsTr("All files (*)")]
        onAccepted: pane.desk.chooseStations(files.selectedFile)
    }
}
