// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Bench

// What was found, what grounds the balloon, and what was done about it.
Item {
    id: pane

    required property InspectionDesk desk
    property bool phone: false

    readonly property string inspection: pane.desk.inspection
    onInspectionChanged: scroll.contentY = 0

    signal act(kind: string, defect: string, item: string)
    signal readAgainAsked(defect: string)
    signal mendAsked(entry: string)

    Scroll {
        id: scroll
        anchors.fill: parent
        margin: pane.phone ? Theme.wide : Theme.broad
        spacing: Theme.gap

        Flow {
            width: parent.width
            visible: pane.desk.open
            spacing: Theme.snug
            Button {
                objectName: "bench.defect.found"
                primary: true
                text: qsTr("Write down a defect …")
                onClicked: pane.act("defect.found", "", "")
            }
            Button {
                objectName: "bench.performed"
                text: qsTr("Describe work …")
                onClicked: pane.act("work.performed", "", "")
            }
            Button {
                objectName: "bench.repair"
                text: qsTr("Repair …")
                onClicked: pane.act("repair.made", "", "")
            }
            Button {
                objectName: "bench.replaced"
                text: qsTr("Part replaced …")
                onClicked: pane.act("part.replaced", "", "")
            }
        }
        Label {
            width: parent.width
            objectName: "bench.defects.said"
            text: pane.desk.defectsSaid
            font.bold: pane.desk.barring > 0
        }
        Column {
            width: parent.width
            Repeater {
                model: pane.desk.defects
                Item {
                    id: row
                    required property int index
                    required property string value
                    required property string label
                    required property string detail
                    required property int number
                    required property int standing
                    required property bool chosen // it bars flight
                    readonly property string item: pane.desk.itemOfDefect(row.value)
                    width: scroll.width - 2 * scroll.margin
                    height: words.implicitHeight + 2 * Theme.gap
                    GoreGauge {
                        id: gauge
                        y: Theme.gap
                        standing: row.standing
                        used: 0.4
                        decoration: true
                    }
                    Column {
                        id: words
                        y: Theme.gap
                        anchors.left: gauge.right
                        anchors.leftMargin: Theme.gap
                        anchors.right: parent.right
                        spacing: Theme.tight
                        Label {
                            width: parent.width
                            text: row.label
                            font.bold: true
                        }
                        Label {
                            width: parent.width
                            text: row.detail
                            color: row.chosen ? Theme.ember : Theme.inkSoft
                            font.bold: row.chosen
                        }
                        Label {
                            width: parent.width
                            text: row.value
                            soft: true
                            font.pixelSize: Theme.textSmall
                        }
                        Photographs {
                            width: parent.width
                            digests: pane.desk.defectPhotographs[row.value] ?? []
                            of: row.label
                            onShown: digest => photograph.show(digest)
                        }
                        Label {
                            width: parent.width
                            visible: pane.desk.open && row.number === 2
                            text: qsTr("A reading is beyond its limit. Write down the repair or the new part and take the reading again in the same place; then rectify it.")
                        }
                        Flow {
                            width: parent.width
                            spacing: Theme.snug
                            visible: pane.desk.open
                            Button {
                                objectName: "bench.defect." + row.index + ".repair"
                                visible: row.number === 2
                                text: qsTr("Repair …")
                                Accessible.name: qsTr("Repair: %1").arg(row.label)
                                onClicked: pane.act("repair.made", row.value, row.item)
                            }
                            Button {
                                objectName: "bench.defect." + row.index + ".replaced"
                                visible: row.number === 2
                                text: qsTr("Part replaced …")
                                Accessible.name: qsTr("Part replaced: %1").arg(row.label)
                                onClicked: pane.act("part.replaced", row.value, row.item)
                            }
                            Button {
                                objectName: "bench.defect." + row.index + ".again"
                                visible: pane.desk.isReadAgain(row.value)
                                text: qsTr("Read it again ›")
                                Accessible.name: qsTr("Read it again: %1").arg(row.label)
                                onClicked: pane.readAgainAsked(row.value)
                            }
                            Button {
                                objectName: "bench.defect." + row.index + ".clear"
                                text: qsTr("Rectify …")
                                Accessible.name: qsTr("Rectify: %1").arg(row.label)
                                onClicked: pane.act("defect.cleared", row.value, row.item)
                            }
                            Button {
                                objectName: "bench.defect." + row.index + ".defer"
                                visible: row.number === 0 // what is a danger to flight waits for nobody
                                text: qsTr("Defer …")
                                Accessible.name: qsTr("Defer: %1").arg(row.label)
                                onClicked: pane.act("defect.deferred", row.value, row.item)
                            }
                        }
                    }
                    Rule {
                        anchors.bottom: parent.bottom
                        width: parent.width
                    }
                }
            }
        }
        Repeater {
            model: pane.desk.listedBesides
            Item {
                id: listed
                required property int index
                required property string label
                required property string detail
                required property int standing
                required property bool chosen // it still stands
                objectName: "bench.listed." + listed.index
                width: scroll.width - 2 * scroll.margin
                height: named.implicitHeight + 2 * Theme.gap
                GoreGauge {
                    id: sign
                    y: Theme.gap
                    standing: listed.standing
                    used: 0.4
                    decoration: true
                }
                Column {
                    id: named
                    y: Theme.gap
                    anchors.left: sign.right
                    anchors.leftMargin: Theme.gap
                    anchors.right: parent.right
                    spacing: Theme.tight
                    Label {
                        width: parent.width
                        text: listed.label
                        font.bold: true
                    }
                    Label {
                        width: parent.width
                        text: listed.detail
                        color: listed.chosen ? Theme.ember : Theme.inkSoft
                        font.bold: listed.chosen
                    }
                }
                Rule {
                    anchors.bottom: parent.bottom
                    width: parent.width
                }
            }
        }
        Heading {
            width: parent.width
            visible: pane.desk.repairs.count > 0
            text: qsTr("Done in this visit")
            font.pixelSize: Theme.textLarge
        }
        Repeater {
            model: pane.desk.repairs
            Column {
                id: made
                required property int index
                required property string value
                required property string label
                required property string detail
                width: scroll.width - 2 * scroll.margin
                Label {
                    width: parent.width
                    text: made.label
                }
                Label {
                    width: parent.width
                    text: made.detail
                    soft: true
                    font.pixelSize: Theme.textSmall
                }
                Button {
                    objectName: "bench.made." + made.index + ".correct"
                    quiet: true
                    text: qsTr("Correct …")
                    Accessible.name: qsTr("Correct: %1").arg(made.label)
                    onClicked: pane.mendAsked(made.value)
                }
            }
        }
    }
    PhotographSheet { id: photograph }
}
