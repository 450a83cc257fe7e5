// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Dialogs
import Crownring.Theme
import Crownring.Parts
import Crownring.Wording
import Crownring.Directives
import Crownring.Rules

// The place Rules: programmes in force and on the shelf, and directives.
FocusScope {
    id: page

    property bool phone: false
    property alias detailShown: pair.detailShown
    property int leaf: 0 // 0 programmes, 1 directives

    signal adopt(programme: string)
    signal adoptFile(file: url)
    signal dueAsked(item: string, requirement: string)
    signal itemAsked(item: string)
    signal enterDirective
    signal answerDirective(directive: string, revision: string, about: string, items: var)
    signal correct(entry: string)

    readonly property alias place: rules
    readonly property alias directives: desk

    // Of one number, or the list alone where it is empty.
    function showDirective(number: string) {
        page.leaf = 1;
        if (number === "")
            return;
        desk.showNumber(number);
        pair.detailShown = true;
    }
    function showProgramme(programme: string) {
        page.leaf = 0;
        rules.showProgramme(programme);
        pair.detailShown = true;
    }
    function showRequirement(requirement: string) {
        page.leaf = 0;
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
        shown: page.visible && page.leaf === 0
    }
    DirectivesDesk {
        id: desk
        shown: page.visible && page.leaf === 1
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
        detailName: page.leaf === 0 ? rules.title : desk.name
        onClosed: pair.detailShown = false
        list: [
            Segments {
                id: leaves
                x: Theme.wide
                width: parent.width - 2 * Theme.wide
                names: [qsTr("Programmes"), qsTr("Directives")]
                codes: ["rules.programmes", "rules.directives"]
                current: page.leaf
                onChosen: index => page.leaf = index
            },
            RowList {
                id: programmes
                anchors.top: leaves.bottom
                anchors.bottom: parent.bottom
                width: parent.width
                visible: page.leaf === 0
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
            },
            DirectiveList {
                anchors.top: leaves.bottom
                anchors.bottom: parent.bottom
                width: parent.width
                visible: page.leaf === 1
                desk: desk
                phone: page.phone
                onOpened: entry => {
                    desk.show(entry);
                    pair.detailShown = true;
                }
                onEnterAsked: page.enterDirective()
            }
        ]
        detail: [
            DirectivePane {
                anchors.fill: parent
                visible: page.leaf === 1
                desk: desk
                phone: page.phone
                onItemAsked: item => page.itemAsked(item)
                onCorrectAsked: entry => page.correct(entry)
                onAnswerAsked: (directive, revision, about, items) => page.answerDirective(directive, revision, about, items)
            },
            ProgrammePane {
                anchors.fill: parent
                visible: page.leaf === 0
                place: rules
                onAdopt: programme => page.adopt(programme)
                onDueAsked: (item, requirement) => page.dueAsked(item, requirement)
            }
        ]
    }
}
