// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk

// Seen everywhere while the answers are not for today.
Banner {
    text: qsTr("Everything here is for %1, %2. Today is %3.").arg(Day.asked).arg(Day.distance).arg(Day.today)
    action: qsTr("Back to today")
    edge: Theme.heather
    visible: !Day.isToday
    onActed: Day.askToday()
}
