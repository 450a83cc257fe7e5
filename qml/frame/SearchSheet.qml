// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk
import Crownring.Bench
import Crownring.Frame

// Finds a registration, serial number, requirement or person from anywhere.
Sheet {
    id: sheet

    signal balloonChosen(balloon: string)
    signal itemChosen(item: string)
    signal requirementChosen(requirement: string)
    signal entryChosen(entry: string)
    signal inspectionChosen(inspection: string)

    readonly property alias pictures: picker
    title: qsTr("Search")
    onOpened: {
        field.text = "";
        search.words = "";
        search.forgetTag();
        field.forceActiveFocus();
    }

    Search {
        id: search
        onBalloonChosen: balloon => { sheet.close(); sheet.balloonChosen(balloon); }
        onItemChosen: item => { sheet.close(); sheet.itemChosen(item); }
        onRequirementChosen: requirement => { sheet.close(); sheet.requirementChosen(requirement); }
        onInspectionChosen: inspection => { sheet.close(); sheet.inspectionChosen(inspection); }
        onEntryChosen: entry => { sheet.close(); sheet.entryChosen(entry); }
    }

    SearchField {
        id: field
        x: Theme.wide
        y: Theme.gap
        width: parent.width - 2 * Theme.wide
        name: qsTr("Registration, serial number, inspection, requirement, person")
        onSaid: words => search.words = words
        Keys.onDownPressed: found.forceActiveFocus()
        onAccepted: {
            search.words = field.text;
            search.choose(0);
        }
    }
    Column {
        id: tag
        anchors.top: field.bottom
        anchors.topMargin: Theme.snug
        x: Theme.wide
        width: parent.width - 2 * Theme.wide
        visible: field.text === ""
        spacing: Theme.tight
        Button {
            objectName: "search.tag"
            text: search.readingTag ? qsTr("Reading the tag …") : qsTr("Read a tag off a picture …")
            enabled: !search.readingTag
            onClicked: picker.ask(0)
        }
        Label {
            objectName: "search.tagProblem"
            width: parent.width
            visible: text !== ""
            text: search.tagProblem
            color: Theme.ember
            Accessible.role: Accessible.AlertMessage
        }
    }
    PicturePicker {
        id: picker
        objectName: "search.pictures"
        title: qsTr("Picture of a tag")
        told: qsTr("Taken today or yesterday, the latest first: a tap opens the item whose tag is on it.")
        onChosen: (at, file) => search.readTag(file)
    }
    DropArea {
        anchors.fill: parent
        keys: ["text/uri-list"]
        onDropped: drop => {
            if (drop.urls.length > 0)
                search.readTag(drop.urls[0]);
        }
    }
    RowList {
        id: found
        anchors.top: tag.visible ? tag.bottom : field.bottom
        anchors.topMargin: Theme.gap
        anchors.bottom: parent.bottom
        width: parent.width
        name: qsTr("Found")
        model: search.found
        delegate: Line {
            id: row
            required property int index
            required property string label
            required property string detail
            height: words.implicitHeight + 2 * Theme.snug
            Accessible.name: qsTr("%1, %2").arg(row.label).arg(row.detail)
            onClicked: search.choose(row.index)
            contentItem: Item {
                Column {
                    id: words
                    width: parent.width
                    anchors.verticalCenter: parent.verticalCenter
                    Label {
                        width: parent.width
                        text: row.label
                        elide: Text.ElideRight
                        maximumLineCount: 2
                        Accessible.ignored: true
                    }
                    Label {
                        width: parent.width
                        text: row.detail
                        soft: true
                        font.pixelSize: Theme.textSmall
                        elide: Text.ElideRight
                        maximumLineCount: 1
                        Accessible.ignored: true
                    }
                }
            }
        }
        onOpened: index => search.choose(index)
    }
    EmptyPlace {
        anchors.fill: found
        visible: search.nothing
        title: qsTr("Nothing found")
        text: qsTr("The search knows what is in the record on %1, and the whole journal.").arg(Day.asked)
        shape: LineSign.Glass
    }
}
