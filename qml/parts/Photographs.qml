// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts

// Photographs of the record, small and beside each other.
Flow {
    id: row

    required property var digests
    required property string of // what they show

    signal shown(digest: string)

    visible: row.digests.length > 0
    spacing: Theme.snug
    Repeater {
        model: row.digests
        Photograph {
            required property int index
            required property string modelData
            objectName: "photograph." + index
            digest: modelData
            Accessible.name: qsTr("Photograph %1 of %2").arg(index + 1).arg(row.of)
            onClicked: row.shown(digest)
        }
    }
}
