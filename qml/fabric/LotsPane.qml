// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Fabric

// The fabric of the fleet: which lots age faster than the others, and what could be found at all.
Item {
    id: pane

    required property LotsDesk desk
    property bool phone: false
    property bool withScore: true // else it stands beside

    EmptyPlace {
        anchors.fill: parent
        visible: pane.desk.channels.length === 0
        title: qsTr("No fabric is followed")
        text: qsTr("State what the manual of an envelope's type bounds: grab strength or air permeability (Bench, What releases rest on).")
        shape: LineSign.Balloons
    }
    Scroll {
        anchors.fill: parent
        visible: pane.desk.channels.length > 0
        margin: pane.phone ? Theme.gap : Theme.broad

        Segments {
            visible: pane.desk.channels.length > 1
            names: pane.desk.channels
            current: pane.desk.channel
            onChosen: index => pane.desk.channel = index
        }
        Label {
            width: parent.width
            visible: text !== ""
            text: pane.desk.problem
            color: Theme.ember
            Accessible.role: Accessible.AlertMessage
        }
        WorkBar {
            width: parent.width
            working: pane.desk.working
            progress: pane.desk.progress
            text: qsTr("Fitting how the fabric of the fleet ages …")
            stopped: !pane.desk.working && !pane.desk.ready && pane.desk.problem === ""
            beginText: qsTr("Compare the lots")
            onStop: pane.desk.stop()
            onBegin: pane.desk.begin()
        }
        Column {
            width: parent.width
            spacing: Theme.gap
            visible: pane.desk.ready
            Heading {
                width: parent.width
                text: qsTr("Is a lot ageing faster than the others of its fabric?")
            }
            LotsNote {
                width: parent.width
                visible: pane.withScore
                desk: pane.desk
            }
            Repeater {
                model: pane.desk.lots
                Row {
                    id: lot
                    required property string label
                    required property string detail
                    required property int standing
                    required property bool chosen
                    width: parent.width
                    spacing: Theme.gap
                    GoreGauge {
                        id: gauge
                        width: Theme.gauge
                        standing: lot.standing
                        used: 0
                        decoration: true
                    }
                    Column {
                        width: parent.width - gauge.width - Theme.gap
                        spacing: 2
                        Label {
                            width: parent.width
                            text: lot.label
                            font.bold: lot.chosen
                        }
                        Label {
                            width: parent.width
                            text: lot.detail
                            soft: true
                            font.pixelSize: Theme.textSmall
                        }
                    }
                }
            }
        }
        ScoreBlock {
            width: parent.width
            visible: pane.withScore && pane.desk.ready
            desk: pane.desk
        }
        Caution {
            width: parent.width
            padding: 0
        }
    }
}
