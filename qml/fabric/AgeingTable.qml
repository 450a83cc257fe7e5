// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Fabric

// The readings behind the chart, one a row: in columns where there is room, else in two lines.
RowList {
    id: table

    required property AgeingChart chart
    readonly property bool wide: table.width >= 680
    readonly property list<real> columns: [0.13, 0.12, 0.27, 0.14, 0.17, 0.17]

    name: qsTr("Readings of the chart")
    model: table.chart.readings
    headerPositioning: ListView.OverlayHeader
    header: Rectangle {
        z: 2
        width: table.width
        height: table.wide ? Theme.vast : 0
        visible: table.wide
        color: Theme.paper
        Row {
            x: Theme.wide + Theme.vast
            width: parent.width - 2 * Theme.wide - Theme.vast
            anchors.verticalCenter: parent.verticalCenter
            Repeater {
                model: [qsTr("Day"), qsTr("Hours flown"), qsTr("Place"), qsTr("Lot"), qsTr("Reading"), qsTr("Judgement")]
                Label {
                    required property int index
                    required property string modelData
                    width: table.columns[index] * parent.width
                    text: modelData
                    soft: true
                    font.pixelSize: Theme.textSmall
                    elide: Text.ElideRight
                    maximumLineCount: 1
                }
            }
        }
        Rule {
            anchors.bottom: parent.bottom
            width: parent.width
        }
    }

    delegate: Line {
        id: row

        required property string day
        required property string hours
        required property string place
        required property string lot
        required property string says
        required property string judgement
        required property bool fails
        required property int kind
        required property bool other
        required property string spoken

        height: Math.max(Theme.touch, (table.wide ? cells.height : lines.height) + row.topPadding + row.bottomPadding)
        Accessible.name: row.spoken

        component Cell: Label {
            elide: Text.ElideRight
            maximumLineCount: 2
            Accessible.ignored: true
        }

        contentItem: Item {
            AgeingSign {
                id: sign
                width: Theme.gauge
                height: Theme.gauge
                anchors.verticalCenter: parent.verticalCenter
                kind: row.kind
                fails: row.fails
                hollow: row.other
                tones: [Theme.ink, Theme.ember, Theme.paper]
                Accessible.ignored: true
            }
            Row {
                id: cells
                visible: table.wide
                x: Theme.vast
                width: parent.width - x
                anchors.verticalCenter: parent.verticalCenter
                Repeater {
                    model: [row.day, row.hours, row.place, row.lot, row.says, row.judgement]
                    Cell {
                        required property int index
                        required property string modelData
                        width: table.columns[index] * cells.width
                        rightPadding: Theme.snug
                        text: modelData
                        font.bold: row.fails && index >= 4
                    }
                }
            }
            Column {
                id: lines
                visible: !table.wide
                x: Theme.vast
                width: parent.width - x
                anchors.verticalCenter: parent.verticalCenter
                spacing: 2
                Item {
                    width: parent.width
                    height: reading.height
                    Cell {
                        id: reading
                        width: parent.width - lot.width - Theme.snug
                        text: row.judgement === "" ? row.says : qsTr("%1: %2").arg(row.says).arg(row.judgement)
                        font.bold: row.fails
                    }
                    Cell {
                        id: lot
                        width: Math.min(implicitWidth, 0.5 * parent.width)
                        anchors.right: parent.right
                        anchors.baseline: reading.baseline
                        text: row.lot
                        soft: true
                        font.pixelSize: Theme.textSmall
                    }
                }
                Cell {
                    width: parent.width
                    text: qsTr("%1, %2 h, %3").arg(row.day).arg(row.hours).arg(row.place)
                    soft: true
                    font.pixelSize: Theme.textSmall
                }
            }
        }
    }
}
