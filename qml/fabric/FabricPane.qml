// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Fabric

// The fabric of one envelope: what a rigger asks of it, on what the answers rest, the map, the chart and its table.
Item {
    id: pane

    required property FabricDesk desk
    property bool phone: false
    property int leaf: 0 // 0 map, 1 chart, 2 table

    signal readingAsked(given: var, about: string)
    signal lotAsked

    EmptyPlace {
        anchors.fill: parent
        visible: !pane.desk.read
        title: pane.desk.problem === "" ? qsTr("Reading the tests of the fleet …") : qsTr("Nothing can be said of its fabric")
        text: pane.desk.problem
        shape: LineSign.Balloons
    }
    Scroll {
        anchors.fill: parent
        visible: pane.desk.read && pane.leaf !== 2
        margin: pane.phone ? Theme.gap : Theme.broad

        Loader {
            width: parent.width
            sourceComponent: head
        }
        FabricMap {
            width: parent.width
            visible: pane.leaf === 0
            desk: pane.desk
            phone: pane.phone
            onReadingAsked: (gore, row) => pane.readingAsked(pane.desk.readingAt(gore, row), pane.desk.testSays())
        }
        AgeingPane {
            width: parent.width
            visible: pane.leaf === 1
            chart: pane.desk.chart
        }
        Column {
            width: parent.width
            spacing: Theme.snug
            visible: pane.desk.pulls.count > 0
            Heading {
                width: parent.width
                text: qsTr("What the next test could tell")
            }
            PairList {
                width: parent.width
                rows: pane.desk.pulls
            }
        }
        Column {
            width: parent.width
            spacing: Theme.snug
            visible: pane.desk.sets.count > 0
            Heading {
                width: parent.width
                text: qsTr("Its panels")
            }
            PairList {
                width: parent.width
                rows: pane.desk.sets
            }
        }
        Button {
            objectName: "fabric.lot"
            text: qsTr("State of which lot its panels are …")
            onClicked: pane.lotAsked()
        }
        Label {
            width: parent.width
            visible: text !== ""
            text: pane.desk.leftOut
        }
        Label {
            width: parent.width
            visible: text !== ""
            text: pane.desk.fitted
            soft: true
            font.pixelSize: Theme.textSmall
        }
        Caution {
            width: parent.width
            padding: 0
        }
    }
    Column {
        anchors.fill: parent
        anchors.margins: pane.phone ? Theme.gap : Theme.broad
        visible: pane.desk.read && pane.leaf === 2
        spacing: Theme.gap
        Loader {
            id: above
            width: parent.width
            sourceComponent: leaves
        }
        AgeingTable {
            width: parent.width
            height: parent.height - above.height - Theme.gap
            chart: pane.desk.chart
        }
    }

    Component {
        id: head
        Column {
            spacing: Theme.gap
            Segments {
                visible: pane.desk.channels.length > 1
                names: pane.desk.channels
                current: pane.desk.channel
                onChosen: index => pane.desk.channel = index
            }
            Label {
                width: parent.width
                visible: pane.desk.problem !== ""
                text: pane.desk.problem
                color: Theme.ember
                Accessible.role: Accessible.AlertMessage
            }
            WorkBar {
                width: parent.width
                working: pane.desk.working
                stopped: pane.desk.stopped
                progress: pane.desk.progress
                text: pane.desk.work
                onStop: pane.desk.stop()
                onBegin: pane.desk.begin()
            }
            Banner {
                objectName: "fabric.standing"
                width: parent.width
                visible: text !== ""
                text: pane.desk.byReadings
                edge: pane.desk.beyond ? Theme.ember : Theme.sky
            }
            Banner {
                width: parent.width
                visible: text !== ""
                text: pane.desk.ground
                edge: Theme.heather
            }
            PairList {
                objectName: "fabric.answers"
                width: parent.width
                rows: pane.desk.answers
            }
            Label {
                width: parent.width
                visible: pane.desk.foretold
                text: pane.desk.chart.caution
                font.bold: true
            }
            Loader {
                width: parent.width
                sourceComponent: leaves
            }
        }
    }
    Component {
        id: leaves
        Segments {
            names: [qsTr("Map"), qsTr("Chart"), qsTr("Table %1").arg(pane.desk.chart.readings.count)]
            codes: ["fabric.leaf.map", "fabric.leaf.chart", "fabric.leaf.table"]
            current: pane.leaf
            onChosen: index => pane.leaf = index
        }
    }
}
