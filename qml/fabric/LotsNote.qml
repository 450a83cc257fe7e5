// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Fabric

// What the comparison of lots can find, and what its words mean.
Column {
    id: note

    required property LotsDesk desk

    spacing: Theme.gap

    Label {
        width: parent.width
        text: note.desk.detectable
    }
    Label {
        width: parent.width
        text: qsTr("Each lot is held against the others, whose own spread counts. Watch: of lots called so, one in ten may be as good as the others. Alarm: two looks three months apart agree; in one fleet of twenty some lot is called so although all are good.")
        soft: true
        font.pixelSize: Theme.textSmall
    }
}
