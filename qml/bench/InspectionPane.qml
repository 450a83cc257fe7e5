// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Lists
import Crownring.Parts
import Crownring.Bench

// One inspection: what it is and what of it is saved, and its four leaves.
FocusScope {
    id: pane

    required property InspectionDesk desk
    property bool phone: false
    property bool titled: true // else the bar with "Back" says it
    property int leaf: 0 // 0 checklist, 1 readings, 2 defects, 3 release

    signal act(kind: string, inspection: string, defect: string, item: string)
    signal findingAsked(inspection: string, item: string, line: string, finding: string)
    signal listAsked(balloon: string)
    signal directiveAsked(inspection: string, directive: string, revision: string, item: string, about: string)
    signal mendAsked(entry: string, key: string) // what was written is to be corrected, at that key

    readonly property alias readings: reader
    readonly property alias release: releaser

    function takeFocus() {
        leaves.focusCurrent();
    }
    // To the readings of one line.
    function showReadings(item: string, line: string) {
        reader.readFor(item, line);
        pane.show(1);
    }
    function show(leaf: int) {
        pane.leaf = leaf;
        leaves.focusCurrent();
    }

    ReadingDesk {
        id: reader
        desk: pane.desk
    }
    ReleaseDesk {
        id: releaser
        desk: pane.desk
    }

    Column {
        id: head
        x: pane.phone ? Theme.wide : Theme.broad
        y: pane.phone ? Theme.tight : Theme.gap
        width: parent.width - 2 * x
        spacing: 2
        Heading {
            width: parent.width
            visible: pane.titled
            text: pane.desk.title
            elide: Text.ElideRight
            maximumLineCount: 1
        }
        Label {
            width: parent.width
            text: pane.desk.subtitle
            soft: true
            font.pixelSize: pane.phone ? Theme.textSmall : Theme.text
            elide: Text.ElideRight
            maximumLineCount: 2
        }
        Label {
            objectName: "bench.saved"
            width: parent.width
            text: {
                if (!pane.desk.loaded)
                    return pane.desk.problem === "" ? qsTr("Reading it from the record …") : "";
                if (releaser.signing)
                    return qsTr("Signing …");
                const saved = pane.desk.saving ? qsTr("saving …") : pane.desk.savedAs;
                if (pane.desk.outcome !== "")
                    return qsTr("%1 · %2").arg(pane.desk.outcome).arg(saved);
                const open = qsTr("%1 of %2 lines open").arg(pane.desk.linesOpen).arg(pane.desk.linesAll);
                return pane.desk.barring === 0 ? qsTr("%1 · %2").arg(open).arg(saved)
                    : qsTr("%1 · grounds the balloon: %2 · %3").arg(open).arg(pane.desk.barring).arg(saved);
            }
            font.bold: pane.desk.outcome !== "" && !pane.desk.abandoned
            font.pixelSize: Theme.textSmall
            elide: Text.ElideRight
            maximumLineCount: 2
        }
        Label {
            width: parent.width
            visible: text !== ""
            text: pane.desk.problem
            color: Theme.ember
            font.bold: true
            Accessible.role: Accessible.AlertMessage
        }
        Column {
            width: Math.min(parent.width, 560)
            visible: pane.desk.open && (pane.desk.inspector === "" || who.activeFocus)
            topPadding: Theme.tight
            bottomPadding: Theme.tight
            spacing: Theme.tight
            Label {
                text: qsTr("Who inspects at this bench? *")
                font.bold: true
                Accessible.ignored: true
            }
            Field {
                id: who
                objectName: "bench.who"
                width: parent.width
                name: qsTr("Who inspects at this bench?")
                text: pane.desk.inspector
                onTextEdited: pane.desk.inspector = text
                onAccepted: leaves.focusCurrent()
            }
            Flow {
                width: parent.width
                spacing: Theme.snug
                Repeater {
                    model: pane.desk.inspectors
                    Chip {
                        required property int index
                        required property string modelData
                        objectName: "bench.who." + index
                        text: modelData
                        Accessible.name: qsTr("%1 inspects").arg(modelData)
                        onClicked: {
                            pane.desk.inspector = modelData;
                            leaves.focusCurrent();
                        }
                    }
                }
            }
        }
        Segments {
            id: leaves
            x: pane.phone ? -Theme.gap : 0
            names: [qsTr("Checklist"), qsTr("Readings"), qsTr("Defects"), qsTr("Release")]
            codes: ["bench.segment.checklist", "bench.segment.readings", "bench.segment.defects", "bench.segment.release"]
            current: pane.leaf
            onChosen: index => pane.leaf = index
        }
    }
    Item {
        anchors.top: head.bottom
        anchors.bottom: parent.bottom
        width: parent.width
        visible: pane.desk.loaded
        ChecklistPane {
            id: checks
            anchors.fill: parent
            visible: pane.leaf === 0
            desk: pane.desk
            phone: pane.phone
            onReadingsAsked: (item, line) => pane.showReadings(item, line)
            onReadingsDue: (item, line) => {
                pane.showReadings(item, line);
                pane.errand = true;
                toRead.lead();
            }
            onDefectAsked: (item, line, finding) => pane.findingAsked(pane.desk.inspection, item, line, finding)
            onDirectiveAsked: (directive, revision, item, about) => pane.directiveAsked(pane.desk.inspection, directive, revision, item, about)
            onFinished: pane.show(reader.series.count > 0 && pane.stillToRead() ? 1 : 3)
        }
        ReadingsPane {
            id: toRead
            anchors.fill: parent
            visible: pane.leaf === 1
            reader: reader
            phone: pane.phone
        }
        DefectsPane {
            anchors.fill: parent
            visible: pane.leaf === 2
            desk: pane.desk
            phone: pane.phone
            onAct: (kind, defect, item) => pane.act(kind, pane.desk.inspection, defect, item)
            onMendAsked: entry => pane.mendAsked(entry, "")
            onReadAgainAsked: defect => {
                reader.readAgain(defect);
                pane.show(1);
            }
        }
        ReleasePane {
            anchors.fill: parent
            visible: pane.leaf === 3
            desk: pane.desk
            release: releaser
            phone: pane.phone
            onLineAsked: (line, item) => {
                const at = pane.desk.showLine(line, item);
                if (at < 0)
                    return;
                pane.show(0);
                checks.openLine(at);
            }
            onReadingAsked: (entry, equipment) => {
                if (!reader.showReading(entry))
                    return;
                pane.show(1);
                if (equipment)
                    toRead.showEquipment();
                else
                    toRead.lead();
            }
            onWorkAsked: (entry, key) => {
                if (entry === "")
                    pane.act("work.performed", pane.desk.inspection, "", "");
                else
                    pane.mendAsked(entry, key);
            }
            onDefectsAsked: pane.show(2)
            onListAsked: balloon => pane.listAsked(balloon)
            onAct: (kind, defect, item) => pane.act(kind, pane.desk.inspection, defect, item)
        }
    }

    // With the last reading that was asked for: to the release where all is done, else to the lines.
    property bool wasSaving: false
    property bool wasToRead: false
    property bool led: false // to the lines, by the last reading: what it settles may have been the last of them
    property bool errand: false // from the lines of a part to its readings: back when they are taken
    onLeafChanged: pane.led = pane.errand = false
    Connections {
        target: pane.desk
        function onSavedChanged() {
            const ended = pane.wasSaving && !pane.desk.saving;
            if (!pane.wasSaving && pane.desk.saving && pane.leaf === 1)
                pane.wasToRead = pane.stillToRead();
            pane.wasSaving = pane.desk.saving;
            if (!ended || pane.leaf !== 1 && !pane.led || !pane.desk.open || pane.desk.problem !== "")
                return;
            if (reader.taken.count > 0 && pane.desk.linesOpen === 0 && !pane.stillToRead()) {
                pane.show(3);
            } else if (pane.leaf === 1 && (pane.errand && pane.desk.awaited().length === 0 || pane.wasToRead && !pane.stillToRead())) {
                pane.show(0);
                pane.led = true;
            }
        }
    }

    function stillToRead(): bool {
        const series = reader.series;
        for (let at = 0; at < series.count; ++at)
            if (series.data(series.index(at, 0), ChoiceModel.NumberRole) > 0)
                return true;
        return false;
    }
}
