// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Wording

// One text: its words and where they are from, who adopted it, who has confirmed it, and the place to do either.
Item {
    id: pane

    required property WordingDesk desk
    property bool listed: false
    readonly property bool own: ownWords.text.trim() !== ""

    Scroll {
        anchors.fill: parent
        Button {
            visible: pane.listed
            quiet: true
            text: qsTr("‹ All texts")
            onClicked: pane.desk.show("")
        }
        Label {
            objectName: "wording.lacking"
            width: parent.width
            visible: text !== ""
            text: pane.desk.lacking
            color: Theme.ember
            font.bold: true
            Accessible.role: Accessible.AlertMessage
        }
        Rectangle {
            width: parent.width
            height: words.implicitHeight + 2 * Theme.wide
            color: Theme.sheet
            border.width: 2
            border.color: Theme.rattan
            radius: Theme.radius
            Label {
                id: words
                objectName: "wording.body"
                x: Theme.wide
                y: Theme.wide
                width: parent.width - 2 * Theme.wide
                text: pane.desk.body
            }
        }
        Label {
            width: parent.width
            text: pane.desk.source
            soft: true
            font.pixelSize: Theme.textSmall
        }
        Label {
            width: parent.width
            visible: text !== ""
            text: pane.desk.adopted
        }
        Repeater {
            model: pane.desk.confirmations
            Column {
                id: confirmation
                required property string label
                required property string detail
                width: parent?.width ?? 0
                Label {
                    width: parent.width
                    text: qsTr("Confirmed by %1").arg(confirmation.label)
                    font.bold: true
                }
                Label {
                    width: parent.width
                    text: confirmation.detail
                    soft: true
                    font.pixelSize: Theme.textSmall
                }
            }
        }
        Column {
            width: parent.width
            visible: pane.desk.mayBeConfirmed
            spacing: Theme.snug
            Heading {
                width: parent.width
                text: qsTr("Confirm it")
            }
            ChoiceField {
                objectName: "wording.person"
                width: parent.width
                name: qsTr("Who confirms, and as what")
                empty: pane.desk.people.count === 0 ? qsTr("the record authorises nobody who may sign it") : qsTr("choose …")
                model: pane.desk.people
                at: pane.desk.personAt
                onPickedAt: at => pane.desk.personAt = at
            }
            Field {
                id: against
                objectName: "wording.against"
                width: parent.width
                name: qsTr("Against which rule, as amended when")
                placeholderText: qsTr("rule, and its amendment or date")
            }
            Button {
                objectName: "wording.confirm"
                primary: true
                enabled: !pane.desk.writing && pane.desk.personAt >= 0 && against.text.trim() !== ""
                text: qsTr("I confirm it against this rule")
                onClicked: pane.desk.confirm(against.text)
            }
        }
        Column {
            width: parent.width
            visible: pane.desk.mayBeAdopted
            spacing: Theme.snug
            Heading {
                width: parent.width
                text: pane.desk.adopted === "" ? qsTr("Adopt it") : qsTr("Adopt another wording")
            }
            Field {
                id: organisation
                objectName: "wording.organisation"
                width: parent.width
                name: qsTr("Which organisation adopts it")
                placeholderText: qsTr("the organisation, or who signs in his own name")
            }
            TextBox {
                id: ownWords
                objectName: "wording.own"
                width: parent.width
                name: qsTr("Own wording; empty: as it ships")
                placeholderText: qsTr("own wording of your manual, with its places in braces; empty: as it ships")
            }
            Field {
                id: revision
                objectName: "wording.revision"
                width: parent.width
                visible: pane.own
                name: qsTr("Revision of your wording")
                placeholderText: qsTr("revision of your wording")
            }
            Button {
                objectName: "wording.adopt"
                enabled: !pane.desk.writing && organisation.text.trim() !== "" && (!pane.own || revision.text.trim() !== "")
                text: pane.own ? qsTr("Adopt this wording") : qsTr("Adopt it as it ships")
                onClicked: pane.desk.adopt(organisation.text, ownWords.text, revision.text)
            }
        }
        Label {
            objectName: "wording.problem"
            width: parent.width
            visible: text !== ""
            text: pane.desk.problem
            color: Theme.ember
            font.bold: true
            Accessible.role: Accessible.AlertMessage
        }
    }
}
