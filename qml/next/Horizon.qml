// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk
import Crownring.Next

// The fleet's next twelve months: what has a date along the calendar, what use governs by hours left. A tap on a bin
// leaves its rows in the list. A phone shows one lane at a time.
Item {
    id: horizon

    required property NextPlace place
    property bool phone: false
    property bool byUse: false

    readonly property real weekWidth: horizon.phone ? Theme.touch : Math.max(16, Math.floor((horizon.width - 2 * Theme.wide - 3 * 64) / 52))

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
        Label {
            width: parent.width
            visible: !horizon.phone
            text: qsTr("By date: the weeks from %1").arg(Day.asked)
            soft: true
            font.pixelSize: Theme.textSmall
        }
        HorizonLane {
            width: parent.width
            height: 118
            visible: !horizon.phone || !horizon.byUse
            bins: horizon.place.calendar
            name: qsTr("Horizon by date")
            chosen: horizon.place.calendarBin
            binWidth: horizon.weekWidth
            months: true
            onPicked: bin => horizon.place.chooseCalendarBin(bin)
        }
        Label {
            width: parent.width
            visible: !horizon.phone
            text: qsTr("By hours left: use governs these; they have no date until use is forecast")
            soft: true
            font.pixelSize: Theme.textSmall
        }
        HorizonLane {
            width: parent.width
            height: horizon.phone ? 118 : 80
            visible: !horizon.phone || horizon.byUse
            bins: horizon.place.use
            name: qsTr("Horizon by hours left")
            chosen: horizon.place.useBin
            zoneWidth: horizon.phone ? 72 : column.width / 9
            onPicked: bin => horizon.place.chooseUseBin(bin)
        }
    }
}
