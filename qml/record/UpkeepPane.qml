// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Dialogs
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk
import Crownring.Record

// Verify and back up.
Item {
    id: pane

    required property RecordPlace place
    signal openAsked // another record

    Scroll {
        anchors.fill: parent
        margin: Theme.wide
        spacing: Theme.wide

        Facts {
            width: parent.width
            name: qsTr("This record")
            text: Desk.location
        }
        Rule { width: parent.width }
        Heading {
            width: parent.width
            text: qsTr("Verify")
        }
        Label {
            width: parent.width
            text: qsTr("Every entry carries a hash over itself and over the one before it. Verifying computes them all again: a change anywhere in the past shows. Crownring does so by itself, beside your work, when something else has written to the file.")
        }
        Row {
            spacing: Theme.snug
            Button {
                primary: true
                enabled: !pane.place.verifying
                text: qsTr("Verify the record")
                onClicked: pane.place.verify()
            }
            Button {
                visible: pane.place.verifying
                text: qsTr("Stop")
                onClicked: pane.place.stopVerifying()
            }
        }
        Rectangle {
            visible: pane.place.verifying
            width: parent.width
            height: 6
            radius: 3
            color: Theme.shade
            Accessible.role: Accessible.ProgressBar
            Accessible.name: qsTr("Verified so far")
            Rectangle {
                width: parent.width * pane.place.verified
                height: parent.height
                radius: 3
                color: Theme.sky
            }
        }
        Label {
            width: parent.width
            visible: text !== ""
            text: pane.place.verdict
            font.bold: true
            color: pane.place.intact ? Theme.ink : Theme.ember
            Accessible.role: Accessible.AlertMessage
        }
        Rule { width: parent.width }
        Heading {
            width: parent.width
            text: qsTr("Rebuild")
        }
        Label {
            width: parent.width
            text: qsTr("Makes every clock, due date and list anew from the journal. Nothing that was written is lost. It refuses where an entry itself is not what was written: then go back to a backup.")
        }
        Button {
            objectName: "rebuild"
            enabled: !rebuilding.running && !pane.place.verifying
            text: qsTr("Rebuild from the journal")
            onClicked: rebuilding.begin()
        }
        Label {
            width: parent.width
            visible: text !== ""
            text: rebuilding.outcome
            color: rebuilding.failed ? Theme.ember : Theme.ink
            Accessible.role: Accessible.AlertMessage
        }
        Rule { width: parent.width }
        Heading {
            width: parent.width
            text: qsTr("Go back to a backup")
        }
        Label {
            width: parent.width
            text: qsTr("Opens another file: a backup, or another record. This one stays as it is. Keep it: what was altered, and when, can be looked for in it.")
        }
        Button {
            objectName: "upkeep.open"
            primary: Desk.damaged
            text: qsTr("Open a backup or another file …")
            onClicked: pane.openAsked()
        }
        Rule { width: parent.width }
        Heading {
            width: parent.width
            text: qsTr("Back up")
        }
        Label {
            width: parent.width
            text: qsTr("Writes a copy to a new file and checks it. Do not copy the record's own file while Crownring runs: its latest entries may still be beside it.")
        }
        // Above the button, the last thing on the page: what came of it is in sight where one has just looked.
        Label {
            width: parent.width
            visible: text !== ""
            text: pane.place.backup
            font.bold: true
            color: pane.place.backupFailed ? Theme.ember : Theme.ink
            Accessible.role: Accessible.AlertMessage
        }
        Button {
            enabled: !pane.place.backingUp
            text: qsTr("Back up to …")
            onClicked: chooser.open()
        }
    }

    Rebuilding { id: rebuilding }

    FileDialog {
        id: chooser
        title: qsTr("Back up to a new file")
        acceptLabel: qsTr("Save")
        fileMode: FileDialog.SaveFile
        defaultSuffix: "sqlite"
        selectedFile: pane.place.proposedBackup()
        onAccepted: pane.place.backUpTo(selectedFile)
    }
}
