// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts

// One thing to choose: its name, what it is, its standing.
Line {
    id: line

    required property string value
    required property string label
    required property string detail
    required property int standing
    property bool current: false

    objectName: "choice." + line.value
    height: Theme.touch
    chosen: line.current
    Accessible.name: line.detail === "" ? line.label : qsTr("%1, %2").arg(line.label).arg(line.detail)

    contentItem: Item {
        GoreGauge {
            id: gauge
            anchors.verticalCenter: parent.verticalCenter
            width: 15
            height: 24
            visible: line.standing >= 0
            standing: line.standing
            used: 0.4
            decoration: true
        }
        Column {
            anchors.left: gauge.right
            anchors.leftMargin: Theme.snug
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            Label {
                width: parent.width
                text: line.label
                elide: Text.ElideRight
                maximumLineCount: 1
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                visible: text !== ""
                text: line.detail
                soft: true
                font.pixelSize: Theme.textSmall
                elide: Text.ElideRight
                maximumLineCount: 1
                Accessible.ignored: true
            }
        }
    }
}
