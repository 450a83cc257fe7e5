// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Wording

// The wording that is signed: all of it with who adopted and confirmed it, or one text to read beside the rule.
Sheet {
    id: sheet

    required property WordingDesk desk
    property bool listed: false // from the list one goes back to it

    function openList() {
        sheet.listed = true;
        sheet.desk.show("");
        sheet.open();
    }
    function openText(key: string) {
        sheet.listed = false;
        sheet.desk.show(key);
        sheet.open();
    }

    title: sheet.desk.key === "" ? qsTr("Wording that is signed") : sheet.desk.title
    widest: 720
    tallest: 760

    Connections {
        target: sheet.desk
        function onConfirmedNow() {
            if (!sheet.listed)
                sheet.close();
        }
    }

    WordingList {
        anchors.fill: parent
        visible: sheet.desk.key === ""
        desk: sheet.desk
    }
    WordingText {
        anchors.fill: parent
        visible: sheet.desk.key !== ""
        desk: sheet.desk
        listed: sheet.listed
    }
}
