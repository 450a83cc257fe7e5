// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts

// Text in ink. Long words of other languages wrap rather than vanish; no line ends inside a registration.
Text {
    id: label

    property bool soft: false

    color: label.soft ? Theme.inkSoft : Theme.ink
    font.pixelSize: Theme.text
    textFormat: Text.PlainText
    wrapMode: Text.Wrap
    Accessible.role: Accessible.StaticText
    Accessible.name: label.text
    Accessible.ignored: label.text === ""

    KeptNames { of: label }
}
