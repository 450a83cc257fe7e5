// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Form

// What flew: what is fitted, each part to be tapped and another put in its place, for this flight or from now on.
Column {
    id: editor

    required property FlightKit kit

    signal shownMore()

    spacing: Theme.tight

    function ask(row: int) {
        editor.kit.ask(row);
        editor.enter();
    }
    // Into the chooser, where one is open.
    function enter() {
        if (seeking.item === null)
            return;
        (seeking.item as Chooser).enter();
        editor.forceLayout();
        editor.shownMore();
    }

    Flow {
        width: parent.width
        spacing: Theme.tight
        Accessible.role: Accessible.Grouping
        Accessible.name: qsTr("What flew")
        Repeater {
            model: editor.kit
            Chip {
                required property int index
                required property string item
                required property string spoken
                required property bool flies
                required property bool differing
                objectName: "kit." + item
                text: spoken
                chosen: differing || index === editor.kit.asked
                Accessible.checked: flies
                onClicked: editor.ask(index)
            }
        }
        Chip {
            objectName: "kit.add"
            text: qsTr("+ something else")
            chosen: editor.kit.asked >= 0 && editor.kit.asked === editor.kit.count
            onClicked: editor.ask(editor.kit.count)
        }
    }
    Label {
        width: parent.width
        visible: text !== ""
        text: editor.kit.asking
        font.bold: true
    }
    Loader {
        id: seeking
        width: parent.width
        active: editor.kit.asked >= 0
        visible: seeking.active
        sourceComponent: Chooser {
            name: editor.kit.asking
            sift: editor.kit.sift
            onPicked: value => {
                editor.kit.pick(value);
                editor.enter();
            }
            onDropped: editor.kit.ask(editor.kit.asked)
        }
    }
    Flow {
        width: parent.width
        visible: editor.kit.asked >= 0 && editor.kit.asked < editor.kit.count
        spacing: Theme.snug
        Button {
            objectName: "kit.without"
            text: qsTr("Nothing instead")
            onClicked: editor.kit.leaveOut()
        }
        Button {
            objectName: "kit.back"
            text: qsTr("As fitted")
            onClicked: editor.kit.putBack()
        }
    }
    Label {
        width: parent.width
        objectName: "kit.told"
        visible: text !== ""
        text: editor.kit.told
        font.bold: true
        Accessible.role: Accessible.AlertMessage
    }
    Segments {
        visible: editor.kit.mayStay
        names: [qsTr("This flight only"), qsTr("From now on")]
        codes: ["kit.once", "kit.stays"]
        current: editor.kit.stays ? 1 : 0
        onChosen: index => editor.kit.stays = index === 1
    }
}
