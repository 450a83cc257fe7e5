// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Components

// The pool: every item of a kind with where it is and until when it is good; several are ticked for what is done with a
// batch.
Item {
    id: pane

    required property PoolDesk desk
    property string open: "" // the item whose page is shown

    signal itemAsked(item: string)
    signal batchAsked(kind: string, items: var)

    Column {
        id: head
        x: Theme.wide
        width: parent.width - 2 * Theme.wide
        spacing: Theme.snug
        topPadding: Theme.tight
        bottomPadding: Theme.snug
        readonly property real half: (head.width - Theme.snug) / 2
        Flow {
            width: parent.width
            spacing: Theme.snug
            ChoiceField {
                objectName: "pool.kind"
                width: head.half
                name: qsTr("Kind")
                model: pane.desk.kinds
                value: pane.desk.kind
                onPicked: value => pane.desk.kind = value
            }
            ChoiceField {
                objectName: "pool.quarter"
                width: head.half
                name: qsTr("Falls due")
                model: pane.desk.quarters
                value: pane.desk.quarter
                onPicked: value => pane.desk.quarter = value
            }
            ChoiceField {
                objectName: "pool.lot"
                width: head.half
                visible: pane.desk.lots.count > 1
                name: qsTr("Lot")
                model: pane.desk.lots
                value: pane.desk.lot
                onPicked: value => pane.desk.lot = value
            }
            SearchField {
                width: head.half
                name: qsTr("Serial, place, state")
                onSaid: words => pane.desk.words = words
            }
        }
        Flow {
            width: parent.width
            spacing: Theme.snug
            Chip {
                objectName: "pool.away"
                visible: pane.desk.away > 0 || pane.desk.awayOnly
                text: qsTr("away %1").arg(pane.desk.away)
                chosen: pane.desk.awayOnly
                onClicked: pane.desk.awayOnly = !pane.desk.awayOnly
            }
            Button {
                objectName: "pool.tickShown"
                visible: pane.desk.items.count > 0
                text: pane.desk.ticked.length > 0 ? qsTr("Tick none") : qsTr("Tick these %1").arg(pane.desk.items.count)
                onClicked: {
                    if (pane.desk.ticked.length > 0)
                        pane.desk.tickNone();
                    else
                        pane.desk.tickShown();
                }
            }
        }
        Label {
            width: parent.width
            text: pane.desk.problem === "" ? pane.desk.summary : pane.desk.problem
            soft: true
            font.pixelSize: Theme.textSmall
        }
    }
    Rule {
        anchors.top: head.bottom
        width: parent.width
    }
    RowList {
        id: rows
        anchors.top: head.bottom
        anchors.topMargin: Theme.hair
        anchors.bottom: foot.top
        width: parent.width
        name: qsTr("The pool")
        model: pane.desk.items
        Keys.onRightPressed: {
            if (rows.currentIndex >= 0)
                pane.itemAsked(pane.desk.items.itemAt(rows.currentIndex));
        }
        delegate: TickLine {
            id: row
            required property string item
            required property string where
            required property string about
            required property string dates
            required property string quarter
            required property string state
            required property var model
            objectName: "pool.row." + row.index
            label: qsTr("%1 · %2").arg(row.item).arg(row.where)
            detail: row.dates
            more: row.about
            word: row.model.state
            after: row.quarter
            standing: row.model.standing
            ticked: row.model.ticked
            spoken: row.model.spoken
            onClicked: {
                rows.currentIndex = row.index;
                pane.desk.toggle(row.item);
            }
            onAsked: pane.itemAsked(row.item)
        }
        onOpened: index => pane.desk.toggle(pane.desk.items.itemAt(index))
    }
    EmptyPlace {
        anchors.fill: rows
        visible: pane.desk.ready && pane.desk.items.count === 0
        title: qsTr("There is none")
        text: qsTr("Choose another kind, quarter or lot.")
    }
    TagSaver { id: saver }
    Rectangle {
        id: foot
        anchors.bottom: parent.bottom
        width: parent.width
        height: visible ? acts.implicitHeight + 2 * Theme.snug : 0
        visible: pane.desk.ticked.length > 0
        color: Theme.paper
        Rule { width: parent.width }
        Flow {
            id: acts
            x: Theme.wide
            y: Theme.snug
            width: parent.width - 2 * Theme.wide
            spacing: Theme.snug
            Label {
                height: Theme.touch
                verticalAlignment: Text.AlignVCenter
                text: qsTr("%1 ticked").arg(pane.desk.ticked.length)
                font.bold: true
            }
            Button {
                objectName: "pool.send"
                visible: pane.desk.maySend
                primary: true
                text: qsTr("Send to the test house …")
                onClicked: pane.batchAsked("components.sent", pane.desk.ticked)
            }
            Button {
                objectName: "pool.fill"
                visible: pane.desk.mayFill
                text: qsTr("Filled …")
                onClicked: pane.batchAsked("cylinder.filled", pane.desk.ticked)
            }
            Button {
                objectName: "pool.return"
                visible: pane.desk.mayReturn
                primary: true
                text: qsTr("They came back …")
                onClicked: pane.batchAsked("components.returned", pane.desk.ticked)
            }
            Button {
                objectName: "pool.tags"
                text: qsTr("Tags …")
                Accessible.name: qsTr("Write tags with QR codes, to be printed")
                onClicked: saver.ask(pane.desk.ticked)
            }
            Label {
                height: Theme.touch
                verticalAlignment: Text.AlignVCenter
                visible: !pane.desk.maySend && !pane.desk.mayReturn && !pane.desk.mayFill
                text: qsTr("Tick what is in service alone, or what is away alone.")
                soft: true
            }
        }
    }
}
