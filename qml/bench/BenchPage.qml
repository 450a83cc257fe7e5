// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk
import Crownring.Bench

// The place Bench: the inspections, and the one that is at hand. While one is at hand it has the whole width, unless
// there is plenty.
FocusScope {
    id: page

    property bool phone: false
    property alias detailShown: pair.detailShown
    property alias leaf: pane.leaf // 0 checklist, 1 readings, 2 defects, 3 release
    property bool shopShown: false

    signal act(kind: string, inspection: string, defect: string, item: string)
    signal findingAsked(inspection: string, item: string, line: string, finding: string)
    signal correct(entry: string)
    signal mendAsked(entry: string, key: string)
    signal listAsked(balloon: string)
    signal directiveAsked(inspection: string, directive: string, revision: string, item: string, about: string)
    signal eventAsked(balloon: string)
    signal enterAsked

    readonly property alias place: bench
    readonly property alias desk: work
    readonly property alias opening: visit
    readonly property alias readings: pane.readings
    readonly property alias release: pane.release
    readonly property bool roomForBoth: page.width >= 2 * Theme.phoneBelow

    function showInspection(inspection: string) {
        pane.leaf = 0;
        page.shopShown = false;
        work.inspection = inspection;
        pair.detailShown = true;
        pane.takeFocus();
    }
    function showLeaf(leaf: int) {
        pane.show(leaf);
    }
    function beginVisit(balloon: string) {
        visit.begin(balloon);
    }
    // What stands on a list is read in a visit of its own.
    function beginRectification(balloon: string, item: string, requirement: string) {
        visit.beginRectification(balloon, item, requirement);
    }
    function backToList() {
        pair.detailShown = false;
        rows.forceActiveFocus();
    }

    BenchPlace {
        id: bench
        shown: page.visible
    }
    InspectionDesk { id: work }

    Segments {
        id: leaves
        x: page.phone ? Theme.tight : Theme.wide
        height: visible ? implicitHeight : 0
        visible: !(pair.phone && pair.detailShown)
        names: [qsTr("Inspections"), qsTr("What releases rest on")]
        codes: ["bench.leaf.inspections", "bench.leaf.shop"]
        current: page.shopShown ? 1 : 0
        onChosen: index => page.shopShown = index === 1
    }
    ShopPane {
        anchors.top: leaves.bottom
        anchors.bottom: parent.bottom
        width: parent.width
        visible: page.shopShown
        phone: page.phone
        onAct: kind => page.act(kind, "", "", "")
        onCorrect: entry => page.correct(entry)
    }
    ListAndDetail {
        id: pair
        anchors.top: leaves.bottom
        anchors.bottom: parent.bottom
        width: parent.width
        visible: !page.shopShown
        phone: page.phone || work.inspection === "" || pair.detailShown && !page.roomForBoth
        listShare: 0.28
        detailName: work.title
        onClosed: page.backToList()
        list: [
            Item {
                id: head
                width: parent.width
                height: head.visible ? Theme.touch + 2 * Theme.gap : 0
                visible: !Fleet.empty // the first step is to enter a balloon
                Button {
                    id: open
                    objectName: "bench.open"
                    x: Theme.wide
                    anchors.verticalCenter: parent.verticalCenter
                    primary: true
                    text: qsTr("Open a visit …")
                    onClicked: page.beginVisit("")
                }
                Label {
                    anchors.left: open.right
                    anchors.leftMargin: Theme.gap
                    anchors.right: parent.right
                    anchors.rightMargin: Theme.wide
                    anchors.verticalCenter: parent.verticalCenter
                    visible: bench.ready
                    text: bench.openCount === 1 ? qsTr("1 is open") : qsTr("%1 are open").arg(bench.openCount)
                    soft: true
                }
                Rule {
                    anchors.bottom: parent.bottom
                    width: parent.width
                }
            },
            RowList {
                id: rows
                objectName: "bench.inspections"
                anchors.top: head.bottom
                anchors.bottom: parent.bottom
                width: parent.width
                name: qsTr("Inspections")
                model: bench.inspections
                delegate: Line {
                    id: row
                    required property int index
                    required property string value
                    required property string label
                    required property string detail
                    required property int number // its state
                    required property var model // its `chosen` says that the inspection is open
                    readonly property bool atWork: row.model.chosen
                    height: Math.max(60, words.implicitHeight + 2 * Theme.snug)
                    chosen: work.inspection === row.value && !page.phone
                    Accessible.name: qsTr("%1, %2, record %3").arg(row.label).arg(row.detail).arg(row.value)
                    onClicked: {
                        rows.currentIndex = row.index;
                        page.showInspection(row.value);
                    }
                    contentItem: Item {
                        StateBox {
                            id: state
                            anchors.verticalCenter: parent.verticalCenter
                            settledAs: row.number
                        }
                        Column {
                            id: words
                            anchors.left: state.right
                            anchors.leftMargin: Theme.gap
                            anchors.right: parent.right
                            anchors.verticalCenter: parent.verticalCenter
                            spacing: 2
                            Label {
                                width: parent.width
                                text: row.label
                                font.bold: row.atWork
                                elide: Text.ElideRight
                                maximumLineCount: 2
                                Accessible.ignored: true
                            }
                            Label {
                                width: parent.width
                                text: qsTr("%1 · %2").arg(row.detail).arg(row.value)
                                soft: true
                                font.pixelSize: Theme.textSmall
                                Accessible.ignored: true
                            }
                        }
                    }
                }
                onOpened: index => page.showInspection(bench.inspections.valueAt(index))
            },
            EmptyPlace {
                anchors.fill: rows
                visible: bench.ready && rows.count === 0
                title: bench.problem === "" ? qsTr("Nothing is on the bench") : qsTr("The inspections cannot be read")
                text: bench.problem === "" && Fleet.empty ? qsTr("The record has no balloon and no items yet. Enter them first: an inspection is opened on what is there.")
                    : bench.problem === "" ? qsTr("A balloon came in? Open a visit: what is due on it is proposed, and the checklist is made from that.") : bench.problem
                objectName: "bench.empty"
                action: Fleet.empty ? qsTr("Enter the first balloon …") : qsTr("Open the first inspection …")
                shape: LineSign.Bench
                onActed: {
                    if (Fleet.empty)
                        page.enterAsked();
                    else
                        page.beginVisit("");
                }
            }
        ]
        detail: [
            InspectionPane {
                id: pane
                objectName: "bench.inspection"
                anchors.fill: parent
                visible: work.inspection !== ""
                desk: work
                phone: page.phone
                titled: !pair.phone
                onAct: (kind, inspection, defect, item) => page.act(kind, inspection, defect, item)
                onFindingAsked: (inspection, item, line, finding) => page.findingAsked(inspection, item, line, finding)
                onListAsked: balloon => page.listAsked(balloon)
                onDirectiveAsked: (inspection, directive, revision, item, about) => page.directiveAsked(inspection, directive, revision, item, about)
                onMendAsked: (entry, key) => page.mendAsked(entry, key)
            }
        ]
    }
    OpenVisitSheet {
        id: visit
        objectName: "bench.visit"
        onInspectionOpened: inspection => page.showInspection(inspection)
        onEventAsked: balloon => page.eventAsked(balloon)
        onEnterAsked: page.enterAsked()
    }
}
