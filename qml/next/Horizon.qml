// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Next

// The fleet's next twelve months along the calendar, or what use limits by hours left. A tap on a bin leaves its rows in
// the list. One lane is shown at a time, and what stands in none of its bins is said beside it.
Item {
    id: horizon

    required property NextPlace place
    property bool phone: false
    property bool byUse: false

    readonly property real weekWidth: horizon.phone ? Theme.touch : Math.max(16, Math.floor((horizon.width - 2 * Theme.wide - 4 * 64) / 52))

    implicitHeight: column.implicitHeight + Theme.gap

    Column {
        id: column
        x: Theme.wide
        y: horizon.phone ? 0 : Theme.snug
        width: horizon.width - 2 * Theme.wide
        spacing: Theme.tight

        Row {
            visible: horizon.phone
            spacing: Theme.tight
            Chip {
                text: qsTr("By date")
                chosen: !horizon.byUse
                onClicked: horizon.byUse = false
            }
            Chip {
                text: qsTr("By hours left")
                chosen: horizon.byUse
                onClicked: horizon.byUse = true
            }
        }
        HorizonLane {
            width: parent.width
            height: horizon.phone ? 118 : 92
            visible: !horizon.byUse
            bins: horizon.place.calendar
            name: qsTr("Horizon by date")
            chosen: horizon.place.calendarBin
            last: horizon.place.lastCalendarBin
            binWidth: horizon.weekWidth
            months: true
            onPicked: bin => horizon.place.chooseCalendarBin(bin)
            onStretched: bin => horizon.place.stretchTo(bin)
        }
        HorizonLane {
            width: parent.width
            height: horizon.phone ? 118 : 92
            visible: horizon.byUse
            bins: horizon.place.use
            name: qsTr("Horizon by hours left")
            chosen: horizon.place.useBin
            zoneWidth: horizon.phone ? 72 : column.width / 9
            onPicked: bin => horizon.place.chooseUseBin(bin)
        }
        Label {
            objectName: "horizon.leftOut"
            width: parent.width
            visible: horizon.phone && text !== ""
            text: horizon.byUse ? horizon.place.use.leftOut : horizon.place.calendar.leftOut
            soft: true
            font.pixelSize: Theme.textSmall
        }
    }
}
