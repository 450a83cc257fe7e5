// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk
import Crownring.Next

// The place Next: the horizon, the list under it, and the rig-up check.
FocusScope {
    id: page

    property bool phone: false
    property alias detailShown: pair.detailShown
    property int leaf: 0 // 0 what comes next, 1 rig-up check
    property bool unfolded: false // a phone's fields of the filter

    signal balloonAsked(balloon: string)
    signal itemAsked(item: string)
    signal fabricAsked(item: string)
    signal act(kind: string, balloon: string, item: string, requirement: string)

    readonly property alias place: next
    readonly property alias check: rigUp

    function showDue(item: string, requirement: string) {
        detail.show(item, requirement);
        pair.detailShown = true;
    }
    function openRow(index: int) {
        const at = next.list.index(index, 0);
        if (!at.valid)
            return;
        page.showDue(String(next.list.data(at, DueModel.ItemRole)), String(next.list.data(at, DueModel.RequirementRole)));
    }

    // A desk shows what is worst at once; a phone waits for a tap.
    Connections {
        target: next
        function onListed() {
            if (!page.phone && !detail.found)
                page.openRow(0);
        }
    }
    NextPlace { id: next }
    DueDetail { id: detail }
    RigUpCheck { id: rigUp }

    Segments {
        id: leaves
        x: Theme.wide
        names: [qsTr("What comes next"), qsTr("Rig-up check")]
        current: page.leaf
        onChosen: index => page.leaf = index
    }

    Item {
        anchors.top: leaves.bottom
        anchors.bottom: parent.bottom
        width: parent.width
        visible: page.leaf === 0

        Loader {
            id: deskTop
            width: parent.width
            active: !page.phone
            sourceComponent: Column {
                width: deskTop.width
                spacing: Theme.snug
                Horizon {
                    width: parent.width
                    place: next
                }
                DueFilters {
                    x: Theme.wide
                    width: parent.width - 2 * Theme.wide
                    place: next
                }
                Rule { width: parent.width }
            }
        }
        ListAndDetail {
            id: pair
            anchors.top: page.phone ? parent.top : deskTop.bottom
            anchors.bottom: parent.bottom
            width: parent.width
            phone: page.phone
            listShare: 0.56
            detailName: detail.title
            onClosed: pair.detailShown = false
            list: [
                RowList {
                    id: rows
                    anchors.fill: parent
                    anchors.bottomMargin: foot.height
                    name: qsTr("What is due")
                    model: next.list
                    header: Column {
                        width: rows.width
                        Loader {
                            id: phoneHorizon
                            width: parent.width
                            active: page.phone
                            visible: active
                            sourceComponent: Horizon {
                                width: phoneHorizon.width
                                place: next
                                phone: true
                            }
                        }
                        Loader {
                            id: phoneFilters
                            x: Theme.wide
                            width: parent.width - 2 * Theme.wide
                            active: page.phone
                            visible: active
                            sourceComponent: DueFilters {
                                width: phoneFilters.width
                                place: next
                                phone: true
                                unfolded: page.unfolded
                            }
                        }
                        DueSummary {
                            x: Theme.wide
                            width: parent.width - 2 * Theme.wide
                            place: next
                            phone: page.phone
                            unfolded: page.unfolded
                            onFold: page.unfolded = !page.unfolded
                        }
                        Rule { width: parent.width }
                    }
                    footer: Item {
                        width: rows.width
                        height: page.phone ? lastWord.implicitHeight : 0
                        visible: page.phone
                        Caution {
                            id: lastWord
                            width: parent.width
                        }
                    }
                    delegate: DueRow {
                        chosen: detail.item === item && detail.requirement === requirement && detail.found && !page.phone
                        onClicked: {
                            rows.currentIndex = index;
                            page.openRow(index);
                        }
                    }
                    onOpened: index => page.openRow(index)
                },
                EmptyPlace {
                    anchors.fill: rows
                    anchors.topMargin: rows.headerItem ? Math.min(rows.height * 0.6, rows.headerItem.height) : 0
                    visible: next.ready && next.list.count === 0
                    title: next.filtered ? qsTr("Nothing passes these filters") : Fleet.empty ? qsTr("The record is empty on this day") : qsTr("No requirement binds anything yet")
                    text: next.filtered ? qsTr("Clear them to see the whole fleet.")
                                        : Fleet.empty ? qsTr("Enter a balloon and its items in Balloons, or bring a flight log in Record.")
                                                      : qsTr("Adopt a programme for your balloons in Rules.")
                    action: next.filtered ? qsTr("Clear the filters") : Fleet.empty && !Desk.demo ? qsTr("Look at the demo fleet") : ""
                    shape: LineSign.Next
                    onActed: next.filtered ? next.clearFilters() : Desk.askDemo()
                },
                Rectangle {
                    id: foot
                    anchors.bottom: parent.bottom
                    width: parent.width
                    height: page.phone ? 0 : caution.implicitHeight
                    visible: !page.phone
                    color: Theme.paper
                    Rule { width: parent.width }
                    Caution {
                        id: caution
                        width: parent.width
                        topPadding: Theme.snug
                        bottomPadding: Theme.snug
                    }
                }
            ]
            detail: [
                DueDetailPane {
                    anchors.fill: parent
                    detail: detail
                    onBalloonAsked: balloon => page.balloonAsked(balloon)
                    onItemAsked: item => page.itemAsked(item)
                    onFabricAsked: item => page.fabricAsked(item)
                    onAct: (kind, balloon, item, requirement) => page.act(kind, balloon, item, requirement)
                }
            ]
        }
    }

    RigUpPage {
        anchors.top: leaves.bottom
        anchors.bottom: parent.bottom
        width: parent.width
        visible: page.leaf === 1
        phone: page.phone
        check: rigUp
        onOpened: (item, requirement) => {
            page.leaf = 0;
            page.showDue(item, requirement);
        }
    }
}
