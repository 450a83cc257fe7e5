// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk
import Crownring.Next

// What is due: its rows, or the groups that they make. Over them stands how they are looked at; on a phone the strip and the
// filters too.
Item {
    id: pane

    required property NextPlace place
    required property DueDetail detail
    property bool phone: false
    property bool unfolded: false // a phone's strip and fields

    signal opened(index: int)
    signal fold
    signal act(kind: string)

    // What is filtered or grouped otherwise is looked at from its beginning, once it is there.
    property bool another: false
    Connections {
        target: pane.place
        function onFilterChanged() {
            pane.another = true;
        }
        function onListed() {
            if (pane.another)
                toTop.start();
            pane.another = false;
        }
    }
    Timer {
        id: toTop
        interval: 0
        onTriggered: {
            rows.positionViewAtBeginning();
            groups.positionViewAtBeginning();
        }
    }

    Component {
        id: head
        Column {
            width: pane.width
            Loader {
                id: phoneHorizon
                width: parent.width
                active: pane.phone && pane.unfolded
                visible: active
                sourceComponent: Horizon {
                    width: phoneHorizon.width
                    place: pane.place
                    phone: true
                }
            }
            Loader {
                id: phoneFilters
                x: Theme.wide
                width: parent.width - 2 * Theme.wide
                active: pane.phone
                visible: active
                sourceComponent: DueFilters {
                    width: phoneFilters.width
                    place: pane.place
                    phone: true
                    unfolded: pane.unfolded
                }
            }
            DueSummary {
                x: Theme.wide
                width: parent.width - 2 * Theme.wide
                place: pane.place
                phone: pane.phone
                unfolded: pane.unfolded
                onFold: pane.fold()
            }
            Button {
                objectName: "next.reportEvent"
                x: Theme.wide
                visible: pane.phone
                quiet: true
                text: qsTr("Report an event …")
                onClicked: pane.act("event.reported")
            }
            Button {
                objectName: "next.leave"
                x: Theme.wide
                visible: pane.place.within !== ""
                width: Math.min(implicitWidth, parent.width - 2 * Theme.wide)
                quiet: true
                text: qsTr("‹ All, not only %1").arg(pane.place.within)
                onClicked: pane.place.leaveGroup()
            }
            Rule { width: parent.width }
        }
    }
    Component {
        id: foot
        Item {
            width: pane.width
            height: pane.phone ? lastWord.implicitHeight : 0
            visible: pane.phone
            Caution {
                id: lastWord
                width: parent.width
            }
        }
    }
    RowList {
        id: rows
        anchors.fill: parent
        visible: !pane.place.grouped
        name: qsTr("What is due")
        model: pane.place.list
        header: head
        footer: foot
        delegate: DueRow {
            chosen: pane.detail.item === item && pane.detail.requirement === requirement && pane.detail.found && !pane.phone
            onClicked: {
                rows.currentIndex = index;
                pane.opened(index);
            }
        }
        onOpened: index => pane.opened(index)
    }
    RowList {
        id: groups
        anchors.fill: parent
        visible: pane.place.grouped
        name: qsTr("What is due, in groups")
        model: pane.place.groups
        header: head
        footer: foot
        delegate: GroupRow {
            onClicked: pane.place.openGroup(index)
        }
        onOpened: index => pane.place.openGroup(index)
    }
    EmptyPlace {
        anchors.fill: parent
        anchors.topMargin: rows.headerItem ? Math.min(pane.height * 0.6, rows.headerItem.height) : 0
        visible: pane.place.ready && pane.place.list.count === 0
        title: pane.place.filtered ? qsTr("Nothing passes these filters") : Fleet.empty ? qsTr("The record is empty on this day") : qsTr("Nothing is asked of what is in the record")
        text: pane.place.filtered ? qsTr("Take them off to see the whole fleet.")
                                  : Fleet.empty ? qsTr("Enter a balloon with all that it is made of and the rules it flies under.")
                                                : qsTr("Adopt the programmes that your balloons fly under, and enter their items: only then is anything due.")
        action: pane.place.filtered ? qsTr("Take off the filters") : Fleet.empty ? qsTr("Enter a balloon and all of it …") : qsTr("Adopt a programme …")
        other: !pane.place.filtered && Fleet.empty && !Desk.demo ? qsTr("Look at the demo fleet") : ""
        shape: LineSign.Next
        onActed: {
            if (pane.place.filtered)
                pane.place.clearFilters();
            else
                pane.act(Fleet.empty ? "whole-balloon" : "programme.adopted");
        }
        onOtherActed: Desk.askDemo()
    }
}
