// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme

// A name and what it says, or nothing at all when it says nothing.
Column {
    id: facts

    required property string name
    property string text: ""

    visible: facts.text !== ""
    spacing: 2
    Label {
        width: parent.width
        text: facts.name
        soft: true
        font.pixelSize: Theme.textSmall
    }
    Label {
        width: parent.width
        text: facts.text
    }
}
