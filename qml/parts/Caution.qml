// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme

// Stands wherever someone could rely on an answer.
Label {
    id: caution

    text: qsTr("Crownring keeps records and computes; it never declares a balloon airworthy. The licensed person, the competent authority and the manufacturer's current instructions decide.")
    soft: true
    font.pixelSize: Theme.textSmall
    padding: Theme.wide
}
