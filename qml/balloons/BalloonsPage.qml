// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk
import Crownring.Fabric
import Crownring.Components
import Crownring.Balloons

// The place Balloons: the register and the items, and the page of the one that is chosen.
FocusScope {
    id: page

    property bool phone: false
    property alias detailShown: pair.detailShown
    property int leaf: 0 // 0 balloons, 1 items, 2 the fabric of the fleet, 3 the pool

    signal dueAsked(item: string, requirement: string)
    signal act(kind: string, balloon: string, item: string, requirement: string)
    signal correct(entry: string)
    signal voidEntry(entry: string)
    signal inspect(balloon: string)
    signal rectify(balloon: string, item: string, requirement: string)
    signal defectOfFlight(flight: string)
    signal eventOfFlight(flight: string)
    signal notifiedAsked(given: var, about: string)
    signal readingAsked(item: string, given: var, about: string)
    signal batchAsked(kind: string, items: var)

    readonly property alias place: balloons
    readonly property alias subject: shown
    readonly property alias pool: poolDesk

    function showBalloon(balloon: string) {
        page.leaf = 0;
        pane.leaf = 0;
        shown.showBalloon(balloon);
        pair.detailShown = true;
        register.currentIndex = balloons.balloons.find(balloon);
        register.positionViewAtIndex(register.currentIndex, ListView.Contain);
    }
    function showLots() {
        page.leaf = 2;
    }
    function showPool() {
        page.leaf = 3;
    }
    function showLeaf(code: string, fabricLeaf: int) {
        pane.showLeaf(code);
        pane.showFabric(fabricLeaf);
    }
    // What grounds the balloon that is shown: of a phone's page it is unfolded.
    function showList() {
        pane.showList();
    }
    function showItem(item: string) {
        if (page.leaf === 2)
            page.leaf = 1; // the fleet's fabric shows no item
        pane.leaf = 0;
        shown.showItem(item);
        pair.detailShown = true;
        items.currentIndex = balloons.items.find(item);
        items.positionViewAtIndex(items.currentIndex, ListView.Contain);
    }

    BalloonsPlace {
        id: balloons
        shown: page.visible
    }
    SubjectPage { id: shown }
    PoolDesk {
        id: poolDesk
        shown: page.leaf === 3 && page.visible
    }
    LotsDesk {
        id: lots
        active: page.leaf === 2 && page.visible
    }

    ListAndDetail {
        id: pair
        anchors.fill: parent
        phone: page.phone
        detailName: shown.balloon === "" ? shown.item : shown.balloon
        onClosed: pair.detailShown = false
        list: [
            Column {
                id: head
                x: Theme.wide
                width: parent.width - 2 * Theme.wide
                spacing: Theme.snug
                bottomPadding: Theme.snug
                Segments {
                    names: [qsTr("Balloons %1").arg(balloons.balloons.count), qsTr("Items %1").arg(balloons.items.count), qsTr("Fabric"), qsTr("Pool")]
                    codes: ["balloons.balloons", "balloons.items", "balloons.fabric", "balloons.pool"]
                    current: page.leaf
                    onChosen: index => page.leaf = index
                }
                Row {
                    width: parent.width
                    spacing: Theme.snug
                    visible: page.leaf < 2
                    SearchField {
                        width: parent.width - add.width - Theme.snug - (own.visible ? own.width + Theme.snug : 0) - (loose.visible ? loose.width + Theme.snug : 0) - (out.visible ? out.width + Theme.snug : 0)
                        name: page.leaf === 0 ? qsTr("Registration or name") : qsTr("Item, serial, type, place")
                        onSaid: words => balloons.words = words
                    }
                    Chip {
                        id: own
                        objectName: "balloons.mine"
                        visible: Habits.mine.length > 0
                        text: qsTr("mine")
                        chosen: Habits.mineOnly
                        onClicked: Habits.mineOnly = !Habits.mineOnly
                    }
                    Chip {
                        id: loose
                        visible: page.leaf === 1
                        text: qsTr("pool")
                        chosen: balloons.poolOnly
                        onClicked: balloons.poolOnly = !balloons.poolOnly
                    }
                    Chip {
                        id: out
                        readonly property int count: page.leaf === 0 ? balloons.balloonsOut : balloons.itemsOut
                        objectName: "balloons.outOfService"
                        visible: out.count > 0 || balloons.outOfService
                        text: qsTr("out of service %1").arg(out.count)
                        chosen: balloons.outOfService
                        onClicked: balloons.outOfService = !balloons.outOfService
                    }
                    Button {
                        id: add
                        text: qsTr("New …")
                        Accessible.name: page.leaf === 0 ? qsTr("Enter a balloon") : qsTr("Enter an item")
                        objectName: "balloons.new"
                        onClicked: page.act(page.leaf === 0 ? "whole-balloon" : "item.entered", "", "", "")
                    }
                }
            },
            RowList {
                id: register
                anchors.top: head.bottom
                anchors.bottom: parent.bottom
                width: parent.width
                visible: page.leaf === 0
                name: qsTr("Balloons")
                model: balloons.balloons
                delegate: BalloonRow {
                    chosen: shown.balloon === balloon && !page.phone
                    onClicked: {
                        register.currentIndex = index;
                        page.showBalloon(balloon);
                    }
                }
                onOpened: index => page.showBalloon(String(balloons.balloons.data(balloons.balloons.index(index, 0), BalloonModel.BalloonRole)))
            },
            RowList {
                id: items
                anchors.top: head.bottom
                anchors.bottom: parent.bottom
                width: parent.width
                visible: page.leaf === 1
                name: qsTr("Items")
                model: balloons.items
                delegate: ItemRow {
                    chosen: shown.item === item && !page.phone
                    onClicked: {
                        items.currentIndex = index;
                        page.showItem(item);
                    }
                }
                onOpened: index => page.showItem(String(balloons.items.data(balloons.items.index(index, 0), ItemModel.ItemRole)))
            },
            LotsPane {
                anchors.top: head.bottom
                anchors.bottom: parent.bottom
                width: parent.width
                visible: page.leaf === 2
                desk: lots
                phone: true // it has the width of a list
                withScore: page.phone
            },
            PoolPane {
                anchors.top: head.bottom
                anchors.bottom: parent.bottom
                width: parent.width
                visible: page.leaf === 3
                desk: poolDesk
                onItemAsked: item => page.showItem(item)
                onBatchAsked: (kind, items) => page.batchAsked(kind, items)
            },
            EmptyPlace {
                anchors.top: head.bottom
                anchors.bottom: parent.bottom
                width: parent.width
                visible: balloons.ready && page.leaf < 2 && (page.leaf === 0 ? balloons.balloons.count : balloons.items.count) === 0
                readonly property int beside: page.leaf === 0 ? balloons.balloonsBeside : balloons.itemsBeside
                title: balloons.words !== "" && beside > 0 ? (balloons.outOfService ? qsTr("Nothing of that name is out of service") : qsTr("Nothing of that name is in service"))
                    : balloons.words !== "" ? qsTr("Nothing of that name") : page.leaf === 0 ? qsTr("No balloon on this day") : qsTr("No item on this day")
                text: balloons.words !== "" && beside > 0 ? (balloons.outOfService ? qsTr("In service: %1.").arg(beside) : qsTr("Out of service: %1.").arg(beside))
                    : balloons.words !== "" ? qsTr("Search for a part of it.") : page.leaf === 0 ? qsTr("Enter its registration, what it is made of and the rules it flies under.") : qsTr("Enter the envelope, basket, burner and cylinders, each with its own clock.")
                action: balloons.words !== "" && beside > 0 ? (balloons.outOfService ? qsTr("Show what is in service") : qsTr("Show what is out of service"))
                    : balloons.words !== "" ? "" : page.leaf === 0 ? qsTr("Enter a balloon and all of it …") : qsTr("Enter an item …")
                onActed: {
                    if (balloons.words !== "")
                        balloons.outOfService = !balloons.outOfService;
                    else
                        page.act(page.leaf === 0 ? "whole-balloon" : "item.entered", "", "", "");
                }
            }
        ]
        detail: [
            Scroll {
                anchors.fill: parent
                visible: page.leaf === 2
                margin: Theme.broad
                Heading {
                    width: parent.width
                    visible: lots.ready
                    text: qsTr("What can be found")
                }
                LotsNote {
                    width: parent.width
                    visible: lots.ready
                    desk: lots
                }
                ScoreBlock {
                    width: parent.width
                    visible: lots.ready
                    desk: lots
                }
            },
            SubjectPane {
                id: pane
                anchors.fill: parent
                visible: page.leaf !== 2
                subject: shown
                phone: page.phone
                onBalloonAsked: balloon => page.showBalloon(balloon)
                onItemAsked: item => page.showItem(item)
                onDueAsked: (item, requirement) => page.dueAsked(item, requirement)
                onAct: (kind, balloon, item, requirement) => page.act(kind, balloon, item, requirement)
                onCorrect: entry => page.correct(entry)
                onVoidEntry: entry => page.voidEntry(entry)
                onInspect: balloon => page.inspect(balloon)
                onRectify: (balloon, item, requirement) => page.rectify(balloon, item, requirement)
                onDefectOfFlight: flight => page.defectOfFlight(flight)
                onEventOfFlight: flight => page.eventOfFlight(flight)
                onNotifiedAsked: (given, about) => page.notifiedAsked(given, about)
                onReadingAsked: (item, given, about) => page.readingAsked(item, given, about)
                onComponentAct: (kind, item) => page.batchAsked(kind, [item])
            }
        ]
    }
}
