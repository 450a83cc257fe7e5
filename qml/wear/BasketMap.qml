// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import Crownring.Theme
import Crownring.Parts
import Crownring.Wear

// A basket seen from above with its sides folded out: the long side with the data plate at the bottom, then clockwise; in the
// middle the floor with its runners, under it what has no side. A tap begins a reading at a place; what was read there
// stands under the map meanwhile and after.
Item {
    id: map

    required property WearDesk desk

    signal readingAsked(place: string)

    readonly property real side: Math.max(Theme.touch + Theme.gap, Math.min(132, map.width * 0.24))
    readonly property real across: map.width - 2 * map.side
    readonly property real strip: Theme.touch
    readonly property real along: 5 * map.strip // the floor and four runners

    implicitHeight: 2 * map.side + map.along + Theme.tight + Theme.touch

    // In the order of the places: floor, the sides each with the corner that ends it, rim, partition, runners.
    function frameOf(place: int): rect {
        const far = map.side + map.across;
        const low = map.side + map.along;
        const under = 2 * map.side + map.along + Theme.tight;
        switch (place) {
        case 0:
            return Qt.rect(map.side, map.side, map.across, map.strip);
        case 1:
            return Qt.rect(map.side, low, map.across, map.side);
        case 2:
            return Qt.rect(0, low, map.side, map.side);
        case 3:
            return Qt.rect(0, map.side, map.side, map.along);
        case 4:
            return Qt.rect(0, 0, map.side, map.side);
        case 5:
            return Qt.rect(map.side, 0, map.across, map.side);
        case 6:
            return Qt.rect(far, 0, map.side, map.side);
        case 7:
            return Qt.rect(far, map.side, map.side, map.along);
        case 8:
            return Qt.rect(far, low, map.side, map.side);
        case 9:
            return Qt.rect(0, under, map.width / 2, Theme.touch);
        case 10:
            return Qt.rect(map.width / 2, under, map.width / 2, Theme.touch);
        default:
            return Qt.rect(map.side, low - (place - 10) * map.strip, map.across, map.strip);
        }
    }

    Repeater {
        model: map.desk.places
        T.AbstractButton {
            id: place
            required property int index
            required property string value
            required property string label
            required property string detail
            required property int number
            required property int standing
            readonly property rect frame: map.frameOf(place.index)
            readonly property bool held: map.desk.place === place.value
            objectName: "wear.place." + place.value
            x: place.frame.x
            y: place.frame.y
            width: place.frame.width
            height: place.frame.height
            Accessible.role: Accessible.Button
            Accessible.name: place.number > 0 ? qsTr("%1: %2").arg(place.label).arg(place.detail) : qsTr("%1: never read").arg(place.label)
            onClicked: {
                map.desk.place = place.value;
                map.readingAsked(place.value);
            }
            Keys.onReturnPressed: place.clicked()
            Keys.onEnterPressed: place.clicked()
            background: Rectangle {
                color: place.held || place.down ? Theme.shade : place.number > 0 ? Theme.mapWeak : Theme.sheet
                border.width: place.held ? 2 : Theme.hair
                border.color: place.held ? Theme.rattan : Theme.edge
                FocusRing { shown: place.visualFocus; outset: -2 }
            }
            contentItem: Item {
                GoreGauge {
                    id: gauge
                    anchors.left: parent.left
                    anchors.leftMargin: Theme.tight
                    anchors.verticalCenter: parent.verticalCenter
                    width: visible ? 14 : 0
                    visible: place.standing >= 0
                    standing: place.standing
                    used: 0.5
                    decoration: true
                }
                Column {
                    anchors.left: gauge.right
                    anchors.leftMargin: Theme.tight
                    anchors.right: parent.right
                    anchors.rightMargin: Theme.tight
                    anchors.verticalCenter: parent.verticalCenter
                    Label {
                        width: parent.width
                        text: place.label
                        font.pixelSize: Theme.textSmall
                        elide: Text.ElideRight
                        maximumLineCount: 2
                        Accessible.ignored: true
                    }
                    Label {
                        width: parent.width
                        visible: place.detail !== ""
                        text: place.detail
                        font.pixelSize: Theme.textSmall
                        font.bold: true
                        elide: Text.ElideRight
                        maximumLineCount: 1
                        Accessible.ignored: true
                    }
                }
            }
        }
    }
}
