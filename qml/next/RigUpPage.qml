// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk
import Crownring.Next

// "If I fly this envelope with this basket, this burner and these cylinders: may I, and what governs?"
Item {
    id: page

    required property RigUpCheck check
    property bool phone: false
    readonly property string taken: page.check.balloon

    onTakenChanged: toTop.start()

    signal opened(item: string, requirement: string)

    // After the list has taken in the new kit.
    Timer {
        id: toTop
        interval: 0
        onTriggered: kit.positionViewAtBeginning()
    }

    ListAndDetail {
        id: pair
        anchors.fill: parent
        phone: page.phone
        listShare: 0.42
        detailName: qsTr("%1 items").arg(page.check.chosen)
        onClosed: pair.detailShown = false
        list: [
            RowList {
                id: kit
                anchors.fill: parent
                anchors.bottomMargin: page.phone && page.check.answered ? 72 : 0
                name: qsTr("Items to fly with")
                model: page.check.items
                header: Column {
                    width: kit.width
                    padding: Theme.wide
                    spacing: Theme.snug
                    Label {
                        width: parent.width - 2 * Theme.wide
                        text: qsTr("Take a balloon's kit, then change it item by item. The answer is for %1.").arg(Day.asked)
                        soft: true
                    }
                    Flow {
                        width: parent.width - 2 * Theme.wide
                        spacing: Theme.snug
                        ChoiceField {
                            name: qsTr("Balloon")
                            empty: qsTr("take the kit of …")
                            model: page.check.balloons
                            value: page.check.balloon
                            onPicked: value => page.check.balloon = value
                        }
                        Field {
                            width: 240
                            name: qsTr("Planned time, h:mm or hours")
                            placeholderText: name
                            wrong: page.check.durationProblem !== ""
                            onTextEdited: page.check.duration = text
                        }
                    }
                    Label {
                        objectName: "rigup.understood"
                        width: parent.width - 2 * Theme.wide
                        visible: page.check.understood !== ""
                        text: qsTr("understood as %1").arg(page.check.understood)
                        font.bold: true
                        font.pixelSize: Theme.textSmall
                    }
                    Label {
                        width: parent.width - 2 * Theme.wide
                        visible: text !== ""
                        text: page.check.durationProblem
                        color: Theme.ember
                    }
                    CheckLine {
                        text: qsTr("Only to reach the place of the inspection")
                        checked: page.check.positioning
                        onToggled: page.check.positioning = checked
                    }
                    CheckLine {
                        objectName: "rigUp.checkFlight"
                        text: qsTr("A check flight, to complete maintenance")
                        checked: page.check.checkFlight
                        onToggled: page.check.checkFlight = checked
                    }
                    Chip {
                        objectName: "rigUp.mine"
                        visible: Habits.mine.length > 0
                        text: qsTr("Mine, and the pool")
                        chosen: Habits.mineOnly
                        onClicked: Habits.mineOnly = !Habits.mineOnly
                    }
                    SearchField {
                        width: parent.width - 2 * Theme.wide
                        name: qsTr("Find an item to add")
                        onSaid: words => page.check.words = words
                    }
                }
                delegate: Line {
                    id: item
                    required property int index
                    required property string value
                    required property string label
                    required property string detail
                    required property int standing
                    required chosen
                    height: Theme.touch + Theme.gap
                    Accessible.role: Accessible.CheckBox
                    Accessible.checkable: true
                    Accessible.checked: item.chosen
                    Accessible.name: qsTr("%1, %2").arg(item.label).arg(item.detail)
                    onClicked: {
                        kit.currentIndex = item.index;
                        page.check.toggle(item.value);
                    }
                    contentItem: Item {
                        Rectangle {
                            id: box
                            anchors.verticalCenter: parent.verticalCenter
                            width: 22
                            height: 22
                            radius: Theme.radius
                            color: item.chosen ? Theme.sky : Theme.sheet
                            border.width: Theme.hair
                            border.color: item.chosen ? Theme.sky : Theme.edge
                            LineSign {
                                anchors.centerIn: parent
                                width: 16
                                height: 16
                                visible: item.chosen
                                shape: LineSign.Tick
                                tone: Theme.skyInk
                            }
                        }
                        Column {
                            anchors.left: box.right
                            anchors.leftMargin: Theme.gap
                            anchors.right: gauge.left
                            anchors.verticalCenter: parent.verticalCenter
                            Label {
                                width: parent.width
                                text: item.label
                                elide: Text.ElideRight
                                wrapMode: Text.NoWrap
                                Accessible.ignored: true
                            }
                            Label {
                                width: parent.width
                                text: item.detail
                                soft: true
                                font.pixelSize: Theme.textSmall
                                elide: Text.ElideRight
                                wrapMode: Text.NoWrap
                                Accessible.ignored: true
                            }
                        }
                        GoreGauge {
                            id: gauge
                            anchors.right: parent.right
                            anchors.verticalCenter: parent.verticalCenter
                            standing: item.standing
                            used: 0.4
                            decoration: true
                        }
                    }
                }
                footer: Column {
                    width: kit.width
                    Label {
                        width: parent.width
                        padding: Theme.wide
                        visible: page.check.leftOut > 0
                        text: qsTr("%n more: write a part of a name, a serial or a type above.", "", page.check.leftOut)
                        soft: true
                    }
                }
                onOpened: index => page.check.toggle(page.check.items.valueAt(index))
            },
            Rectangle {
                anchors.bottom: parent.bottom
                width: parent.width
                height: 72
                visible: page.phone && page.check.answered
                color: Theme.paper
                Rule { width: parent.width }
                Button {
                    anchors.fill: parent
                    anchors.margins: Theme.gap
                    primary: true
                    text: qsTr("%1 ›").arg(page.check.headline)
                    onClicked: pair.detailShown = true
                }
            }
        ]
        detail: [
            EmptyPlace {
                anchors.fill: parent
                visible: !page.check.answered
                title: page.check.problem !== "" ? qsTr("No answer") : page.check.chosen > 0 ? qsTr("Asking the record …") : qsTr("Choose a kit")
                text: page.check.problem === "" ? qsTr("An envelope, a basket, a burner and its cylinders. The record then says what stands against the flight.") : page.check.problem
            },
            Scroll {
                anchors.fill: parent
                visible: page.check.answered
                margin: Theme.broad
                Row {
                    width: parent.width
                    spacing: Theme.wide
                    Rectangle {
                        width: 8
                        height: answer.height
                        color: page.check.mayFly ? Theme.sky : Theme.ember
                    }
                    Column {
                        id: answer
                        width: parent.width - 8 - Theme.wide
                        spacing: Theme.tight
                        Heading {
                            width: parent.width
                            text: page.check.headline
                            font.pixelSize: Theme.textDisplay
                        }
                        Label {
                            width: parent.width
                            visible: text !== ""
                            text: page.check.limitations
                            font.bold: true
                        }
                        Label {
                            width: parent.width
                            text: page.check.governs
                        }
                        Label {
                            width: parent.width
                            text: qsTr("Kit: %1").arg(page.check.kit)
                            soft: true
                        }
                    }
                }
                Label {
                    visible: page.check.reasons.count > 0
                    text: page.check.reasons.count === 1 ? qsTr("1 reason") : qsTr("%1 reasons").arg(page.check.reasons.count)
                    font.bold: true
                    font.pixelSize: Theme.textLarge
                }
                Column {
                    width: parent.width
                    Repeater {
                        model: page.check.reasons
                        ReasonRow {
                            width: parent ? parent.width : 0
                            onClicked: if (requirement !== "") page.opened(item, requirement)
                        }
                    }
                }
                Label {
                    visible: page.check.notes.count > 0
                    text: qsTr("To mind, though it does not stand against the flight")
                    font.bold: true
                    font.pixelSize: Theme.textLarge
                    width: parent.width
                }
                Column {
                    width: parent.width
                    Repeater {
                        model: page.check.notes
                        ReasonRow {
                            width: parent ? parent.width : 0
                            onClicked: page.opened(item, requirement)
                        }
                    }
                }
                Caution {
                    width: parent.width
                    padding: 0
                    font.pixelSize: Theme.text
                    color: Theme.ink
                }
            }
        ]
    }
}
