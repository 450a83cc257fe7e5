// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk
import Crownring.Record

// The journal, latest arrival first, with a search over its text.
Item {
    id: pane

    required property RecordPlace place
    property bool phone: false

    signal opened(entry: string)

    Column {
        id: head
        x: Theme.wide
        y: Theme.snug
        width: parent.width - 2 * Theme.wide
        spacing: Theme.snug
        bottomPadding: Theme.snug
        Row {
            width: parent.width
            spacing: Theme.snug
            SearchField {
                width: parent.width - kind.width - Theme.snug
                name: qsTr("Words, person, reference")
                onSaid: words => pane.place.words = words
            }
            ChoiceField {
                id: kind
                width: 140
                name: qsTr("Kind of entry")
                model: pane.place.kinds
                value: pane.place.kind
                onPicked: value => pane.place.kind = value
            }
        }
        Label {
            width: parent.width
            visible: text !== ""
            text: pane.place.problem
            color: Theme.ember
        }
    }
    RowList {
        id: lines
        anchors.top: head.bottom
        anchors.topMargin: Theme.snug
        anchors.bottom: parent.bottom
        width: parent.width
        name: qsTr("Journal")
        model: pane.place.journal
        delegate: HistoryRow {
            chosen: pane.place.entry === entry && !pane.phone
            onClicked: {
                lines.currentIndex = index;
                pane.opened(entry);
            }
        }
        onOpened: index => pane.opened(String(pane.place.journal.data(pane.place.journal.index(index, 0), JournalModel.EntryRole)))
        onAtYEndChanged: {
            if (lines.atYEnd)
                pane.place.showMore();
        }
        footer: Item {
            width: lines.width
            height: pane.place.more ? Theme.touch + Theme.wide : 0
            Button {
                anchors.centerIn: parent
                visible: pane.place.more
                text: qsTr("Older entries")
                onClicked: pane.place.showMore()
            }
        }
    }
    EmptyPlace {
        anchors.fill: lines
        visible: pane.place.ready && lines.count === 0
        title: pane.place.words === "" && pane.place.kind === "" ? qsTr("The journal is empty") : qsTr("No entry says that")
        text: pane.place.words === "" && pane.place.kind === "" ? qsTr("Enter a balloon in Balloons, or bring flights from a file.") : qsTr("All words must occur in one entry.")
        shape: LineSign.Record
    }
}
