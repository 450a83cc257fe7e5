// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts

// One requirement's standing, drawn as one gore. The word stands beside it, so a reader of screens may pass it by.
GoreSign {
    id: gauge

    property string word: ""
    property bool decoration: false

    width: Theme.gauge
    height: Math.round(gauge.width * 1.7)
    tone: Theme.standing(gauge.standing)
    Accessible.role: Accessible.Graphic
    Accessible.name: gauge.word
    Accessible.ignored: gauge.decoration || gauge.word === ""
}
