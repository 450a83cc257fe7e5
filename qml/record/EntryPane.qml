// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Record

// One entry as it was written, with what has become of it.
Item {
    id: pane

    required property RecordPlace place

    signal correct(entry: string)
    signal voidEntry(entry: string)
    signal defectOfFlight(flight: string)

    EmptyPlace {
        anchors.fill: parent
        visible: pane.place.entry === ""
        title: qsTr("Choose an entry")
        text: qsTr("It is shown as it was written. A mistake is never erased: it is corrected or voided, and both stay.")
        shape: LineSign.Record
    }
    Scroll {
        anchors.fill: parent
        visible: pane.place.entry !== ""
        margin: Theme.broad
        Heading {
            width: parent.width
            text: pane.place.entryTitle
        }
        Label {
            width: parent.width
            text: pane.place.entryFacts
            soft: true
        }
        Flow {
            width: parent.width
            spacing: Theme.snug
            Button {
                visible: pane.place.entryCorrectable
                primary: true
                text: qsTr("Correct …")
                onClicked: pane.correct(pane.place.entry)
            }
            Button {
                visible: pane.place.entryAmendable
                text: qsTr("Void …")
                onClicked: pane.voidEntry(pane.place.entry)
            }
            Button {
                visible: pane.place.entryFlight
                text: qsTr("Write a defect …")
                onClicked: pane.defectOfFlight(pane.place.entry)
            }
        }
        Photographs {
            width: parent.width
            digests: pane.place.entryPhotographs
            of: pane.place.entryTitle
            onShown: digest => photograph.show(digest)
        }
        Rule { width: parent.width }
        Facts {
            width: parent.width
            name: qsTr("As it was written")
            text: pane.place.entryText
        }
        Facts {
            width: parent.width
            name: qsTr("Hash (SHA-256) over it and the writer's entry before it")
            text: pane.place.entryHash
        }
    }
    PhotographSheet { id: photograph }
}
