// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Dialogs
import Crownring.Theme
import Crownring.Parts
import Crownring.Bench

// The pictures that the camera took today and yesterday, new ones as they come: a tap puts one to the line.
Sheet {
    id: sheet

    property int at: -1
    property string told: qsTr("Taken today or yesterday, the latest first: a tap puts it to the line.")
    signal chosen(at: int, file: url)

    title: qsTr("Photograph")
    widest: 640
    tallest: 520

    function ask(at: int) {
        sheet.at = at;
        sheet.open();
    }
    function take(file: url) {
        sheet.close();
        sheet.chosen(sheet.at, file);
    }

    CameraPictures {
        id: camera
        watching: sheet.opened
    }
    Scroll {
        anchors.fill: parent
        spacing: Theme.gap
        Label {
            width: parent.width
            text: camera.pictures.length === 0 ? qsTr("No picture of today or yesterday is there. New ones come by themselves.") : sheet.told
            soft: true
        }
        Flow {
            width: parent.width
            spacing: Theme.snug
            Repeater {
                model: camera.pictures
                Photograph {
                    required property int index
                    required property string modelData
                    objectName: "bench.picture." + index
                    source: modelData
                    Accessible.name: qsTr("Take the picture %1").arg(index + 1)
                    onClicked: sheet.take(modelData)
                }
            }
        }
        Flow {
            width: parent.width
            spacing: Theme.snug
            Button {
                objectName: "bench.picture.choose"
                text: qsTr("Choose a picture …")
                onClicked: chooser.open()
            }
            Button {
                objectName: "bench.picture.folder"
                quiet: true
                text: qsTr("The camera's folder …")
                onClicked: folder.open()
            }
        }
        Label {
            width: parent.width
            text: camera.folder === "" ? qsTr("Pictures are looked for in your own folder of pictures.") : qsTr("Pictures are looked for in %1.").arg(camera.folder)
            soft: true
            font.pixelSize: Theme.textSmall
        }
    }
    FileDialog {
        id: chooser
        title: qsTr("Choose a photograph")
        nameFilters: [qsTr("Pictures (*.jpg *.jpeg *.png)"), qsTr("All files (*)")]
        onAccepted: sheet.take(selectedFile)
    }
    FolderDialog {
        id: folder
        title: qsTr("Where the camera puts its pictures")
        onAccepted: camera.lookIn(selectedFolder)
    }
}
