// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk
import Crownring.Balloons

// What was written about a balloon or an item, latest first; a tap unfolds what can be done with a line.
RowList {
    id: history

    signal correct(entry: string)
    signal voidEntry(entry: string)
    signal defectOfFlight(flight: string)
    signal eventOfFlight(flight: string)
    signal photographAsked(digest: string)

    property string open: ""
    property bool atTop: true // then what is written next is seen, too
    onMovementEnded: history.atTop = history.atYBeginning
    onCurrentIndexChanged: {
        if (history.activeFocus)
            history.atTop = history.currentIndex === 0;
    }
    onCountChanged: {
        if (history.atTop)
            history.positionViewAtBeginning();
    }
    name: qsTr("History")
    delegate: HistoryRow {
        id: past
        required property bool amendable
        required property bool flight
        required property list<string> photographs
        objectName: "history." + past.index
        readonly property bool opened: history.open === past.entry
        chosen: past.opened
        bottomPadding: past.opened ? acts.height + Theme.gap : Theme.snug
        onClicked: history.open = past.opened ? "" : past.entry
        Column {
            id: acts
            x: Theme.wide
            width: parent.width - 2 * Theme.wide
            anchors.bottom: parent.bottom
            anchors.bottomMargin: Theme.tight
            spacing: Theme.snug
            visible: past.opened
            Photographs {
                width: parent.width
                digests: past.opened ? past.photographs : []
                of: past.sentence
                onShown: digest => history.photographAsked(digest)
            }
            Flow {
                width: parent.width
                spacing: Theme.snug
                Button {
                    objectName: "history.correct"
                    text: qsTr("Correct …")
                    visible: past.amendable
                    onClicked: history.correct(past.entry)
                }
                Button {
                    text: qsTr("Void …")
                    visible: !past.voided
                    onClicked: history.voidEntry(past.entry)
                }
                Button {
                    objectName: "history.defect"
                    text: qsTr("Write a defect …")
                    visible: past.flight
                    onClicked: history.defectOfFlight(past.entry)
                }
                Button {
                    objectName: "history.event"
                    text: qsTr("Report an event …")
                    visible: past.flight
                    onClicked: history.eventOfFlight(past.entry)
                }
            }
        }
    }
    onOpened: index => {
        const lines = history.model as JournalModel;
        const entry = String(lines.data(lines.index(index, 0), JournalModel.EntryRole));
        history.open = history.open === entry ? "" : entry;
    }
}
