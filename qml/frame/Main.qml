// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Dialogs
import QtQuick.Window
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk
import Crownring.Form
import Crownring.Next
import Crownring.Balloons
import Crownring.Bench
import Crownring.Rules
import Crownring.Record

// The frame: a rail at the left on a desk, a bar at the bottom on a phone; the five places are the same.
Window {
    id: window

    property int place: 0 // 0 Next, 1 Balloons, 2 Bench, 3 Rules, 4 Record
    readonly property bool phone: window.width < Theme.phoneBelow
    readonly property list<string> titles: [qsTr("Next"), qsTr("Balloons"), qsTr("Bench"), qsTr("Rules"), qsTr("Record")]

    width: 1280
    height: 800
    minimumWidth: 360
    minimumHeight: 640
    visible: true
    color: Theme.paper
    title: qsTr("Crownring · %1").arg(window.titles[window.place])

    // "next", "rig-up", "agenda", "calendar", "plan", "balloons", "bench", "rules", "record", with a subject behind a slash where
    // that makes sense; an
    // inspection's leaf stands behind another one, "bench/open/…" opens one, "bench/shop" is what releases rest on;
    // "balloons/…/fabric/chart" is a leaf of a balloon's fabric, "balloons/fabric" that of the fleet.
    function showPlace(name: string) {
        const parts = name.split("/");
        const subject = parts.slice(1).join("/");
        window.place = window.numberOf(parts[0], ["", "balloons", "bench", "rules", "record"]);
        next.leaf = window.numberOf(parts[0], ["next", "rig-up", "agenda", "calendar", "plan"]);
        rules.leaf = 0;
        next.detailShown = balloons.detailShown = bench.detailShown = rules.detailShown = record.detailShown = false;
        bench.opening.close();
        bench.shopShown = name === "bench/shop";
        if (subject === "")
            return;
        if (parts[0] === "rig-up")
            next.check.balloon = subject;
        else if (parts[0] === "next")
            next.openRow(0);
        else if (name === "balloons/fabric")
            balloons.showLots();
        else if (name === "balloons/pool")
            balloons.showPool();
        else if (parts[0] === "balloons") {
            balloons.showBalloon(parts[1]);
            balloons.showLeaf(parts[2] ?? "", window.numberOf(parts[3] ?? "", ["map", "chart", "table"]));
        }
        else if (parts[0] === "bench" && parts[1] === "open")
            bench.beginVisit(parts[2] ?? "");
        else if (parts[0] === "bench" && !bench.shopShown) {
            bench.showInspection(parts[1]);
            bench.showLeaf(window.numberOf(parts[2] ?? "", ["", "readings", "defects", "release"]));
        } else if (parts[0] === "rules" && parts[1] === "directives")
            rules.showDirective(parts.slice(2).join("/"));
        else if (parts[0] === "rules")
            rules.showProgramme(subject);
        else if (parts[0] === "record")
            record.leaf = window.numberOf(subject, ["", "questions", "flights", "upkeep"]);
    }
    // Where the name stands among these, else 0.
    function numberOf(name: string, names: list<string>): int {
        return Math.max(0, names.indexOf(name));
    }
    function inspect(balloon: string) {
        window.place = 2;
        bench.detailShown = false;
        bench.beginVisit(balloon);
    }
    /// From a record that is not intact nothing is said.
    readonly property bool sayable: Fleet.ready && !Desk.damaged

    function goToUpkeep() {
        window.place = 4;
        record.showUpkeep();
    }
    function goToBalloon(balloon: string) {
        window.place = 1;
        balloons.showBalloon(balloon);
    }
    function goToList(balloon: string) {
        window.goToBalloon(balloon);
        balloons.showList();
    }
    function goToItem(item: string) {
        window.place = 1;
        balloons.showItem(item);
    }
    function goToFabric(item: string) {
        window.goToItem(item);
        balloons.showLeaf("fabric", 0);
    }
    function goToDirective(directive: string) {
        window.place = 3;
        rules.showDirective(directive);
    }
    function goToDue(item: string, requirement: string) {
        window.place = 0;
        next.leaf = 0;
        next.showDue(item, requirement);
    }

    Binding {
        target: Theme
        property: "dark"
        value: Habits.dark
    }
    EntryForm {
        id: form
        onBalloonAsked: balloon => window.goToBalloon(balloon)
        onItemAsked: item => window.goToItem(item)
        onSaved: balloons.pool.tickNone() // something was done with what was ticked
    }

    Shortcut { sequence: "Ctrl+K"; onActivated: search.open() }
    Shortcut { sequence: "Ctrl+D"; onActivated: day.open() }
    Shortcut { sequence: "Ctrl+1"; onActivated: window.place = 0 }
    Shortcut { sequence: "Ctrl+2"; onActivated: window.place = 1 }
    Shortcut { sequence: "Ctrl+3"; onActivated: window.place = 2 }
    Shortcut { sequence: "Ctrl+4"; onActivated: window.place = 3 }
    Shortcut { sequence: "Ctrl+5"; onActivated: window.place = 4 }
    Shortcut { sequences: [StandardKey.Undo]; onActivated: Notice.undo() }

    Rail {
        id: rail
        objectName: "rail"
        height: parent.height
        visible: !window.phone
        place: window.place
        onChosen: place => window.place = place
    }
    Item {
        id: room
        x: window.phone ? 0 : rail.width
        width: parent.width - x
        height: parent.height - (window.phone ? bar.height : 0)

        Column {
            id: top
            width: parent.width
            TopBar {
                width: parent.width
                phone: window.phone
                title: window.titles[window.place]
                onSearchAsked: search.open()
                onDayAsked: day.open()
            }
            DayBanner { width: parent.width }
            Banner {
                width: parent.width
                visible: Desk.demo
                edge: Theme.rattan
                text: qsTr("This is the demo fleet: invented, and gone when the program ends. Your own record is not touched.")
                action: qsTr("Back to your record")
                onActed: Desk.askOwn()
            }
            Banner {
                width: parent.width
                visible: text !== ""
                edge: Theme.ember
                text: Desk.setBack
                action: qsTr("It is meant to be so")
                onActed: Desk.goOnSetBack()
            }
            Banner {
                width: parent.width
                visible: Desk.state === Desk.Failed || Desk.readOnly || text !== "" && Fleet.problem !== ""
                edge: Theme.ember
                text: Desk.trouble !== "" ? Desk.trouble : Fleet.problem
                action: Desk.damaged ? qsTr("What can be done") : ""
                onActed: window.goToUpkeep()
            }
        }
        Item {
            id: places
            anchors.top: top.bottom
            anchors.topMargin: window.phone && notice.visible ? notice.height + 2 * Theme.gap : 0 // it covers nothing
            anchors.bottom: parent.bottom
            anchors.bottomMargin: !window.phone && notice.visible ? notice.height + 2 * Theme.gap : 0
            width: parent.width

            NextPage {
                id: next
                objectName: "next"
                anchors.fill: parent
                visible: window.place === 0 && window.sayable
                phone: window.phone
                onBalloonAsked: balloon => window.goToBalloon(balloon)
                onItemAsked: item => window.goToItem(item)
                onFabricAsked: item => window.goToFabric(item)
                onDirectiveAsked: directive => window.goToDirective(directive)
                onAct: (kind, balloon, item, requirement) => form.begin(kind, balloon, item, requirement)
                onCorrect: entry => form.correct(entry)
                onVoidEntry: entry => form.voidEntry(entry)
                onNotifiedAsked: (given, about) => form.beginWith("event.notified", "", given, about)
            }
            BalloonsPage {
                id: balloons
                objectName: "balloons"
                anchors.fill: parent
                visible: window.place === 1 && window.sayable
                phone: window.phone
                onDueAsked: (item, requirement) => window.goToDue(item, requirement)
                onAct: (kind, balloon, item, requirement) => form.begin(kind, balloon, item, requirement)
                onCorrect: entry => form.correct(entry)
                onVoidEntry: entry => form.voidEntry(entry)
                onInspect: balloon => window.inspect(balloon)
                onRectify: (balloon, item, requirement) => {
                    window.place = 2;
                    bench.detailShown = false;
                    bench.beginRectification(balloon, item, requirement);
                }
                onDefectOfFlight: flight => form.defectOfFlight(flight)
                onEventOfFlight: flight => form.eventOfFlight(flight)
                onNotifiedAsked: (given, about) => form.beginWith("event.notified", "", given, about)
                onReadingAsked: (item, given, about) => form.beginWith("reading.taken", item, given, about)
                onBatchAsked: (kind, items) => form.beginFor(kind, items)
            }
            BenchPage {
                id: bench
                objectName: "bench"
                anchors.fill: parent
                visible: window.place === 2 && window.sayable
                phone: window.phone
                onAct: (kind, inspection, defect, item) => {
                    form.beginAtBench(kind, inspection, defect, item, inspection === "" ? [] : bench.desk.scope);
                    if (inspection === "")
                        return;
                    form.offerTasks(bench.desk.ownerTasks);
                    if (bench.desk.graded)
                        form.askGrade();
                    if (defect !== "")
                        form.askPlace(bench.desk.placeOfDefect(defect));
                }
                onFindingAsked: (inspection, item, line, finding) => form.beginFinding(inspection, item, line, finding, bench.desk.scope)
                onCorrect: entry => form.correct(entry)
                onMendAsked: (entry, key) => form.correct(entry, key)
                onListAsked: balloon => window.goToList(balloon)
                onDirectiveAsked: (inspection, directive, revision, item, about) => form.beginFor("directive.answered", [item], {
                    inspection: inspection,
                    directive: directive,
                    revision: revision
                }, about)
                onEventAsked: balloon => form.begin("event.reported", balloon, "", "")
                onEnterAsked: form.begin("whole-balloon")
            }
            RulesPage {
                id: rules
                objectName: "rules"
                anchors.fill: parent
                visible: window.place === 3 && window.sayable
                phone: window.phone
                onAdopt: programme => form.adopt(programme)
                onAdoptFile: file => form.adoptFile(file)
                onDueAsked: (item, requirement) => window.goToDue(item, requirement)
                onItemAsked: item => window.goToItem(item)
                onEnterDirective: form.begin("directive.issued")
                onAnswerDirective: (directive, revision, about, items) => form.beginFor("directive.answered", items, {
                    directive: directive,
                    revision: revision
                }, about)
                onCorrect: entry => form.correct(entry)
            }
            RecordPage {
                id: record
                objectName: "record"
                anchors.fill: parent
                visible: window.place === 4 && (Fleet.ready || Desk.damaged)
                phone: window.phone
                onCorrect: entry => form.correct(entry)
                onVoidEntry: entry => form.voidEntry(entry)
                onDefectOfFlight: flight => form.defectOfFlight(flight)
                onOpenAsked: files.open()
            }
            EmptyPlace {
                anchors.fill: parent
                visible: !window.sayable && !record.visible
                title: Desk.damaged ? qsTr("Nothing is said from a record that is not intact") : Desk.state === Desk.Failed ? qsTr("The record is not open") : Desk.state === Desk.Filling ? qsTr("Writing the demo fleet into a record of its own …") : qsTr("Opening the record …")
                text: Desk.state === Desk.Failed ? qsTr("Nothing was changed in it: %1\n\nIf it was your record, open its latest backup: a file crownring-….sqlite, in your documents folder unless another was chosen.").arg(Desk.location) : Desk.location
                action: Desk.damaged ? qsTr("What can be done") : Desk.state === Desk.Failed ? qsTr("Open a backup or another file …") : ""
                onActed: {
                    if (Desk.damaged)
                        window.goToUpkeep();
                    else
                        files.open();
                }
                shape: LineSign.Balloons
            }
        }
    }
    BottomBar {
        id: bar
        objectName: "bar"
        anchors.bottom: parent.bottom
        width: parent.width
        visible: window.phone
        place: window.place
        onChosen: place => window.place = place
    }
    // Where the places leave room for it: on a phone at the top, since the actions are at the bottom there.
    NoticeBar {
        id: notice
        x: room.x + Theme.gap
        y: window.phone ? top.height + Theme.gap : parent.height - height - Theme.gap
        width: Math.min(room.width - 2 * Theme.gap, 640)
    }

    FileDialog {
        id: files
        title: qsTr("Open a record")
        acceptLabel: qsTr("Open")
        nameFilters: [qsTr("Records (*.sqlite *.crownring)"), qsTr("All files (*)")]
        onAccepted: record.place.openFile(selectedFile)
    }
    SearchSheet {
        id: search
        objectName: "search"
        onBalloonChosen: balloon => window.goToBalloon(balloon)
        onItemChosen: item => window.goToItem(item)
        onRequirementChosen: requirement => {
            window.place = 3;
            rules.showRequirement(requirement);
        }
        onInspectionChosen: inspection => {
            window.place = 2;
            bench.showInspection(inspection);
        }
        onEntryChosen: entry => {
            window.place = 4;
            record.showEntry(entry);
        }
    }
    DaySheet {
        id: day
        objectName: "day"
    }
    EntrySheet {
        objectName: "form"
        form: form
    }
}
