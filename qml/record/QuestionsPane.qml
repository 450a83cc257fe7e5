// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk
import Crownring.Record

// What the record contradicts itself about, until somebody answers.
Item {
    id: pane

    required property RecordPlace place

    signal opened(entry: string)

    RowList {
        id: questions
        anchors.fill: parent
        name: qsTr("Open questions")
        model: pane.place.questions
        delegate: Line {
            id: row
            required property int index
            required property string value
            required property string label
            required property string detail
            height: words.implicitHeight + 2 * Theme.gap
            Accessible.name: qsTr("%1. %2").arg(row.label).arg(row.detail)
            onClicked: {
                questions.currentIndex = row.index;
                pane.opened(row.value);
            }
            contentItem: Item {
                Column {
                    id: words
                    width: parent.width
                    anchors.verticalCenter: parent.verticalCenter
                    spacing: 2
                    Label {
                        width: parent.width
                        text: row.label
                        font.bold: true
                        Accessible.ignored: true
                    }
                    Label {
                        width: parent.width
                        text: row.detail
                        Accessible.ignored: true
                    }
                }
            }
        }
        onOpened: index => pane.opened(pane.place.questions.valueAt(index))
    }
    EmptyPlace {
        anchors.fill: parent
        visible: pane.place.ready && questions.count === 0
        title: Desk.damaged ? qsTr("Nothing is said from a record that is not intact") : qsTr("No open question")
        text: Desk.damaged ? "" : qsTr("Entries that contradict each other would be listed here.")
        shape: LineSign.Record
    }
}
