// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Bench

// One line of the checklist: what to look for, and what became of it. It is saved as soon as it is said.
Item {
    id: row

    required property InspectionDesk desk
    required property int at
    required property string line
    required property string item
    required property string subject
    required property string apart
    required property string title
    required property string lookFor
    required property string source
    required property string finding
    required property string settled
    required property string readings
    required property string tester
    required property int settledAs
    required property list<string> photographs
    required property list<var> directives // that stand open on the record, each with its item
    required property bool asksTester
    required property bool asksPhotograph
    property bool inGrid: false // what to look for stands above, once for all items
    property bool writing: false
    property string begun: "" // the finding that was there when writing began
    // Why it does not apply: -1 not asked; 0 not fitted, 1 not asked for by the manual, 2 other.
    property int leaving: -1
    property bool asking: false
    readonly property string code: "bench.line." + row.at

    signal said
    signal readingsAsked
    signal photographAsked
    signal defectAsked // of the finding
    signal photographShown(digest: string)
    signal directiveAsked(directive: string, revision: string, item: string, about: string)

    readonly property string called: row.inGrid ? qsTr("%1 on %2").arg(row.title).arg(row.subject) : row.title
    readonly property string stateWord: row.settledAs === 0 ? qsTr("open") : row.settledAs === 1 ? qsTr("done") : qsTr("not applicable")

    implicitHeight: body.height + 2 * Theme.gap
    height: implicitHeight

    function settleAs(state: int) {
        row.desk.settle(row.at, row.settledAs === state ? 0 : state);
        row.said();
    }
    function takeFocus() {
        done.forceActiveFocus(Qt.TabFocusReason);
    }
    function write() {
        row.begun = row.finding;
        row.writing = true;
        row.leaving = -1;
        field.text = row.finding;
        field.forceActiveFocus();
    }
    function leaveOut(why: int) {
        if (why === 0) {
            row.asking = false;
            row.desk.leaveOut(row.at, 0, "");
            return;
        }
        row.leaving = why;
        row.writing = true;
        field.text = "";
        field.forceActiveFocus();
    }
    function keep(text: string) {
        if (row.leaving < 0)
            row.desk.setFinding(row.at, text);
        else if (text.trim() !== "")
            row.desk.leaveOut(row.at, row.leaving, text);
        row.writing = false;
        row.asking = false;
        row.leaving = -1;
    }

    StateBox {
        id: box
        y: Theme.gap
        settledAs: row.settledAs
    }
    Column {
        id: body
        y: Theme.gap
        anchors.left: box.right
        anchors.leftMargin: Theme.gap
        anchors.right: parent.right
        spacing: Theme.tight
        Label {
            width: parent.width
            text: row.inGrid ? row.subject : row.title
            font.bold: true
            Accessible.name: qsTr("%1: %2").arg(row.called).arg(row.stateWord)
        }
        Label {
            width: parent.width
            visible: text !== "" && !row.inGrid
            text: row.lookFor
        }
        Label {
            width: parent.width
            visible: text !== "" && !row.inGrid
            text: row.source
            soft: true
            font.pixelSize: Theme.textSmall
        }
        Label {
            width: parent.width
            visible: row.finding !== "" && (!row.writing || row.finding !== row.begun) // another may have written it
            text: qsTr("Finding: %1").arg(row.finding)
            font.bold: true
        }
        Label {
            width: parent.width
            text: {
                const said = row.settled === "" ? (row.apart === "" || row.settledAs !== 0 ? row.stateWord : qsTr("%1, %2").arg(row.stateWord).arg(row.apart)) : qsTr("%1, %2").arg(row.stateWord).arg(row.settled);
                return row.tester === "" ? said : qsTr("%1 · test equipment %2").arg(said).arg(row.tester);
            }
            soft: true
            font.pixelSize: Theme.textSmall
        }
        Repeater {
            model: row.directives
            Column {
                id: open
                required property int index
                required property var modelData
                objectName: row.code + ".directive." + open.index
                width: body.width
                spacing: Theme.tight
                Label {
                    width: parent.width
                    text: open.modelData.said
                    color: open.modelData.against ? Theme.ember : Theme.ink
                    font.bold: open.modelData.against
                }
                Label {
                    width: parent.width
                    text: open.modelData.title
                    soft: true
                    font.pixelSize: Theme.textSmall
                }
                Button {
                    objectName: row.code + ".directive." + open.index + ".answer"
                    visible: row.desk.open
                    text: qsTr("Answer it …")
                    Accessible.name: qsTr("Answer %1 on %2").arg(open.modelData.directive).arg(open.modelData.item)
                    onClicked: row.directiveAsked(open.modelData.directive, open.modelData.revision, open.modelData.item, qsTr("%1 · %2").arg(open.modelData.directive).arg(open.modelData.title))
                }
            }
        }
        Photographs {
            width: parent.width
            digests: row.photographs
            of: row.title
            onShown: digest => row.photographShown(digest)
        }
        Flow {
            width: parent.width
            spacing: Theme.snug
            visible: row.desk.open
            Chip {
                id: done
                objectName: row.code + ".done"
                text: qsTr("Done")
                chosen: row.settledAs === 1
                Accessible.name: qsTr("Done: %1").arg(row.called)
                onClicked: row.settleAs(1)
            }
            Chip {
                objectName: row.code + ".none"
                text: qsTr("n.a.")
                chosen: row.settledAs === 2
                Accessible.name: qsTr("Not applicable: %1").arg(row.called)
                onClicked: {
                    if (row.settledAs === 2)
                        row.desk.settle(row.at, 0);
                    else
                        row.asking = !row.asking;
                }
            }
            Button {
                id: finder
                objectName: row.code + ".finding"
                quiet: true
                text: qsTr("Finding …")
                Accessible.name: qsTr("Finding on %1").arg(row.called)
                onClicked: row.write()
            }
            Button {
                objectName: row.code + ".defect"
                quiet: true
                visible: row.finding !== "" && !row.writing
                text: qsTr("Write it as a defect …")
                Accessible.name: qsTr("Write the finding on %1 as a defect").arg(row.called)
                onClicked: row.defectAsked()
            }
            Button {
                objectName: row.code + ".photograph"
                quiet: !row.asksPhotograph || row.photographs.length > 0
                text: qsTr("Photograph …")
                Accessible.name: qsTr("Photograph of %1").arg(row.called)
                onClicked: row.photographAsked()
            }
            Button {
                objectName: row.code + ".readings"
                visible: row.readings !== ""
                text: qsTr("%1 ›").arg(row.readings)
                Accessible.name: qsTr("%1: %2").arg(row.called).arg(row.readings)
                onClicked: row.readingsAsked()
            }
            ChoiceField {
                objectName: row.code + ".tester"
                visible: row.asksTester
                width: Math.min(280, body.width)
                name: qsTr("Test equipment for %1").arg(row.called)
                empty: row.desk.testers.count === 0 ? qsTr("no test equipment in calibration") : qsTr("test equipment …")
                model: row.desk.testers
                value: row.tester
                onPicked: value => row.desk.setTester(row.at, value)
            }
        }
        Flow {
            width: parent.width
            spacing: Theme.snug
            visible: row.asking && row.desk.open
            Label {
                height: Theme.touch
                verticalAlignment: Text.AlignVCenter
                text: qsTr("Not applicable, because")
            }
            Chip {
                objectName: row.code + ".none.fitted"
                text: qsTr("it is not fitted")
                Accessible.name: qsTr("Not fitted: %1").arg(row.called)
                onClicked: row.leaveOut(0)
            }
            Chip {
                objectName: row.code + ".none.asked"
                text: qsTr("the manual does not ask for it …")
                chosen: row.leaving === 1
                Accessible.name: qsTr("Not asked for by the manual: %1").arg(row.called)
                onClicked: row.leaveOut(1)
            }
            Chip {
                objectName: row.code + ".none.other"
                text: qsTr("another reason …")
                chosen: row.leaving === 2
                Accessible.name: qsTr("Another reason why it does not apply: %1").arg(row.called)
                onClicked: row.leaveOut(2)
            }
        }
        Field {
            id: field
            objectName: row.code + ".text"
            width: parent.width
            visible: row.writing
            name: row.leaving === 1 ? qsTr("Manual and page that does not ask for %1").arg(row.called)
                : row.leaving === 2 ? qsTr("Why %1 does not apply").arg(row.called)
                : qsTr("What was found on %1").arg(row.called)
            placeholderText: row.leaving === 1 ? qsTr("manual and page; Enter keeps it")
                : row.leaving === 2 ? qsTr("the reason; Enter keeps it")
                : qsTr("what was found; Enter keeps it")
            onEditingFinished: row.keep(text)
            onAccepted: finder.forceActiveFocus(Qt.TabFocusReason)
            Keys.onEscapePressed: {
                field.text = row.finding;
                row.writing = false;
                row.asking = false;
                row.leaving = -1;
                finder.forceActiveFocus(Qt.TabFocusReason);
            }
        }
    }
    Rule {
        anchors.bottom: parent.bottom
        width: parent.width
    }
}
