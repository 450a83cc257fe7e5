// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Directives

// The directives and bulletins of the record, what is in force first.
Item {
    id: pane

    required property DirectivesDesk desk
    property bool phone: false

    signal opened(entry: string)
    signal enterAsked

    RowList {
        id: rows
        anchors.fill: parent
        name: qsTr("Directives and bulletins")
        model: pane.desk.directives
        header: Column {
            width: rows.width
            topPadding: Theme.snug
            bottomPadding: Theme.gap
            spacing: Theme.snug
            Label {
                x: Theme.wide
                width: parent.width - 2 * Theme.wide
                text: qsTr("What an authority or a manufacturer has said since. An item of which nobody knows whether it is bound is not clear.")
                soft: true
            }
            Button {
                objectName: "directives.enter"
                x: Theme.wide
                text: qsTr("Enter a directive …")
                onClicked: pane.enterAsked()
            }
            Label {
                x: Theme.wide
                width: parent.width - 2 * Theme.wide
                visible: text !== ""
                text: pane.desk.problem
                color: Theme.ember
                font.bold: true
                Accessible.role: Accessible.AlertMessage
            }
        }
        delegate: Line {
            id: row
            required property int index
            required property string entry
            required property string number
            required property string title
            required property string about
            required property string counts
            required property int overdue
            required property int unknown
            required property int standing
            required property string spoken
            objectName: "directives.row." + row.index
            height: words.implicitHeight + 2 * Theme.gap
            chosen: pane.desk.entry === row.entry && !pane.phone
            Accessible.name: row.spoken
            onClicked: {
                rows.currentIndex = row.index;
                pane.opened(row.entry);
            }
            contentItem: Item {
                GoreGauge {
                    id: gauge
                    anchors.verticalCenter: parent.verticalCenter
                    standing: row.standing
                    used: 0.4
                    decoration: true
                    opacity: row.standing >= 0 ? 1 : 0
                }
                Column {
                    id: words
                    anchors.left: gauge.right
                    anchors.leftMargin: Theme.gap
                    anchors.right: parent.right
                    anchors.verticalCenter: parent.verticalCenter
                    spacing: 2
                    Label {
                        width: parent.width
                        text: row.number
                        font.bold: true
                        Accessible.ignored: true
                    }
                    Label {
                        width: parent.width
                        text: row.title
                        Accessible.ignored: true
                    }
                    Label {
                        width: parent.width
                        text: row.about
                        soft: true
                        font.pixelSize: Theme.textSmall
                        Accessible.ignored: true
                    }
                    Label {
                        width: parent.width
                        text: row.counts
                        font.bold: row.overdue > 0 || row.unknown > 0
                        font.pixelSize: Theme.textSmall
                        Accessible.ignored: true
                    }
                }
            }
        }
        onOpened: index => pane.opened(pane.desk.directives.entryAt(index))
    }
    EmptyPlace {
        anchors.fill: parent
        anchors.topMargin: 160
        visible: !pane.desk.ready && pane.desk.problem === ""
        title: qsTr("Asking the record …")
    }
    EmptyPlace {
        anchors.fill: parent
        anchors.topMargin: 160
        visible: pane.desk.ready && pane.desk.directives.count === 0
        title: qsTr("No directive is in the record")
        text: qsTr("Enter one, and see at once whom it binds, whom it does not, and of whom nobody knows.")
        shape: LineSign.Rules
    }
}
