// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Dialogs
import Crownring.Components

// Asks where the tags of items are to be written.
Item {
    id: saver

    property list<string> items: []

    function ask(items: list<string>) {
        saver.items = items;
        chooser.selectedFile = tags.proposed(items);
        chooser.open();
    }

    TagFile { id: tags }
    FileDialog {
        id: chooser
        title: qsTr("Save the tags")
        fileMode: FileDialog.SaveFile
        acceptLabel: qsTr("Save")
        defaultSuffix: "pdf"
        nameFilters: [qsTr("PDF (*.pdf)")]
        onAccepted: tags.write(saver.items, selectedFile)
    }
}
