// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Dialogs
import Crownring.Balloons

// Asks where a paper about a balloon is to be written.
Item {
    id: saver

    property int paper: StatusFile.Directives
    property string balloon: ""

    function ask(paper: int, balloon: string) {
        saver.paper = paper;
        saver.balloon = balloon;
        chooser.selectedFile = status.proposed(paper, balloon);
        chooser.open();
    }

    StatusFile {
        id: status
        objectName: "status.file"
    }
    FileDialog {
        id: chooser
        title: saver.paper === StatusFile.Directives ? qsTr("Save the status of directives") : qsTr("Save the events")
        fileMode: FileDialog.SaveFile
        acceptLabel: qsTr("Save")
        defaultSuffix: "pdf"
        nameFilters: [qsTr("PDF (*.pdf)")]
        onAccepted: status.write(saver.paper, saver.balloon, selectedFile)
    }
}
