// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk
import Crownring.Frame

// Finds a registration, serial number, requirement or person from anywhere.
Sheet {
    id: sheet

    signal balloonChosen(balloon: string)
    signal itemChosen(item: string)
    signal requirementChosen(requirement: string)
    signal entryChosen(entry: string)
    signal inspectionChosen(inspection: string)

    title: qsTr("Search")
    onOpened: {
        field.text = "";
        search.words = "";
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
    RowList {
        id: found
        anchors.top: field.bottom
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
