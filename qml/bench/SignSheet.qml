// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Lists
import Crownring.Parts
import Crownring.Signing
import Crownring.Bench
import Crownring.Wording

// The last look before signing: the words again, who signs them, and one button.
Sheet {
    id: sheet

    required property ReleaseDesk release

    property bool done: false
    readonly property bool abandons: sheet.release.outcome === 2
    // Name and what it is signed as; the licence.
    readonly property string signer: sheet.ofSigner(ChoiceModel.LabelRole)
    readonly property string licence: sheet.ofSigner(ChoiceModel.DetailRole)
    function ofSigner(role: int): string {
        const people = sheet.release.people;
        const at = sheet.release.signerAt;
        return at < 0 || at >= people.count ? "" : String(people.data(people.index(at, 0), role) ?? "");
    }

    title: sheet.release.outcome === 0 ? qsTr("Sign the release") : sheet.release.outcome === 1 ? qsTr("Sign the list of discrepancies") : sheet.release.outcome === 2 ? qsTr("Abandon the inspection") : qsTr("Sign the release after incomplete maintenance")
    widest: 640
    tallest: 640
    onAboutToShow: {
        sheet.done = false;
        sheet.release.code.lookAgain();
    }
    onOpened: {
        if (!code.enter()) // Return never signs by itself
            back.forceActiveFocus(Qt.TabFocusReason);
    }
    onClosed: sheet.release.code.forget()

    Connections {
        target: sheet.release
        function onSignedNow() {
            sheet.done = true;
            sheet.close();
        }
    }

    Scroll {
        id: scroll
        anchors.fill: parent
        anchors.bottomMargin: foot.height
        Statement {
            width: parent.width
            visible: !sheet.abandons
            release: sheet.release
        }
        Label {
            width: parent.width
            visible: sheet.abandons
            text: qsTr("The inspection ends without a release. Nothing is signed for; %1 writes that it was abandoned.").arg(sheet.release.desk.inspector)
        }
        Column {
            width: parent.width
            visible: !sheet.abandons
            spacing: Theme.tight
            Label {
                width: parent.width
                objectName: "bench.sign.who"
                text: qsTr("Signed by: %1").arg(sheet.signer)
                font.bold: true
            }
            Label {
                width: parent.width
                text: qsTr("Licence, certificate or approval: %1").arg(sheet.licence)
            }
        }
        CodeFields {
            id: code
            width: parent.width
            visible: !sheet.abandons && sheet.release.code.asked
            code: sheet.release.code
            onVisibleChanged: {
                if (code.visible && sheet.opened)
                    code.enter();
            }
        }
        WordingNote {
            width: parent.width
            visible: !sheet.abandons && sheet.release.wording.count > 0
            wording: sheet.release.wording
        }
        Label {
            width: parent.width
            text: sheet.release.outcome === 3 ? qsTr("The visit stays open until its closing release. What is signed now stays legible as it was signed.") : qsTr("After signing the inspection is locked. A mistake can then only be corrected, and both stay legible.")
        }
        Caution {
            width: parent.width
            padding: 0
            text: sheet.release.caution
        }
        Label {
            width: parent.width
            visible: text !== ""
            text: sheet.release.problem
            color: Theme.ember
            font.bold: true
            Accessible.role: Accessible.AlertMessage
        }
    }
    Item {
        id: foot
        anchors.bottom: parent.bottom
        width: parent.width
        height: 68
        Rule { width: parent.width }
        Label {
            anchors.left: parent.left
            anchors.leftMargin: Theme.wide
            anchors.right: back.left
            anchors.rightMargin: Theme.gap
            anchors.verticalCenter: parent.verticalCenter
            text: sheet.abandons ? sheet.release.desk.inspector : sheet.signer
            font.bold: true
            elide: Text.ElideRight
            maximumLineCount: 2
        }
        Button {
            id: back
            objectName: "bench.sign.back"
            anchors.right: sign.left
            anchors.rightMargin: Theme.snug
            anchors.verticalCenter: parent.verticalCenter
            text: qsTr("Not yet")
            onClicked: sheet.close()
        }
        Button {
            id: sign
            objectName: "bench.sign.confirm"
            anchors.right: parent.right
            anchors.rightMargin: Theme.wide
            anchors.verticalCenter: parent.verticalCenter
            primary: false // the default is to go back
            enabled: sheet.release.maySign && (sheet.abandons || sheet.release.code.ready)
            text: sheet.release.signing ? qsTr("Signing …") : sheet.abandons ? qsTr("Abandon it") : qsTr("I sign this")
            onClicked: sheet.release.sign()
        }
    }
}
