// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Bench

// What is signed, word for word, in a frame, with where the words come from.
Column {
    id: statement

    required property ReleaseDesk release
    property bool signed: false

    // The words depend on who signs: before that there are none to show.
    visible: statement.release.statement !== "" && (statement.signed || statement.release.signer !== "")
    spacing: Theme.tight

    Label {
        width: parent.width
        text: statement.signed ? qsTr("What was signed") : qsTr("What is signed, word for word")
        font.bold: true
        font.pixelSize: Theme.textLarge
    }
    Rectangle {
        width: parent.width
        height: words.implicitHeight + 2 * Theme.wide
        color: Theme.sheet
        border.width: 2
        border.color: Theme.rattan
        radius: Theme.radius
        Label {
            id: words
            objectName: "bench.statement"
            x: Theme.wide
            y: Theme.wide
            width: parent.width - 2 * Theme.wide
            text: statement.release.statement
            font.pixelSize: Theme.textLarge
        }
    }
    Label {
        width: parent.width
        visible: text !== "" && !statement.signed
        text: statement.release.statementSource
        soft: true
        font.pixelSize: Theme.textSmall
    }
}
