// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts

// One photograph, as large as the window lets it be.
Sheet {
    id: sheet

    property string digest: ""

    function show(digest: string) {
        sheet.digest = digest;
        sheet.open();
    }

    title: qsTr("Photograph")
    widest: sheet.parent ? Math.min(sheet.parent.width - 2 * Theme.wide, 1200) : 1200
    tallest: 1000

    Image {
        id: picture
        anchors.fill: parent
        anchors.margins: Theme.gap
        source: sheet.opened && sheet.digest !== "" ? "image://record/" + sheet.digest : ""
        fillMode: Image.PreserveAspectFit
        asynchronous: true
        Accessible.role: Accessible.Graphic
        Accessible.name: sheet.title
    }
    Label {
        anchors.centerIn: parent
        visible: picture.status === Image.Error
        text: qsTr("This photograph cannot be shown.")
    }
}
