// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk
import Crownring.Fabric
import Crownring.Returns
import Crownring.Components
import Crownring.Events
import Crownring.Wear
import Crownring.Balloons

// The page of a balloon or an item: what it is, what can be written about it, its items, what is due, its history.
Item {
    id: pane

    required property SubjectPage subject
    property bool phone: false
    property int leaf: 0
    property bool unfolded: false // a phone's further acts
    readonly property bool roomy: pane.unfolded || (!pane.phone && !lists.visible)
    readonly property bool ofBalloon: pane.subject.balloon !== ""
    // Where there is no fabric its leaf is left out.
    readonly property list<string> leafCodes: (pane.ofBalloon ? ["items"] : []).concat(pane.ofBalloon ? ["due"] : ["due", "parts"], pane.subject.fabricOf !== "" ? ["fabric"] : [], ["history"], wearDesk.worth ? ["wear"] : [])
    readonly property string shownLeaf: pane.leafCodes[Math.min(pane.leaf, pane.leafCodes.length - 1)] ?? ""
    readonly property alias fabric: fabricDesk
    readonly property alias returns: returnDesk
    // What grounds it comes above the rest, which waits for it: nothing moves under a finger that is on its way.
    readonly property bool awaiting: returnDesk.askingLists && !pane.atFabric
    readonly property bool atFabric: pane.shownLeaf === "fabric" // which needs the room

    function showLeaf(code: string) {
        pane.leaf = Math.max(0, pane.leafCodes.indexOf(code));
    }
    function showList() {
        lists.unfolded = true;
    }
    function showFabric(leaf: int) {
        fabricPane.leaf = leaf;
    }
    function nameOf(code: string): string {
        switch (code) {
        case "items":
            return qsTr("Items %1").arg(pane.subject.items.count);
        case "due":
            return qsTr("Due %1").arg(pane.subject.dues.count);
        case "parts":
            return components.parts.count === 0 ? qsTr("Parts") : qsTr("Parts %1").arg(components.parts.count);
        case "fabric":
            return qsTr("Fabric");
        case "wear":
            return qsTr("Wear");
        default:
            return qsTr("History");
        }
    }

    signal balloonAsked(balloon: string)
    signal itemAsked(item: string)
    signal dueAsked(item: string, requirement: string)
    signal act(kind: string, balloon: string, item: string, requirement: string)
    signal correct(entry: string)
    signal voidEntry(entry: string)
    signal inspect(balloon: string)
    signal rectify(balloon: string, item: string, requirement: string) // in a visit of its own
    signal defectOfFlight(flight: string)
    signal eventOfFlight(flight: string)
    signal notifiedAsked(given: var, about: string)
    signal readingAsked(item: string, given: var, about: string)
    signal componentAct(kind: string, item: string)

    FabricDesk {
        id: fabricDesk
        envelope: pane.shownLeaf === "fabric" && pane.visible ? pane.subject.fabricOf : ""
    }

    ComponentDesk {
        id: components
        item: pane.visible ? pane.subject.item : ""
    }
    WearDesk {
        id: wearDesk
        item: pane.visible ? pane.subject.item : ""
    }
    EventDesk {
        id: events
        balloon: pane.subject.balloon
        looking: pane.visible && pane.ofBalloon
    }
    StatusSaver { id: status }
    ReturnDesk {
        id: returnDesk
        balloon: pane.visible ? pane.subject.balloon : ""
    }
    ApproveSheet {
        id: approval
        objectName: "returns.sheet"
        desk: returnDesk
        onReadingAsked: (item, requirement) => pane.rectify(pane.subject.balloon, item, requirement)
    }

    EmptyPlace {
        anchors.fill: parent
        visible: !pane.subject.shown || !pane.subject.found
        title: pane.subject.shown ? qsTr("Not in the record on %1").arg(Day.asked) : qsTr("Choose a balloon or an item")
        text: pane.subject.shown ? qsTr("%1 was entered later. Ask for a later day.").arg(pane.subject.balloon === "" ? pane.subject.item : pane.subject.balloon)
                                 : qsTr("Its items, clocks, gauges and history are shown here.")
    }

    Column {
        id: head
        x: pane.phone ? Theme.wide : Theme.broad
        y: pane.atFabric && pane.phone ? Theme.tight : Theme.wide
        width: parent.width - 2 * head.x
        visible: pane.subject.found
        spacing: Theme.gap

        Row {
            width: parent.width
            visible: !pane.atFabric || !pane.phone
            spacing: Theme.wide
            GoreGauge {
                width: Theme.gaugeBig
                standing: pane.subject.standing
                used: pane.subject.used
                word: pane.subject.word
            }
            Column {
                width: parent.width - Theme.gaugeBig - Theme.wide
                spacing: 2
                Heading {
                    width: parent.width
                    text: pane.ofBalloon ? pane.subject.balloon : qsTr("%1 · %2").arg(pane.subject.item).arg(pane.subject.title)
                    font.pixelSize: Theme.textDisplay
                    elide: Text.ElideRight
                    maximumLineCount: 2
                }
                Label {
                    width: parent.width
                    visible: text !== ""
                    text: pane.ofBalloon ? pane.subject.title : ""
                }
                Label {
                    width: parent.width
                    text: pane.subject.clock
                }
                Label {
                    width: parent.width
                    text: pane.subject.about
                    soft: true
                    font.pixelSize: Theme.textSmall
                }
            }
        }
        Label {
            objectName: "subject.outOfService"
            width: parent.width
            visible: text !== "" && !pane.atFabric
            text: pane.subject.outOfService
            font.bold: true
        }
        Label {
            width: parent.width
            visible: pane.subject.worst !== "" && pane.subject.outOfService === "" && !pane.atFabric
            text: pane.subject.left === "" ? qsTr("%1: %2").arg(pane.subject.worst).arg(pane.subject.word)
                                           : qsTr("%1: %2 · %3").arg(pane.subject.worst).arg(pane.subject.word).arg(pane.subject.left)
            font.bold: true
        }
        Label {
            width: parent.width
            visible: text !== "" && !pane.atFabric
            text: pane.subject.unsupported
            color: Theme.ember
            font.bold: true
            Accessible.role: Accessible.AlertMessage
        }
        PendingLists {
            id: lists
            width: parent.width
            visible: (returnDesk.lists.count > 0 || returnDesk.askingLists) && !pane.atFabric
            desk: returnDesk
            phone: pane.phone
            onDueAsked: (item, requirement) => pane.dueAsked(item, requirement)
            onApprovalAsked: inspection => approval.openFor(inspection)
            onReadingAsked: (item, requirement) => pane.rectify(pane.subject.balloon, item, requirement)
            onRectifyAsked: (kind, item, requirement) => pane.act(kind, pane.subject.balloon, item, requirement)
        }
        EventNotes {
            width: parent.width
            visible: wanted && pane.ofBalloon && !pane.atFabric
            desk: events
            onNotifiedAsked: (given, about) => pane.notifiedAsked(given, about)
            onFuelAsked: pane.act("event.reported", pane.subject.balloon, "", "increased-fuel-use")
        }
        Flow {
            width: parent.width
            visible: !pane.atFabric && !pane.awaiting
            spacing: Theme.snug
            Button {
                objectName: "balloon.fly"
                visible: pane.ofBalloon
                primary: true
                text: qsTr("Log a flight …")
                onClicked: pane.act("flight.logged", pane.subject.balloon, "", "")
            }
            Button {
                objectName: "balloon.inspect"
                visible: pane.roomy && pane.ofBalloon
                text: qsTr("Inspect …")
                onClicked: pane.inspect(pane.subject.balloon)
            }
            Button {
                primary: !pane.ofBalloon
                visible: pane.roomy || !pane.ofBalloon
                text: qsTr("Requirement done …")
                onClicked: pane.act("requirement.done", pane.subject.balloon, pane.subject.item, "")
            }
            Button {
                objectName: "subject.fit"
                visible: pane.roomy && (pane.ofBalloon || (pane.subject.fittedTo === "" && components.partOf === ""))
                text: pane.ofBalloon ? qsTr("Fit an item …") : qsTr("Fit it …")
                onClicked: pane.act("item.fitted", pane.subject.balloon, pane.subject.item, "")
            }
            Button {
                objectName: "subject.remove"
                visible: pane.roomy && (pane.ofBalloon ? pane.subject.items.count > 0 : pane.subject.fittedTo !== "" && components.partOf === "")
                text: pane.ofBalloon ? qsTr("Remove an item …") : qsTr("Remove it …")
                onClicked: pane.act("item.removed", pane.ofBalloon ? pane.subject.balloon : pane.subject.fittedTo, pane.subject.item, "")
            }
            Button {
                objectName: "subject.defect"
                text: qsTr("Write a defect …")
                onClicked: pane.act("defect.found", pane.subject.balloon, pane.subject.item, "")
            }
            Button {
                objectName: "subject.report"
                visible: pane.roomy
                text: qsTr("Report an event …")
                onClicked: pane.act("event.reported", pane.subject.balloon, pane.subject.item, "")
            }
            Chip {
                objectName: "balloon.mine"
                visible: pane.roomy && pane.ofBalloon
                text: qsTr("mine")
                chosen: Habits.mine.length > 0 && Habits.isMine(pane.subject.balloon)
                Accessible.name: qsTr("One of mine")
                onClicked: Habits.setMine(pane.subject.balloon, !chosen)
            }
            Button {
                objectName: "subject.state"
                visible: pane.roomy
                text: pane.subject.outOfService === "" ? qsTr("Out of service …") : qsTr("Back in service …")
                onClicked: pane.act(pane.ofBalloon ? "balloon.state" : "item.state", pane.subject.balloon, pane.subject.item, "")
            }
            Button {
                objectName: "balloon.review"
                visible: pane.roomy && pane.ofBalloon && pane.subject.reviewed
                text: qsTr("Airworthiness review …")
                onClicked: pane.act("review.signed", pane.subject.balloon, "", "")
            }
            Button {
                objectName: "balloon.owner"
                visible: pane.roomy && pane.ofBalloon
                text: qsTr("Owner …")
                onClicked: pane.act("balloon.owned", pane.subject.balloon, "", "")
            }
            Button {
                objectName: "balloon.directivesPaper"
                visible: pane.roomy && pane.ofBalloon
                text: qsTr("Directives on paper …")
                onClicked: status.ask(StatusFile.Directives, pane.subject.balloon)
            }
            Button {
                objectName: "balloon.eventsPaper"
                visible: pane.roomy && pane.ofBalloon
                text: qsTr("Events on paper …")
                onClicked: status.ask(StatusFile.Events, pane.subject.balloon)
            }
            Button {
                objectName: "balloon.rename"
                visible: pane.roomy && pane.ofBalloon
                text: qsTr("Another registration …")
                onClicked: pane.act("balloon.renamed", pane.subject.balloon, "", "")
            }
            Button {
                visible: pane.roomy && pane.subject.fittedTo !== ""
                text: qsTr("Balloon %1").arg(pane.subject.fittedTo)
                onClicked: pane.balloonAsked(pane.subject.fittedTo)
            }
            IconButton {
                objectName: "subject.more"
                visible: pane.phone || lists.visible
                name: pane.unfolded ? qsTr("Fewer acts") : qsTr("More acts")
                shape: pane.unfolded ? LineSign.Minus : LineSign.Plus
                onClicked: pane.unfolded = !pane.unfolded
            }
        }
        Segments {
            visible: !pane.awaiting && !(lists.visible && lists.phone && lists.unfolded) // it has the whole page then
            names: Array.from(pane.leafCodes, code => pane.nameOf(code))
            codes: Array.from(pane.leafCodes, code => "subject." + code)
            current: pane.leafCodes.indexOf(pane.shownLeaf)
            onChosen: index => pane.leaf = index
        }
    }
    Item {
        anchors.top: head.bottom
        anchors.bottom: parent.bottom
        width: parent.width
        visible: pane.subject.found && !pane.awaiting

        RowList {
            id: items
            anchors.fill: parent
            visible: pane.shownLeaf === "items"
            name: qsTr("Items fitted")
            model: pane.subject.items
            delegate: ItemRow {
                onClicked: pane.itemAsked(item)
            }
            onOpened: index => pane.itemAsked(String(pane.subject.items.data(pane.subject.items.index(index, 0), ItemModel.ItemRole)))
        }
        EmptyPlace {
            anchors.fill: parent
            visible: items.visible && items.count === 0
            title: qsTr("Nothing is fitted")
            text: qsTr("Fit the envelope first, then basket, burner and cylinders.")
            action: qsTr("Fit an item …")
            onActed: pane.act("item.fitted", pane.subject.balloon, "", "")
        }
        RowList {
            id: dues
            anchors.fill: parent
            visible: pane.shownLeaf === "due"
            name: qsTr("What is due")
            model: pane.subject.dues
            delegate: DueRow {
                onClicked: pane.dueAsked(item, requirement)
            }
            footer: Caution {
                width: dues.width
            }
            onOpened: index => {
                const at = pane.subject.dues.index(index, 0);
                pane.dueAsked(String(pane.subject.dues.data(at, DueModel.ItemRole)), String(pane.subject.dues.data(at, DueModel.RequirementRole)));
            }
        }
        EmptyPlace {
            anchors.fill: parent
            visible: dues.visible && dues.count === 0
            title: pane.subject.outOfService === "" ? qsTr("No requirement is adopted for it") : qsTr("Nothing is asked of it")
            text: pane.subject.outOfService === "" ? qsTr("What it has to meet is not known. Adopt the programmes that it flies under.") : pane.subject.outOfService
            action: pane.subject.outOfService === "" ? qsTr("Adopt a programme …") : ""
            onActed: pane.act("programme.adopted", pane.subject.balloon, pane.subject.item, "")
            shape: LineSign.Rules
        }
        HistoryList {
            id: history
            anchors.fill: parent
            visible: pane.shownLeaf === "history"
            model: pane.subject.history
            onCorrect: entry => pane.correct(entry)
            onVoidEntry: entry => pane.voidEntry(entry)
            onDefectOfFlight: flight => pane.defectOfFlight(flight)
            onEventOfFlight: flight => pane.eventOfFlight(flight)
            onPhotographAsked: digest => photograph.show(digest)
        }
        ComponentPane {
            objectName: "subject.componentPane"
            anchors.fill: parent
            visible: pane.shownLeaf === "parts"
            margin: pane.phone ? Theme.wide : Theme.broad
            desk: components
            onItemAsked: item => pane.itemAsked(item)
            onComponentAct: (kind, item) => pane.componentAct(kind, item)
        }
        WearPane {
            objectName: "subject.wearPane"
            anchors.fill: parent
            visible: pane.shownLeaf === "wear"
            margin: pane.phone ? Theme.wide : Theme.broad
            desk: wearDesk
            onReadingAsked: (given, about) => pane.readingAsked(pane.subject.item, given, about)
        }
        FabricPane {
            id: fabricPane
            objectName: "subject.fabricPane"
            anchors.fill: parent
            visible: pane.shownLeaf === "fabric"
            phone: pane.phone
            desk: fabricDesk
            onReadingAsked: (given, about) => pane.readingAsked(fabricDesk.envelope, given, about)
            onLotAsked: pane.act("fabric.stated", "", fabricDesk.envelope, "")
        }
    }
    PhotographSheet { id: photograph }
}
