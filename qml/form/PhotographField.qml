// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Dialogs
import Crownring.Theme
import Crownring.Parts
import Crownring.Form

// Photographs of what is written down: those chosen, each to be left out again, what was taken lately, and any file.
Column {
    id: pictures

    required property EntryForm form
    required property int row
    required property string key
    required property string name
    required property var choices

    spacing: Theme.snug

    Flow {
        width: parent.width
        visible: pictures.choices.length > 0
        spacing: Theme.snug
        Repeater {
            model: pictures.choices
            Row {
                id: chosen
                required property int index
                required property var modelData
                visible: modelData.chosen
                Photograph {
                    objectName: "shown." + pictures.key + "." + chosen.index
                    source: chosen.modelData.detail
                    focusPolicy: Qt.NoFocus
                    Accessible.role: Accessible.Graphic
                    Accessible.name: qsTr("Photograph %1").arg(chosen.index + 1)
                }
                IconButton {
                    objectName: "leave." + pictures.key + "." + chosen.index
                    name: qsTr("Leave out photograph %1").arg(chosen.index + 1)
                    shape: LineSign.Close
                    onClicked: pictures.form.toggle(pictures.row, chosen.modelData.value)
                }
            }
        }
    }
    Flow {
        width: parent.width
        spacing: Theme.snug
        Accessible.role: Accessible.Grouping
        Accessible.name: pictures.name
        Repeater {
            model: pictures.form.latestPictures
            Photograph {
                required property int index
                required property string modelData
                objectName: "latest." + pictures.key + "." + index
                source: modelData
                Accessible.name: qsTr("Attach the picture taken lately, %1").arg(index + 1)
                onClicked: pictures.form.attach(pictures.row, modelData)
            }
        }
        Button {
            objectName: "attach." + pictures.key
            text: pictures.form.reading ? qsTr("Reading it …") : qsTr("Choose a picture …")
            onClicked: chooser.open()
        }
    }
    Label {
        width: parent.width
        visible: pictures.form.latestPictures.length > 0
        text: qsTr("Taken today or yesterday: a tap attaches it.")
        soft: true
        font.pixelSize: Theme.textSmall
    }
    FileDialog {
        id: chooser
        objectName: "choose." + pictures.key
        // What is made inside a form is made before it stands in a window.
        parentWindow: pictures.Window.window
        title: qsTr("Choose a photograph")
        nameFilters: [qsTr("Pictures (*.jpg *.jpeg *.png)"), qsTr("All files (*)")]
        onAccepted: pictures.form.attach(pictures.row, selectedFile)
    }
}
