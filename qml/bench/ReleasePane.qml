// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Wording
import Crownring.Bench

// Who signs what, why not yet, and the exact words; after signing, what is due next and the papers.
Item {
    id: pane

    required property InspectionDesk desk
    required property ReleaseDesk release
    property bool phone: false

    readonly property string inspection: pane.desk.inspection
    onInspectionChanged: scroll.contentY = 0

    signal lineAsked(line: string, item: string)
    signal readingAsked(entry: string, equipment: bool)
    signal workAsked(entry: string, key: string)
    signal defectsAsked
    signal listAsked(balloon: string)
    signal act(kind: string, defect: string, item: string)

    readonly property bool open: pane.desk.loaded && pane.desk.open
    readonly property bool abandoned: pane.desk.abandoned || pane.open && pane.release.outcome === 2
    readonly property real measure: Math.min(scroll.width - 2 * scroll.margin, 820) // of a line that is read

    // First for the keyboard, last for the eye.
    Rectangle {
        id: bar
        z: 1
        anchors.bottom: parent.bottom
        width: parent.width
        height: 60
        color: Theme.sheet
        visible: pane.open
        Rule { width: parent.width }
        Button {
            objectName: "bench.sign"
            anchors.fill: parent
            anchors.margins: Theme.snug
            anchors.leftMargin: Theme.wide
            anchors.rightMargin: Theme.wide
            enabled: pane.release.maySign && (pane.release.outcome !== 2 || pane.desk.inspector !== "")
            primary: pane.release.outcome !== 2
            text: pane.release.signing ? qsTr("Signing …") : pane.release.outcome === 0 ? qsTr("Sign the release …") : pane.release.outcome === 1 ? qsTr("Sign the list of discrepancies …") : pane.release.outcome === 2 ? qsTr("Abandon the inspection …") : qsTr("Sign the release after incomplete maintenance …")
            onClicked: signing.open()
        }
    }
    Scroll {
        id: scroll
        anchors.fill: parent
        anchors.bottomMargin: bar.visible ? bar.height : 0
        visible: pane.desk.loaded
        margin: pane.phone ? Theme.wide : Theme.broad

        Row {
            width: pane.measure
            visible: !pane.open
            spacing: Theme.gap
            StateBox {
                id: ended
                anchors.verticalCenter: parent.verticalCenter
                settledAs: pane.desk.endedAs
            }
            Label {
                width: parent.width - ended.width - Theme.gap
                text: pane.desk.outcome
                font.bold: !pane.desk.abandoned
                font.pixelSize: Theme.textLarge
            }
        }
        Label {
            width: pane.measure
            visible: pane.desk.abandoned
            text: qsTr("Nothing is released and nothing was signed for. What was written stays in the record.")
        }
        Label {
            width: pane.measure
            visible: text !== ""
            text: pane.desk.since
            color: Theme.ember
            font.bold: true
        }
        SigningForm {
            width: pane.measure
            visible: pane.open
            release: pane.release
        }
        RefusalList {
            width: pane.measure
            visible: pane.open && pane.release.refusals.count > 0
            release: pane.release
            barring: pane.desk.barring
            onLineAsked: (line, item) => pane.lineAsked(line, item)
            onReadingAsked: (entry, equipment) => pane.readingAsked(entry, equipment)
            onWorkAsked: (entry, key) => pane.workAsked(entry, key)
            onDefectsAsked: pane.defectsAsked()
        }
        Label {
            width: pane.measure
            objectName: "bench.nocheckflight"
            visible: pane.open && pane.release.outcome === 3 && pane.release.noCheckFlight !== ""
            text: qsTr("It may be signed so, but no check flight can rest on it:\n%1").arg(pane.release.noCheckFlight)
            color: Theme.ember
            font.bold: true
            Accessible.role: Accessible.AlertMessage
        }
        Statement {
            width: pane.measure
            visible: !pane.abandoned
            release: pane.release
            signed: !pane.open
        }
        Label {
            width: pane.measure
            objectName: "bench.provenBy"
            visible: text !== ""
            text: pane.release.provenBy
            soft: true
        }
        WordingNote {
            width: pane.measure
            visible: !pane.abandoned && pane.release.wording.count > 0
            wording: pane.release.wording
            onWordingAsked: key => reading.openText(key)
        }
        Caution {
            width: pane.measure
            padding: 0
            text: pane.release.caution
            font.pixelSize: Theme.text
            color: Theme.ink
        }
        Label {
            width: pane.measure
            visible: text !== ""
            text: pane.release.problem
            color: Theme.ember
            font.bold: true
            Accessible.role: Accessible.AlertMessage
        }
        Button {
            objectName: "bench.list"
            visible: pane.desk.listedAt !== ""
            primary: true
            text: qsTr("To the list and the approval, at %1").arg(pane.desk.listedAt)
            onClicked: pane.listAsked(pane.desk.listedAt)
        }
        Button {
            objectName: "bench.withdraw"
            visible: pane.desk.withdrawable
            quiet: true
            text: qsTr("Withdraw this release …")
            onClicked: pane.act("release.revoked", "", "")
        }
        TextRows {
            width: pane.measure
            visible: pane.open && count > 0
            title: qsTr("What it states")
            rows: pane.release.sections
        }
        TextRows {
            width: pane.measure
            title: qsTr("What an owner may not release")
            rows: pane.release.ownerRules
        }
        Papers {
            id: papers
            width: pane.measure
            release: pane.release
        }
        TextRows {
            width: pane.measure
            visible: !pane.open && !pane.desk.abandoned && count > 0
            title: qsTr("Due next")
            rows: pane.release.dueNext
        }
    }
    WordingSheet {
        id: reading
        objectName: "bench.wording"
        desk: WordingDesk {}
    }
    SignSheet {
        id: signing
        objectName: "bench.signing"
        release: pane.release
        onClosed: {
            if (signing.done)
                papers.takeFocus();
        }
    }
}
