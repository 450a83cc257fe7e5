// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import Crownring.Theme

T.Button {
    id: button

    property bool primary: false
    property bool quiet: false // no edge: for places with many of them

    implicitHeight: Theme.touch
    implicitWidth: Math.max(Theme.touch, words.implicitWidth + 2 * Theme.wide)
    opacity: button.enabled ? 1 : 0.45
    Accessible.name: button.text
    Accessible.role: Accessible.Button
    Keys.onReturnPressed: button.clicked()
    Keys.onEnterPressed: button.clicked()

    contentItem: Text {
        id: words
        textFormat: Text.PlainText
        text: button.text
        color: button.primary ? Theme.skyInk : Theme.ink
        font.pixelSize: Theme.text
        font.bold: button.primary
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        elide: Text.ElideRight
        Accessible.ignored: true
    }
    background: Rectangle {
        radius: Theme.radius
        color: button.primary ? Theme.sky : button.down ? Theme.shade : button.quiet ? "transparent" : Theme.sheet
        border.width: button.primary || button.quiet ? 0 : Theme.hair
        border.color: Theme.edge
        FocusRing { shown: button.visualFocus }
    }
}
