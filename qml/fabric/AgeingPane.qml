// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Dialogs
import Crownring.Theme
import Crownring.Parts
import Crownring.Fabric

// The chart of ageing, and the two files it can be saved to.
Column {
    id: pane

    required property AgeingChart chart

    spacing: Theme.gap

    function takeFocus() {
        first.forceActiveFocus(Qt.TabFocusReason);
    }
    function ask(dialog: FileDialog) {
        dialog.selectedFile = pane.chart.proposedFile(dialog.defaultSuffix);
        dialog.open();
    }
    function savePicture(file: url) {
        picture.save(file);
    }

    AgeingDrawing {
        width: parent.width
        chart: pane.chart
    }
    Flow {
        width: parent.width
        spacing: Theme.snug
        Button {
            id: first
            objectName: "ageing.picture"
            text: qsTr("Save picture …")
            onClicked: pane.ask(pictureFile)
        }
        Button {
            objectName: "ageing.table"
            text: qsTr("Save table (CSV) …")
            onClicked: pane.ask(tableFile)
        }
    }
    Label {
        width: parent.width
        visible: text !== ""
        text: pane.chart.told
        color: pane.chart.trouble ? Theme.ember : Theme.ink
        Accessible.role: Accessible.AlertMessage
    }

    AgeingPicture {
        id: picture
        chart: pane.chart
    }
    FileDialog {
        id: pictureFile
        title: qsTr("Save the picture of the chart")
        fileMode: FileDialog.SaveFile
        defaultSuffix: "png"
        nameFilters: [qsTr("Picture (*.png)")]
        onAccepted: picture.save(selectedFile)
    }
    FileDialog {
        id: tableFile
        title: qsTr("Save the readings of the chart")
        fileMode: FileDialog.SaveFile
        defaultSuffix: "csv"
        nameFilters: [qsTr("Table (*.csv)")]
        onAccepted: pane.chart.saveTable(selectedFile)
    }
}
