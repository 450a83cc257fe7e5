// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk
import Crownring.Record

// The place Record: the journal, open questions, flights from files, verification and backup.
FocusScope {
    id: page

    property bool phone: false
    property alias detailShown: pair.detailShown
    property int leaf: 0 // 0 journal, 1 questions, 2 flights from a file, 3 upkeep
    property string asked: "" // the entry that the question chosen is about

    signal correct(entry: string)
    signal voidEntry(entry: string)
    signal defectOfFlight(flight: string)
    signal openAsked // another record

    readonly property alias place: record
    readonly property alias intake: flights

    function showUpkeep() {
        page.leaf = 3;
    }
    function showEntry(entry: string) {
        record.openEntry(entry);
        if (page.leaf > 1)
            page.leaf = 0;
        pair.detailShown = true;
    }

    // A desk has room for one beside the journal: the latest, until another is chosen.
    function showLatest() {
        const first = record.journal.index(0, 0);
        if (page.visible && !page.phone && record.entry === "" && record.ready && first.valid)
            record.openEntry(String(record.journal.data(first, JournalModel.EntryRole)));
    }
    onPhoneChanged: page.showLatest()
    onVisibleChanged: page.showLatest()
    Connections {
        target: record
        function onChanged() {
            page.showLatest();
        }
    }

    RecordPlace {
        id: record
        shown: page.visible
    }
    FlightIntake { id: flights }

    Segments {
        id: leaves
        x: page.phone ? Theme.tight : Theme.wide
        readonly property string howMany: Desk.damaged ? "–" : String(record.questions.count)
        names: page.phone ? [qsTr("Journal"), qsTr("Questions %1").arg(leaves.howMany), qsTr("Flights"), qsTr("Upkeep")]
                          : [qsTr("Journal"), qsTr("Open questions %1").arg(leaves.howMany), qsTr("Flights from a file"), qsTr("Verify and back up")]
        current: page.leaf
        onChosen: index => page.leaf = index
    }
    ListAndDetail {
        id: pair
        anchors.top: leaves.bottom
        anchors.bottom: parent.bottom
        width: parent.width
        visible: page.leaf <= 1
        phone: page.phone
        listShare: 0.5
        detailName: qsTr("Entry")
        onClosed: pair.detailShown = false
        list: [
            JournalPane {
                anchors.fill: parent
                visible: page.leaf === 0
                place: record
                phone: page.phone
                onOpened: entry => page.showEntry(entry)
            },
            QuestionsPane {
                anchors.fill: parent
                visible: page.leaf === 1
                place: record
                onOpened: entry => {
                    page.asked = entry;
                    page.showEntry(entry);
                }
            }
        ]
        detail: [
            EmptyPlace {
                anchors.fill: parent
                visible: page.leaf === 1 && page.asked !== record.entry
                shape: LineSign.Record
                title: qsTr("Choose a question")
                text: qsTr("The entry that it is about is shown here.")
            },
            EntryPane {
                anchors.fill: parent
                visible: page.leaf !== 1 || page.asked === record.entry
                place: record
                onCorrect: entry => page.correct(entry)
                onVoidEntry: entry => page.voidEntry(entry)
                onDefectOfFlight: flight => page.defectOfFlight(flight)
            }
        ]
    }
    IntakePane {
        anchors.top: leaves.bottom
        anchors.bottom: parent.bottom
        width: Math.min(parent.width, 900)
        visible: page.leaf === 2
        intake: flights
    }
    UpkeepPane {
        anchors.top: leaves.bottom
        anchors.bottom: parent.bottom
        width: Math.min(parent.width, 760)
        visible: page.leaf === 3
        place: record
        onOpenAsked: page.openAsked()
    }
}
