// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk
import Crownring.Events
import Crownring.Next

// The place Next: the horizon, the list under it, the rig-up check, the days to come, the calendar and the visit
// planner.
FocusScope {
    id: page

    property bool phone: false
    property alias detailShown: pair.detailShown
    property int leaf: 0 // 0 what comes next, 1 rig-up check, 2 days to come, 3 calendar, 4 visit planner
    property bool unfolded: false // a phone's strip and fields of the filter
    property bool byUse: false    // a desk's strip shows hours left

    signal balloonAsked(balloon: string)
    signal itemAsked(item: string)
    signal fabricAsked(item: string)
    signal directiveAsked(directive: string)
    signal act(kind: string, balloon: string, item: string, requirement: string)
    signal correct(entry: string)
    signal voidEntry(entry: string)
    signal notifiedAsked(given: var, about: string)

    readonly property alias place: next
    readonly property alias check: rigUp

    // What is asked for from elsewhere is not hidden by what was filtered by here.
    function showDue(item: string, requirement: string) {
        if (next.ready && !next.holds(item, requirement))
            next.clearFilters();
        detail.show(item, requirement);
        pair.detailShown = true;
    }
    function openRow(index: int) {
        const at = next.list.index(index, 0);
        if (!at.valid)
            return;
        page.showDue(String(next.list.data(at, DueModel.ItemRole)), String(next.list.data(at, DueModel.RequirementRole)));
    }

    // The detail is of a row of the list: a desk shows the first at once, a phone waits for a tap.
    Connections {
        target: next
        function onListed() {
            if (detail.item !== "" && next.holds(detail.item, detail.requirement))
                return;
            if (page.phone)
                pair.detailShown = false;
            else if (next.list.count > 0)
                page.openRow(0);
            else
                detail.show("", "");
        }
    }
    NextPlace { id: next }
    DueDetail { id: detail }
    RigUpCheck { id: rigUp }
    AgendaDesk {
        id: agenda
        shown: page.visible && (page.leaf === 2 || page.leaf === 3)
    }
    CalendarDesk {
        id: calendar
        shown: page.visible && page.leaf === 3
    }
    PlanDesk { id: planner }
    EventDesk {
        id: events
        looking: page.visible
    }

    Segments {
        id: leaves
        x: Theme.wide
        width: Math.min(parent.width - 2 * Theme.wide, page.phone ? parent.width : inOneRow)
        names: [qsTr("What comes next"), qsTr("Rig-up check"), qsTr("Days to come"), qsTr("Calendar"), qsTr("Visit planner")]
        codes: ["next.list", "next.rigUp", "next.agenda", "next.calendar", "next.plan"]
        current: page.leaf
        onChosen: index => page.leaf = index
    }
    Label {
        objectName: "next.leftOut"
        anchors.left: leaves.right
        anchors.leftMargin: Theme.wide
        anchors.right: ways.left
        anchors.rightMargin: Theme.gap
        anchors.verticalCenter: leaves.verticalCenter
        visible: ways.visible && !Habits.horizonFolded && text !== "" && width > 100
        text: page.byUse ? next.use.leftOut : next.calendar.leftOut
        soft: true
        font.pixelSize: Theme.textSmall
        horizontalAlignment: Text.AlignRight
        elide: Text.ElideRight
        maximumLineCount: 2
    }
    Row {
        id: ways
        anchors.right: parent.right
        anchors.rightMargin: Theme.wide
        visible: !page.phone && page.leaf === 0
        spacing: Theme.tight
        Button {
            objectName: "next.report"
            quiet: true
            text: qsTr("Report an event …")
            onClicked: page.act("event.reported", "", "", "")
        }
        Chip {
            text: qsTr("Next six weeks")
            chosen: next.weeks === 6
            onClicked: next.chooseWeeks(6)
        }
        Chip {
            visible: !Habits.horizonFolded
            text: qsTr("By hours left")
            chosen: page.byUse
            onClicked: page.byUse = !page.byUse
        }
        Button {
            objectName: "next.fold"
            quiet: true
            text: Habits.horizonFolded ? qsTr("Show the strip") : qsTr("Fold the strip")
            onClicked: Habits.horizonFolded = !Habits.horizonFolded
        }
    }

    Flickable {
        id: notesView
        anchors.top: leaves.bottom
        width: parent.width
        height: visible ? Math.min(notes.implicitHeight, page.height / 2) : 0
        visible: notes.wanted && page.leaf === 0
        contentHeight: notes.implicitHeight
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        EventNotes {
            id: notes
            width: notesView.width
            desk: events
            onNotifiedAsked: (given, about) => page.notifiedAsked(given, about)
        }
    }
    Item {
        anchors.top: notesView.bottom
        anchors.bottom: parent.bottom
        width: parent.width
        visible: page.leaf === 0

        Loader {
            id: deskTop
            width: parent.width
            active: !page.phone
            sourceComponent: Column {
                width: deskTop.width
                spacing: Theme.snug
                Horizon {
                    width: parent.width
                    visible: !Habits.horizonFolded
                    place: next
                    byUse: page.byUse
                }
                DueFilters {
                    x: Theme.wide
                    width: parent.width - 2 * Theme.wide
                    place: next
                }
                Rule { width: parent.width }
            }
        }
        ListAndDetail {
            id: pair
            anchors.top: page.phone ? parent.top : deskTop.bottom
            anchors.bottom: foot.top
            width: parent.width
            phone: page.phone
            listShare: 0.56
            detailName: detail.title
            onClosed: pair.detailShown = false
            list: [
                DueListPane {
                    anchors.fill: parent
                    place: next
                    detail: detail
                    phone: page.phone
                    unfolded: page.unfolded
                    onFold: page.unfolded = !page.unfolded
                    onOpened: index => page.openRow(index)
                    onAct: kind => page.act(kind, "", "", "")
                }
            ]
            detail: [
                DueDetailPane {
                    anchors.fill: parent
                    detail: detail
                    onBalloonAsked: balloon => page.balloonAsked(balloon)
                    onItemAsked: item => page.itemAsked(item)
                    onFabricAsked: item => page.fabricAsked(item)
                    onDirectiveAsked: directive => page.directiveAsked(directive)
                    onAct: (kind, balloon, item, requirement) => page.act(kind, balloon, item, requirement)
                }
            ]
        }
        Rectangle {
            id: foot
            anchors.bottom: parent.bottom
            width: parent.width
            height: page.phone ? 0 : caution.implicitHeight
            visible: !page.phone
            color: Theme.paper
            Rule { width: parent.width }
            Caution {
                id: caution
                width: parent.width
                topPadding: Theme.tight
                bottomPadding: Theme.tight
            }
        }
    }

    Loader {
        anchors.top: leaves.bottom
        anchors.bottom: parent.bottom
        width: parent.width
        active: page.leaf === 2
        sourceComponent: AgendaPane {
            phone: page.phone
            desk: agenda
            onPlanAsked: kind => page.act(kind, "", "", "")
            onCorrect: entry => page.correct(entry)
            onVoidEntry: entry => page.voidEntry(entry)
        }
    }
    Loader {
        anchors.top: leaves.bottom
        anchors.topMargin: Theme.snug
        anchors.bottom: parent.bottom
        width: parent.width
        active: page.leaf === 3
        sourceComponent: CalendarPane {
            phone: page.phone
            desk: calendar
            balloons: agenda.balloons
            onPlanAsked: kind => page.act(kind, calendar.balloon, "", "")
            onCorrect: entry => page.correct(entry)
            onVoidEntry: entry => page.voidEntry(entry)
        }
    }
    Loader {
        anchors.top: leaves.bottom
        anchors.topMargin: Theme.snug
        anchors.bottom: parent.bottom
        width: parent.width
        active: page.leaf === 4
        sourceComponent: PlanPane {
            phone: page.phone
            desk: planner
        }
    }
    RigUpPage {
        anchors.top: leaves.bottom
        anchors.bottom: parent.bottom
        width: parent.width
        visible: page.leaf === 1
        phone: page.phone
        check: rigUp
        onOpened: (item, requirement) => {
            page.leaf = 0;
            page.showDue(item, requirement);
        }
    }
}
