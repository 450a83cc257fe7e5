// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Lists
import Crownring.Parts
import Crownring.Signing
import Crownring.Wording
import Crownring.Returns

// Approving the return to service: who approves and as what, why not yet, the words, and one button that names who.
Sheet {
    id: sheet

    required property ReturnDesk desk

    readonly property string standingOfSigner: {
        const people = sheet.desk.people;
        const at = sheet.desk.signerAt;
        return at < 0 || people.count === 0 ? "" : String(people.data(people.index(at, 0), ChoiceModel.DetailRole) ?? "");
    }

    signal readingAsked(item: string, requirement: string)

    function openFor(inspection: string) {
        sheet.desk.begin(inspection);
        sheet.open();
    }

    title: qsTr("Approve the return to service")
    widest: 640
    tallest: 620
    onOpened: people.forceActiveFocus(Qt.TabFocusReason) // who signs is chosen first; the button is never the default

    onClosed: sheet.desk.code.forget()

    Connections {
        target: sheet.desk
        function onApprovedNow() {
            sheet.close();
        }
    }

    Scroll {
        anchors.fill: parent
        anchors.bottomMargin: foot.height
        Label {
            width: parent.width
            text: qsTr("After inspection %1").arg(sheet.desk.inspection)
            font.bold: true
        }
        Label {
            width: parent.width
            text: qsTr("Who approves")
            font.bold: true
            Accessible.ignored: true
        }
        ChoiceField {
            id: people
            objectName: "returns.signer"
            width: parent.width
            name: qsTr("Who approves, and as what")
            empty: sheet.desk.askingPeople ? qsTr("asking the record who may …") : sheet.desk.people.count === 0 ? qsTr("the record authorises nobody") : qsTr("choose …")
            model: sheet.desk.people
            at: sheet.desk.signerAt
            onPickedAt: at => sheet.desk.signerAt = at
        }
        Label {
            width: parent.width
            visible: text !== ""
            text: sheet.standingOfSigner
            soft: true
            font.pixelSize: Theme.textSmall
        }
        Repeater {
            model: sheet.desk.refusals
            Column {
                id: refusal
                required property int index
                required property string label
                required property string detail
                objectName: "returns.refusal." + refusal.index
                width: parent?.width ?? 0
                Label {
                    width: parent.width
                    text: refusal.label
                    color: Theme.ember
                    font.bold: true
                    Accessible.role: Accessible.AlertMessage
                }
                Label {
                    width: parent.width
                    visible: text !== ""
                    text: refusal.detail
                    soft: true
                    font.pixelSize: Theme.textSmall
                }
                Button {
                    readonly property list<string> reads: sheet.desk.readingOfRefusal(refusal.index)
                    objectName: "returns.refusal." + refusal.index + ".read"
                    visible: reads.length > 0
                    text: qsTr("Read it in a visit …")
                    Accessible.name: qsTr("Read it in a visit: %1").arg(refusal.label)
                    onClicked: {
                        const [item, requirement] = reads;
                        sheet.close();
                        sheet.readingAsked(item, requirement);
                    }
                }
            }
        }
        WordingNote {
            width: parent.width
            wording: sheet.desk.wording
            onWordingAsked: key => reading.openText(key)
        }
        Rectangle {
            width: parent.width
            height: words.implicitHeight + 2 * Theme.wide
            visible: sheet.desk.statement !== "" && sheet.desk.signer !== ""
            color: Theme.sheet
            border.width: 2
            border.color: Theme.rattan
            radius: Theme.radius
            Label {
                id: words
                objectName: "returns.statement"
                x: Theme.wide
                y: Theme.wide
                width: parent.width - 2 * Theme.wide
                text: sheet.desk.statement
                font.pixelSize: Theme.textLarge
            }
        }
        Label {
            width: parent.width
            visible: text !== "" && sheet.desk.signer !== ""
            text: sheet.desk.statementSource
            soft: true
            font.pixelSize: Theme.textSmall
        }
        Label {
            width: parent.width
            visible: text !== ""
            text: sheet.desk.accomplished
        }
        CodeFields {
            width: parent.width
            visible: sheet.desk.signer !== "" && sheet.desk.refusals.count === 0 && sheet.desk.code.asked
            code: sheet.desk.code
        }
        Label {
            width: parent.width
            text: qsTr("What is approved stays in the record: it can be withdrawn, never erased.")
        }
        Caution {
            width: parent.width
            padding: 0
            text: sheet.desk.caution
        }
        Label {
            width: parent.width
            visible: text !== ""
            text: sheet.desk.problem
            color: Theme.ember
            font.bold: true
            Accessible.role: Accessible.AlertMessage
        }
    }
    WordingSheet {
        id: reading
        objectName: "returns.wording"
        desk: WordingDesk {}
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
            anchors.right: approve.left
            anchors.rightMargin: Theme.gap
            anchors.verticalCenter: parent.verticalCenter
            text: sheet.desk.signer
            font.bold: true
            elide: Text.ElideRight
            maximumLineCount: 2
        }
        Button {
            id: approve
            objectName: "returns.confirm"
            anchors.right: parent.right
            anchors.rightMargin: Theme.wide
            anchors.verticalCenter: parent.verticalCenter
            enabled: sheet.desk.mayApprove && sheet.desk.code.ready
            text: sheet.desk.approving ? qsTr("Approving …") : qsTr("I approve this")
            onClicked: sheet.desk.approve()
        }
    }
}
