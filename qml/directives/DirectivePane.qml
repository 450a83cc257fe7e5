// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk
import Crownring.Directives

// One directive: what it asks, whom it binds, of whom nobody knows, who is not bound and why; several are answered for at
// once.
Item {
    id: pane

    required property DirectivesDesk desk
    property bool phone: false
    property bool unfolded: false // on a phone all that is known of it
    property string shownEntry: ""
    property bool untouched: true // nothing was scrolled or chosen since it was opened: its top is shown
    readonly property bool roomy: pane.unfolded || !pane.phone

    signal itemAsked(item: string)
    signal correctAsked(entry: string)
    signal answerAsked(directive: string, revision: string, about: string, items: var)

    // Whenever its head is laid out anew.
    function toTop() {
        if (pane.untouched)
            laidOut.start();
    }
    Timer {
        id: laidOut
        interval: 0
        onTriggered: rows.positionViewAtBeginning()
    }

    Connections {
        target: pane.desk
        function onChanged() {
            if (pane.desk.entry === pane.shownEntry)
                return;
            pane.shownEntry = pane.desk.entry;
            pane.unfolded = false;
            pane.untouched = true;
            rows.currentIndex = -1;
            pane.toTop();
        }
    }
    EmptyPlace {
        anchors.fill: parent
        visible: pane.desk.entry === ""
        title: qsTr("Choose a directive")
        text: qsTr("Whom it binds, whom it does not and why, and of whom nobody knows is shown here.")
        shape: LineSign.Rules
    }
    RowList {
        id: rows
        objectName: "directive.list"
        anchors.top: parent.top
        anchors.bottom: foot.top
        width: parent.width
        visible: pane.desk.entry !== ""
        name: pane.desk.leaf === 0 ? qsTr("Whom it binds") : pane.desk.leaf === 1 ? qsTr("Of whom nobody knows") : qsTr("Who is not bound")
        model: pane.desk.held
        bottomMargin: 60 - foot.height // rows at the end stay where they are, too, when the foot goes
        onMovementStarted: pane.untouched = false
        onCurrentIndexChanged: {
            if (rows.currentIndex >= 0)
                pane.untouched = false;
        }
        header: Column {
            id: head
            x: pane.phone ? Theme.wide : Theme.broad
            width: rows.width - 2 * head.x
            topPadding: Theme.wide
            bottomPadding: Theme.snug
            spacing: Theme.gap
            onHeightChanged: pane.toTop()
            Column {
                width: parent.width
                spacing: Theme.tight
                Heading {
                    width: parent.width
                    text: pane.desk.name
                }
                Label {
                    width: parent.width
                    text: pane.desk.title
                    font.pixelSize: Theme.textLarge
                }
                Label {
                    width: parent.width
                    text: pane.desk.about
                    soft: true
                    font.pixelSize: Theme.textSmall
                }
            }
            Facts {
                width: parent.width
                name: qsTr("It is for")
                text: pane.desk.applies
            }
            Facts {
                width: parent.width
                name: qsTr("What it asks")
                text: pane.roomy ? pane.desk.rule : ""
            }
            Facts {
                width: parent.width
                name: qsTr("Source")
                text: pane.roomy ? pane.desk.source : ""
            }
            Facts {
                width: parent.width
                name: qsTr("It supersedes")
                text: pane.roomy ? pane.desk.supersedes : ""
            }
            Flow {
                width: parent.width
                spacing: Theme.snug
                Button {
                    objectName: "directive.more"
                    visible: pane.phone
                    text: pane.unfolded ? qsTr("Less of it") : qsTr("What it asks …")
                    onClicked: pane.unfolded = !pane.unfolded
                }
                Button {
                    objectName: "directive.correct"
                    visible: pane.roomy
                    text: qsTr("Correct the directive …")
                    onClicked: pane.correctAsked(pane.desk.entry)
                }
            }
            Segments {
                width: parent.width
                names: [qsTr("Bound %1").arg(pane.desk.bound), qsTr("Unknown %1").arg(pane.desk.unknown), qsTr("Not bound %1").arg(pane.desk.notBound)]
                codes: ["directive.bound", "directive.unknown", "directive.notBound"]
                current: pane.desk.leaf
                onChosen: index => pane.desk.leaf = index
            }
            Label {
                width: parent.width
                visible: rows.count === 0
                text: pane.desk.leaf === 0 ? qsTr("It binds nothing on %1.").arg(Day.asked) : pane.desk.leaf === 1 ? qsTr("Nothing is unknown: of every item of its kinds the record says enough.") : qsTr("Every item of its kinds is bound, or unknown.")
                soft: true
            }
            Button {
                objectName: "directive.tickOpen"
                visible: pane.desk.open > 0
                text: pane.desk.ticked.length === pane.desk.open ? qsTr("Tick none") : qsTr("Tick all that are open: %1").arg(pane.desk.open)
                onClicked: pane.desk.tickOpen()
            }
        }
        footer: Caution {
            width: rows.width
        }
        Keys.onRightPressed: {
            if (rows.currentIndex >= 0)
                pane.itemAsked(pane.desk.held.itemAt(rows.currentIndex));
        }
        delegate: TickLine {
            id: row
            required property string item
            required property string where
            required property string why
            required property string done
            required property bool answerable
            required property var model
            objectName: "directive.held." + row.index
            label: row.item
            detail: pane.desk.leaf === 0 ? row.where : [row.where, row.why].join("\n")
            more: row.done
            word: row.model.word
            standing: row.model.standing
            ticked: row.model.ticked
            tickable: row.answerable
            spoken: row.model.spoken
            onClicked: {
                rows.currentIndex = row.index;
                if (row.answerable)
                    pane.desk.toggle(row.item);
                else
                    pane.itemAsked(row.item);
            }
            onAsked: pane.itemAsked(row.item)
        }
        onOpened: index => {
            if (pane.desk.answerable && pane.desk.leaf < 2)
                pane.desk.toggle(pane.desk.held.itemAt(index));
            else
                pane.itemAsked(pane.desk.held.itemAt(index));
        }
    }
    Rectangle {
        id: foot
        anchors.bottom: parent.bottom
        width: parent.width
        height: visible ? 60 : 0
        visible: pane.desk.ticked.length > 0
        color: Theme.paper
        Rule { width: parent.width }
        Label {
            anchors.left: parent.left
            anchors.leftMargin: Theme.wide
            anchors.right: answer.left
            anchors.rightMargin: Theme.snug
            anchors.verticalCenter: parent.verticalCenter
            text: qsTr("%1 ticked").arg(pane.desk.ticked.length)
            font.bold: true
        }
        Button {
            id: answer
            objectName: "directive.answer"
            anchors.right: parent.right
            anchors.rightMargin: Theme.wide
            anchors.verticalCenter: parent.verticalCenter
            primary: true
            text: qsTr("Answer for them …")
            onClicked: pane.answerAsked(pane.desk.number, pane.desk.revision, qsTr("%1: %2").arg(pane.desk.name).arg(pane.desk.title), pane.desk.ticked)
        }
    }
}
