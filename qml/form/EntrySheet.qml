// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Form

// The form of one entry. It closes itself when the entry is written.
Sheet {
    id: sheet

    required property EntryForm form
    readonly property bool asked: sheet.form.open

    title: sheet.form.title
    onAskedChanged: sheet.asked ? sheet.open() : sheet.close()
    onOpened: sheet.closer.nextItemInFocusChain().forceActiveFocus() // the first field
    onClosed: sheet.form.cancel()

    Scroll {
        id: scroll
        anchors.fill: parent
        anchors.bottomMargin: foot.height
        Label {
            width: parent.width
            visible: text !== ""
            text: sheet.form.about
            soft: true
        }
        Repeater {
            model: sheet.form.fields
            FormField {
                width: scroll.width - 2 * Theme.wide
                onEdited: value => sheet.form.setValue(index, value)
                onToggled: choice => sheet.form.toggle(index, choice)
                onFocused: item => scroll.reveal(item)
            }
        }
    }
    Rectangle {
        id: foot
        anchors.bottom: parent.bottom
        width: parent.width
        height: Math.max(64, problem.implicitHeight + save.height + 3 * Theme.snug)
        color: "transparent"
        Rule { width: parent.width }
        Label {
            id: problem
            anchors.left: parent.left
            anchors.right: save.left
            anchors.margins: Theme.wide
            anchors.verticalCenter: parent.verticalCenter
            text: sheet.form.problem
            color: Theme.ember
            font.bold: true
            font.pixelSize: Theme.textSmall
            Accessible.role: Accessible.AlertMessage
        }
        Button {
            id: save
            anchors.right: parent.right
            anchors.rightMargin: Theme.wide
            anchors.verticalCenter: parent.verticalCenter
            primary: true
            enabled: !sheet.form.saving
            text: sheet.form.saving ? qsTr("Writing …") : sheet.form.verb
            onClicked: sheet.form.save()
        }
    }
}
