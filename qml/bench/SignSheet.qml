// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Bench

// The last look before signing: the words again, who signs them, and one button.
Sheet {
    id: sheet

    required property ReleaseDesk release

    property bool done: false

    title: sheet.release.outcome === 0 ? qsTr("Sign the release") : sheet.release.outcome === 1 ? qsTr("Sign the list of discrepancies") : sheet.release.outcome === 2 ? qsTr("Abandon the inspection") : qsTr("Sign the release after incomplete maintenance")
    widest: 640
    tallest: 560
    onAboutToShow: sheet.done = false
    onOpened: sign.forceActiveFocus(Qt.TabFocusReason)

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
            release: sheet.release
        }
        Label {
            width: parent.width
            text: qsTr("After signing the inspection is locked. A mistake can then only be corrected, and both stay legible.")
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
            anchors.right: sign.left
            anchors.rightMargin: Theme.gap
            anchors.verticalCenter: parent.verticalCenter
            text: sheet.release.signer
            font.bold: true
            elide: Text.ElideRight
            maximumLineCount: 2
        }
        Button {
            id: sign
            objectName: "bench.sign.confirm"
            anchors.right: parent.right
            anchors.rightMargin: Theme.wide
            anchors.verticalCenter: parent.verticalCenter
            primary: true
            enabled: sheet.release.maySign
            text: sheet.release.signing ? qsTr("Signing …") : qsTr("I sign this")
            onClicked: sheet.release.sign()
        }
    }
}
