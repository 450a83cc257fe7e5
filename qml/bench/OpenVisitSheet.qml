// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Lists
import Crownring.Parts
import Crownring.Desk
import Crownring.Bench

// "The balloon came in": which one, what is to be done. What is proposed is right for a balloon: choose it and open.
Sheet {
    id: sheet

    signal inspectionOpened(inspection: string)
    signal eventAsked(balloon: string)
    signal enterAsked // a balloon, of which the record has none

    readonly property alias visit: opening

    title: qsTr("Open a visit")
    widest: 720
    tallest: 760

    function begin(balloon: string) {
        opening.begin(balloon);
        sheet.show();
    }
    function beginRectification(balloon: string, item: string, requirement: string) {
        opening.beginRectification(balloon, item, requirement);
        sheet.show();
    }
    function show() {
        person.text = opening.inspector;
        order.text = "";
        search.clear();
        sheet.open();
    }

    onOpened: (opening.balloon === "" ? balloon : act).forceActiveFocus(Qt.TabFocusReason)

    VisitOpening {
        id: opening
        onOpened: inspection => {
            sheet.close();
            sheet.inspectionOpened(inspection);
        }
    }

    Scroll {
        id: scroll
        anchors.fill: parent
        anchors.bottomMargin: foot.height
        spacing: Theme.gap

        Grid {
            id: fields
            width: parent.width
            columns: width < 560 ? 1 : 2
            spacing: Theme.gap
            readonly property real cell: fields.columns === 1 ? width : (width - Theme.gap) / 2
            Column {
                width: fields.cell
                spacing: Theme.tight
                Label { text: qsTr("Balloon") }
                ChoiceField {
                    id: balloon
                    objectName: "bench.visit.balloon"
                    width: parent.width
                    name: qsTr("Balloon")
                    model: opening.balloons
                    value: opening.balloon
                    onPicked: value => {
                        opening.balloon = value;
                        if (value !== "")
                            act.forceActiveFocus(Qt.TabFocusReason);
                    }
                }
            }
            Column {
                width: fields.cell
                spacing: Theme.tight
                Label { text: qsTr("Kind of visit") }
                ChoiceField {
                    objectName: "bench.visit.kind"
                    width: parent.width
                    name: qsTr("Kind of visit")
                    model: opening.visits
                    value: opening.visit
                    onPicked: value => opening.visit = value
                }
            }
            Column {
                width: fields.cell
                spacing: Theme.tight
                Label { text: qsTr("Inspector") }
                Field {
                    id: person
                    objectName: "bench.visit.inspector"
                    width: parent.width
                    name: qsTr("Inspector")
                    placeholderText: qsTr("who writes at this bench")
                    onTextEdited: opening.inspector = text
                }
            }
            Column {
                width: fields.cell
                spacing: Theme.tight
                Label { text: qsTr("Work order") }
                Field {
                    id: order
                    objectName: "bench.visit.order"
                    width: parent.width
                    name: qsTr("Work order")
                    placeholderText: qsTr("the shop's own number")
                    onTextEdited: opening.order = text
                }
            }
        }

        Group {
            title: qsTr("To be done")
            text: Fleet.empty ? qsTr("The record has no balloon and no items yet. An inspection is opened on some: enter them first.")
                : opening.chosenItems === 0 ? qsTr("Choose a balloon or items: what is due on them is proposed.")
                : opening.eventUnknown ? qsTr("No event is reported that asks for such a visit. What is looked at depends on what happened: report that first.")
                : !opening.known ? qsTr("Reading from the record what is due …")
                : opening.proposals.count === 0 && opening.directives.count > 0 ? qsTr("Directives are open. The checklist covers the rest of the visit.")
                : opening.proposals.count === 0 ? qsTr("Nothing is due or nearly due on them. The checklist covers the visit.")
                : qsTr("%1 of %2 proposed. What is mandatory stands first.").arg(opening.chosenWork).arg(opening.proposals.count)
        }
        Button {
            objectName: "bench.visit.enter"
            visible: Fleet.empty
            primary: true
            text: qsTr("Enter the first balloon …")
            onClicked: {
                sheet.close();
                sheet.enterAsked();
            }
        }
        Button {
            objectName: "bench.visit.event"
            visible: opening.eventUnknown
            primary: true
            text: qsTr("Report an event …")
            onClicked: sheet.eventAsked(opening.balloon)
        }
        Column {
            objectName: "bench.visit.directives"
            width: parent.width
            visible: opening.directives.count > 0
            spacing: Theme.snug
            Label {
                width: parent.width
                text: qsTr("Directives to be answered in this visit, on their line of the checklist")
                font.bold: true
            }
            Repeater {
                model: opening.directives
                Item {
                    id: open
                    required property int index
                    required property string label
                    required property string detail
                    required property int standing
                    objectName: "bench.visit.directive." + open.index
                    width: scroll.width - 2 * Theme.wide
                    height: Math.max(gauge.height, said.implicitHeight)
                    Column {
                        id: said
                        anchors.right: gauge.left
                        anchors.rightMargin: Theme.snug
                        anchors.left: parent.left
                        anchors.leftMargin: Theme.gap
                        anchors.verticalCenter: parent.verticalCenter
                        Label {
                            width: parent.width
                            text: open.label
                        }
                        Label {
                            width: parent.width
                            text: open.detail
                            soft: true
                            font.pixelSize: Theme.textSmall
                        }
                    }
                    GoreGauge {
                        id: gauge
                        anchors.right: parent.right
                        anchors.rightMargin: Theme.gap
                        anchors.verticalCenter: parent.verticalCenter
                        standing: open.standing
                        used: 0.4
                        decoration: true
                    }
                }
            }
        }
        Column {
            width: parent.width
            Repeater {
                model: opening.proposals
                Column {
                    id: proposal
                    required property int index
                    required property string value
                    required property string label
                    required property string detail
                    required property int number // 0 mandatory, 1 recommended
                    required property int standing
                    required property bool chosen
                    readonly property bool first: proposal.index === 0
                        || proposal.number !== opening.proposals.data(opening.proposals.index(proposal.index - 1, 0), ChoiceModel.NumberRole)
                    width: scroll.width - 2 * Theme.wide
                    Label {
                        width: parent.width
                        visible: proposal.first
                        topPadding: Theme.snug
                        text: proposal.number === 0 ? qsTr("Mandatory") : qsTr("Recommended")
                        soft: true
                    }
                    TickRow {
                        objectName: "bench.visit.work." + proposal.index
                        width: parent.width
                        leftPadding: Theme.gap
                        rightPadding: Theme.gap
                        label: proposal.label
                        detail: proposal.detail
                        standing: proposal.standing
                        chosen: proposal.chosen
                        onClicked: opening.toggleWork(proposal.value)
                    }
                }
            }
        }
        Group {
            title: qsTr("Items that come along")
            text: opening.balloon === "" ? qsTr("%1 chosen. Loose items are listed; words find any other.").arg(opening.chosenItems)
                                         : qsTr("%1 chosen. Words find others, of the pool or of another balloon.").arg(opening.chosenItems)
        }
        SearchField {
            id: search
            objectName: "bench.visit.words"
            width: parent.width
            name: qsTr("Find an item to add")
            onSaid: words => opening.words = words
        }
        Column {
            width: parent.width
            Repeater {
                model: opening.items
                TickRow {
                    required property int index
                    required property string value
                    objectName: "bench.visit.item." + index
                    width: scroll.width - 2 * Theme.wide
                    leftPadding: Theme.gap
                    rightPadding: Theme.gap
                    onClicked: opening.toggleItem(value)
                }
            }
        }
    }
    Item {
        id: foot
        anchors.bottom: parent.bottom
        width: parent.width
        height: Math.max(68, problem.implicitHeight + 2 * Theme.snug)
        Rule { width: parent.width }
        Label {
            id: problem
            anchors.left: parent.left
            anchors.leftMargin: Theme.wide
            anchors.right: act.left
            anchors.rightMargin: Theme.gap
            anchors.verticalCenter: parent.verticalCenter
            text: opening.problem
            color: Theme.ember
            font.bold: true
            font.pixelSize: Theme.textSmall
            Accessible.role: Accessible.AlertMessage
        }
        Button {
            id: act
            objectName: "bench.visit.open"
            anchors.right: parent.right
            anchors.rightMargin: Theme.wide
            anchors.verticalCenter: parent.verticalCenter
            primary: true
            enabled: opening.canOpen
            text: qsTr("Open the visit")
            onClicked: opening.openIt()
        }
    }

    component Group: Column {
        id: group
        property string title: ""
        property string text: ""
        width: parent ? parent.width : 0
        topPadding: Theme.snug
        Label {
            width: parent.width
            text: group.title
            font.bold: true
            font.pixelSize: Theme.textLarge
        }
        Label {
            width: parent.width
            text: group.text
            soft: true
            font.pixelSize: Theme.textSmall
        }
    }
}
