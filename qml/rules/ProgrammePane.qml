// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk
import Crownring.Rules

// One programme, its requirements, and whom the requirement chosen binds.
Item {
    id: pane

    required property RulesPlace place

    signal adopt(programme: string)
    signal dueAsked(item: string, requirement: string)

    EmptyPlace {
        anchors.fill: parent
        visible: pane.place.programme === ""
        title: qsTr("Choose a programme")
        text: qsTr("Its requirements, their sources and whom they bind are shown here.")
        shape: LineSign.Rules
    }
    Scroll {
        id: scroll
        anchors.fill: parent
        visible: pane.place.programme !== ""
        margin: Theme.broad

        Column {
            width: parent.width
            spacing: Theme.tight
            Heading {
                width: parent.width
                text: pane.place.title
            }
            Label {
                width: parent.width
                text: pane.place.about
                soft: true
            }
        }
        Button {
            primary: !pane.place.inForce
            text: pane.place.inForce ? qsTr("Adopt it for more …") : qsTr("Adopt it …")
            onClicked: pane.adopt(pane.place.programme)
        }
        Label {
            width: parent.width
            visible: text !== ""
            text: pane.place.note
        }
        Column {
            width: parent.width
            spacing: 0
            Label {
                width: parent.width
                bottomPadding: Theme.snug
                text: pane.place.bindsFrom === "" ? qsTr("Requirements, and how many items each binds on %1").arg(Day.asked)
                    : qsTr("It binds from %1. Requirements, and how many items each binds then").arg(pane.place.bindsFrom)
                soft: true
                font.pixelSize: Theme.textSmall
            }
            Rule { width: parent.width }
            Repeater {
                model: pane.place.requirements
                Column {
                    id: requirement
                    required property string value
                    required property string label
                    required property string detail
                    required property int number
                    required property int standing
                    required property bool chosen
                    width: scroll.width - 2 * Theme.broad
                    Line {
                        width: parent.width
                        height: words.implicitHeight + 2 * Theme.gap
                        chosen: requirement.chosen
                        focusPolicy: Qt.StrongFocus
                        held: visualFocus
                        Accessible.role: Accessible.Button
                        Accessible.name: qsTr("%1, binds %2, %3").arg(requirement.label).arg(requirement.number).arg(requirement.detail)
                        onClicked: pane.place.showRequirement(requirement.chosen ? "" : requirement.value)
                        Keys.onReturnPressed: clicked()
                        contentItem: Item {
                            GoreGauge {
                                id: gauge
                                anchors.verticalCenter: parent.verticalCenter
                                standing: requirement.standing
                                used: 0.4
                                decoration: true
                            }
                            Column {
                                id: words
                                anchors.left: gauge.right
                                anchors.leftMargin: Theme.gap
                                anchors.right: many.left
                                anchors.rightMargin: Theme.gap
                                anchors.verticalCenter: parent.verticalCenter
                                spacing: 2
                                Label {
                                    width: parent.width
                                    text: requirement.label
                                    font.bold: true
                                    Accessible.ignored: true
                                }
                                Label {
                                    width: parent.width
                                    text: requirement.detail
                                    soft: true
                                    font.pixelSize: Theme.textSmall
                                    Accessible.ignored: true
                                }
                            }
                            Label {
                                id: many
                                anchors.right: parent.right
                                anchors.verticalCenter: parent.verticalCenter
                                text: requirement.number
                                Accessible.ignored: true
                            }
                        }
                    }
                    Column {
                        visible: requirement.chosen
                        x: Theme.wide
                        width: parent.width - 2 * Theme.wide
                        topPadding: Theme.gap
                        bottomPadding: Theme.wide
                        spacing: Theme.gap
                        Facts {
                            width: parent.width
                            name: qsTr("Source")
                            text: requirement.chosen ? pane.place.requirementSource : ""
                        }
                        Facts {
                            width: parent.width
                            name: qsTr("The rule")
                            text: requirement.chosen ? pane.place.requirementRule : ""
                        }
                        Facts {
                            width: parent.width
                            name: qsTr("What it is")
                            text: requirement.chosen ? pane.place.requirementFacts : ""
                        }
                        Facts {
                            width: parent.width
                            name: qsTr("Note")
                            text: requirement.chosen ? pane.place.requirementNote : ""
                        }
                        Label {
                            width: parent.width
                            text: pane.place.bindsFrom !== "" ? qsTr("It binds nothing before %1.").arg(pane.place.bindsFrom)
                                : pane.place.bound.count === 0 ? qsTr("It binds nothing on this day.") : qsTr("Whom it binds, worst first")
                            soft: true
                            font.pixelSize: Theme.textSmall
                        }
                        RowList {
                            width: parent.width
                            height: Math.min(contentHeight, 420)
                            name: qsTr("Whom it binds")
                            model: requirement.chosen ? pane.place.bound : null
                            delegate: DueRow {
                                onClicked: pane.dueAsked(item, requirement)
                            }
                            onOpened: index => {
                                const bound = pane.place.bound;
                                pane.dueAsked(String(bound.data(bound.index(index, 0), DueModel.ItemRole)), pane.place.requirement);
                            }
                        }
                    }
                }
            }
        }
        Column {
            width: parent.width
            spacing: Theme.gap
            visible: pane.place.adoptions.count > 0
            Label {
                text: qsTr("Adopted for")
                soft: true
                font.pixelSize: Theme.textSmall
            }
            Repeater {
                model: pane.place.adoptions
                Facts {
                    required property string label
                    required property string detail
                    width: scroll.width - 2 * Theme.broad
                    name: label
                    text: detail
                }
            }
        }
        Caution {
            width: parent.width
            padding: 0
        }
    }
}
