// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Dialogs
import Crownring.Theme
import Crownring.Parts
import Crownring.Wording
import Crownring.Rules

// The place Rules: programmes in force and on the shelf.
FocusScope {
    id: page

    property bool phone: false
    property alias detailShown: pair.detailShown

    signal adopt(programme: string)
    signal adoptFile(file: url)
    signal dueAsked(item: string, requirement: string)

    readonly property alias place: rules

    function showProgramme(programme: string) {
        rules.showProgramme(programme);
        pair.detailShown = true;
    }
    function showRequirement(requirement: string) {
        rules.find(requirement);
        pair.detailShown = true;
    }

    // A desk has room for one beside the list: the first, until another is chosen.
    function showFirst() {
        if (!page.phone && rules.programme === "" && rules.programmes.count > 0)
            rules.showProgramme(rules.programmes.valueAt(0));
    }
    onPhoneChanged: page.showFirst()
    Connections {
        target: rules
        function onChanged() {
            page.showFirst();
        }
    }

    RulesPlace {
        id: rules
        shown: page.visible
    }
    FileDialog {
        id: chooser
        title: qsTr("Choose a programme or a bulletin")
        nameFilters: [qsTr("Programmes (*.json)"), qsTr("All files (*)")]
        onAccepted: page.adoptFile(selectedFile)
    }

    WordingSheet {
        id: wording
        objectName: "rules.wordings"
        desk: WordingDesk {}
    }

    ListAndDetail {
        id: pair
        anchors.fill: parent
        phone: page.phone
        listShare: 0.36
        detailName: rules.title
        onClosed: pair.detailShown = false
        list: [
            RowList {
                id: programmes
                anchors.fill: parent
                name: qsTr("Programmes")
                model: rules.programmes
                header: Column {
                    width: programmes.width
                    Label {
                        width: parent.width
                        padding: Theme.wide
                        text: qsTr("A programme binds what it is adopted for, from the day of its adoption on. Its text is kept in the record.")
                        soft: true
                    }
                    Button {
                        objectName: "rules.fromFile"
                        x: Theme.wide
                        text: qsTr("Adopt one from a file …")
                        onClicked: chooser.open()
                    }
                    Item {
                        width: parent.width
                        height: Theme.snug
                    }
                    Button {
                        objectName: "rules.wording"
                        x: Theme.wide
                        text: qsTr("Wording that is signed …")
                        onClicked: wording.openList()
                    }
                    Item {
                        width: parent.width
                        height: Theme.gap
                    }
                }
                delegate: Line {
                    id: row
                    required property int index
                    required property string value
                    required property string label
                    required property string detail
                    required property int number
                    height: words.implicitHeight + 2 * Theme.gap
                    chosen: rules.programme === row.value && !page.phone
                    Accessible.name: qsTr("%1, %2").arg(row.label).arg(row.detail)
                    onClicked: {
                        programmes.currentIndex = row.index;
                        page.showProgramme(row.value);
                    }
                    contentItem: Item {
                        Column {
                            id: words
                            width: parent.width
                            anchors.verticalCenter: parent.verticalCenter
                            spacing: 2
                            Label {
                                width: parent.width
                                text: row.label
                                font.bold: true
                                Accessible.ignored: true
                            }
                            Label {
                                width: parent.width
                                text: row.number === 1 ? qsTr("%1 · 1 requirement").arg(row.detail) : qsTr("%1 · %2 requirements").arg(row.detail).arg(row.number)
                                soft: true
                                font.pixelSize: Theme.textSmall
                                Accessible.ignored: true
                            }
                        }
                    }
                }
                onOpened: index => page.showProgramme(rules.programmes.valueAt(index))
            }
        ]
        detail: [
            ProgrammePane {
                anchors.fill: parent
                place: rules
                onAdopt: programme => page.adopt(programme)
                onDueAsked: (item, requirement) => page.dueAsked(item, requirement)
            }
        ]
    }
}
