// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Returns

// How far a release after incomplete maintenance lets it fly.
Column {
    id: form

    required property ReleaseBounds bounds

    spacing: Theme.tight

    Label {
        text: qsTr("It may fly so until, how long and how often")
        font.bold: true
        Accessible.ignored: true
    }
    Flow {
        width: parent.width
        spacing: Theme.gap
        Field {
            objectName: "bench.until"
            width: 200
            name: qsTr("Last day")
            placeholderText: name
            text: form.bounds.until
            onTextEdited: form.bounds.until = text
        }
        Field {
            objectName: "bench.aloft"
            width: 200
            name: qsTr("Time aloft, h:mm or hours")
            placeholderText: name
            text: form.bounds.aloft
            onTextEdited: form.bounds.aloft = text
        }
        Field {
            objectName: "bench.flights"
            width: 200
            name: qsTr("Number of flights")
            placeholderText: name
            text: form.bounds.flights
            onTextEdited: form.bounds.flights = text
        }
    }
    Label {
        objectName: "bench.bounds"
        width: parent.width
        visible: text !== ""
        text: form.bounds.problem !== "" ? form.bounds.problem : form.bounds.understood
        soft: form.bounds.problem === ""
    }
}
