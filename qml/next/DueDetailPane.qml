// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk
import Crownring.Next

// Everything behind one due row.
Item {
    id: pane

    required property DueDetail detail

    signal balloonAsked(balloon: string)
    signal itemAsked(item: string)
    signal fabricAsked(item: string)
    signal directiveAsked(directive: string)
    signal act(kind: string, balloon: string, item: string, requirement: string)

    EmptyPlace {
        anchors.fill: parent
        visible: !pane.detail.found
        title: qsTr("Choose a row")
        text: qsTr("Its limits, its source and what it counts from are shown here.")
        shape: LineSign.Next
    }
    Scroll {
        id: scroll
        anchors.fill: parent
        visible: pane.detail.found
        margin: Theme.broad

        Row {
            width: parent.width
            spacing: Theme.wide
            GoreGauge {
                width: Theme.gaugeBig
                standing: pane.detail.standing
                used: pane.detail.used
                word: pane.detail.standingWord
            }
            Column {
                width: parent.width - Theme.gaugeBig - Theme.wide
                anchors.verticalCenter: parent.verticalCenter
                spacing: Theme.tight
                Heading {
                    width: parent.width
                    text: pane.detail.title
                }
                Label {
                    width: parent.width
                    text: pane.detail.left === "" ? pane.detail.standingWord
                                                  : qsTr("%1 · %2").arg(pane.detail.standingWord).arg(pane.detail.left)
                    font.bold: true
                    font.pixelSize: Theme.textLarge
                }
                Label {
                    width: parent.width
                    text: pane.detail.where
                    soft: true
                }
            }
        }
        Flow {
            width: parent.width
            spacing: Theme.snug
            Button {
                primary: true
                visible: !pane.detail.fabric && !pane.detail.list && !pane.detail.directive
                text: pane.detail.defect ? qsTr("Rectify the defect …") : qsTr("Requirement done …")
                onClicked: pane.act(pane.detail.defect ? "defect.cleared" : "requirement.done", pane.detail.balloon, pane.detail.item, pane.detail.requirement)
            }
            Button {
                objectName: "due.defer"
                visible: pane.detail.deferrable
                text: qsTr("Defer the defect …")
                onClicked: pane.act("defect.deferred", pane.detail.balloon, pane.detail.item, pane.detail.requirement)
            }
            Button {
                objectName: "due.fabric"
                primary: true
                visible: pane.detail.fabric
                text: qsTr("Its fabric")
                onClicked: pane.fabricAsked(pane.detail.item)
            }
            Button {
                objectName: "due.directive"
                primary: true
                visible: pane.detail.directive
                text: qsTr("The directive, to answer it …")
                onClicked: pane.directiveAsked(pane.detail.directiveNumber)
            }
            Button {
                text: qsTr("Item %1").arg(pane.detail.item)
                onClicked: pane.itemAsked(pane.detail.item)
            }
            Button {
                visible: pane.detail.balloon !== ""
                text: qsTr("Balloon %1").arg(pane.detail.balloon)
                onClicked: pane.balloonAsked(pane.detail.balloon)
            }
        }
        Label {
            width: parent.width
            visible: text !== ""
            text: pane.detail.because
        }
        Label {
            width: parent.width
            visible: text !== ""
            text: pane.detail.remark
            font.bold: true
        }
        Photographs {
            width: parent.width
            digests: pane.detail.photographs
            of: pane.detail.title
            onShown: digest => photograph.show(digest)
        }
        Rule { width: parent.width }
        Column {
            width: parent.width
            spacing: Theme.snug
            visible: pane.detail.limits.count > 0
            Label {
                text: qsTr("Limits on %1").arg(Day.asked)
                soft: true
                font.pixelSize: Theme.textSmall
            }
            Repeater {
                model: pane.detail.limits
                Row {
                    id: limit
                    required property string label
                    required property string detail
                    required property int standing
                    width: scroll.width - 2 * Theme.broad
                    spacing: Theme.gap
                    GoreGauge {
                        width: 16
                        standing: limit.standing
                        used: 0.4
                        decoration: true
                    }
                    Column {
                        width: parent.width - 16 - Theme.gap
                        Label {
                            width: parent.width
                            text: limit.label
                            font.bold: true
                        }
                        Label {
                            width: parent.width
                            text: limit.detail
                        }
                    }
                }
            }
        }
        Facts {
            width: parent.width
            name: qsTr("The rule")
            text: pane.detail.rule
        }
        Facts {
            width: parent.width
            name: qsTr("Source")
            text: pane.detail.source
        }
        Facts {
            width: parent.width
            name: qsTr("Programme")
            text: pane.detail.programme
        }
        Facts {
            width: parent.width
            name: qsTr("Note of the programme")
            text: pane.detail.note
        }
    }
    PhotographSheet { id: photograph }
}
