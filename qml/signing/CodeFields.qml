// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Signing

// The code of who signs: one field, or two where it is the first. Return goes on to the second and never signs.
Column {
    id: fields

    required property OwnCode code

    // Puts the keyboard into it; false where no code is asked for.
    function enter(): bool {
        if (fields.visible)
            own.forceActiveFocus(Qt.TabFocusReason);
        return fields.visible;
    }

    visible: fields.code.asked
    spacing: Theme.tight

    Label {
        width: parent.width
        bottomPadding: Theme.tight
        text: fields.code.about
    }
    Label {
        width: parent.width
        text: fields.code.first ? qsTr("A code of %1's own, at least 8 characters").arg(fields.code.person) : qsTr("Code of %1").arg(fields.code.person)
        font.bold: true
        Accessible.ignored: true
    }
    SecretField {
        id: own
        objectName: "code.own"
        width: parent.width
        name: fields.code.first ? qsTr("A code of %1's own, at least 8 characters").arg(fields.code.person) : qsTr("Code of %1").arg(fields.code.person)
        text: fields.code.code
        onTextEdited: fields.code.code = text
        onAccepted: {
            if (fields.code.first)
                again.forceActiveFocus(Qt.TabFocusReason);
        }
    }
    Label {
        width: parent.width
        visible: again.visible
        text: qsTr("The same again")
        font.bold: true
        Accessible.ignored: true
    }
    SecretField {
        id: again
        objectName: "code.again"
        width: parent.width
        visible: fields.code.first
        name: qsTr("The same again")
        text: fields.code.again
        onTextEdited: fields.code.again = text
    }
    Label {
        width: parent.width
        objectName: "code.problem"
        visible: text !== ""
        text: fields.code.problem
        color: Theme.ember
        font.bold: true
        Accessible.role: Accessible.AlertMessage
    }
}
