// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Dialogs
import Crownring.Theme
import Crownring.Parts
import Crownring.Bench

// The papers of the inspection as a PDF, on either size of paper.
Column {
    id: papers

    required property ReleaseDesk release

    spacing: Theme.snug

    function takeFocus() {
        first.forceActiveFocus(Qt.TabFocusReason);
    }
    function ask(letter: bool) {
        chooser.letter = letter;
        chooser.selectedFile = papers.release.proposedPaper;
        chooser.open();
    }

    Label {
        width: parent.width
        text: qsTr("Papers")
        font.bold: true
        font.pixelSize: Theme.textLarge
    }
    Flow {
        width: parent.width
        spacing: Theme.snug
        Button {
            id: first
            objectName: "bench.print.a4"
            text: qsTr("Save as PDF (A4) …")
            onClicked: papers.ask(false)
        }
        Button {
            objectName: "bench.print.letter"
            text: qsTr("Save as PDF (Letter) …")
            onClicked: papers.ask(true)
        }
    }
    FileDialog {
        id: chooser
        property bool letter: false
        title: qsTr("Save the papers of the inspection")
        fileMode: FileDialog.SaveFile
        acceptLabel: qsTr("Save")
        defaultSuffix: "pdf"
        nameFilters: [qsTr("PDF (*.pdf)")]
        onAccepted: papers.release.print(selectedFile, chooser.letter)
    }
}
