// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import Crownring.Theme
import Crownring.Parts

T.CheckBox {
    id: check

    implicitHeight: Theme.touch
    implicitWidth: Theme.vast + words.implicitWidth
    Accessible.role: Accessible.CheckBox
    Accessible.name: check.text
    Accessible.checkable: true
    Accessible.checked: check.checked
    Keys.onReturnPressed: {
        check.toggle();
        check.toggled();
    }

    indicator: Rectangle {
        anchors.verticalCenter: parent.verticalCenter
        width: 22
        height: 22
        radius: Theme.radius
        color: check.checked ? Theme.sky : Theme.sheet
        border.width: Theme.hair
        border.color: check.checked ? Theme.sky : Theme.edge
        LineSign {
            anchors.centerIn: parent
            width: 16
            height: 16
            visible: check.checked
            shape: LineSign.Tick
            tone: Theme.skyInk
        }
        FocusRing { shown: check.visualFocus }
    }
    contentItem: Text {
        id: words
        textFormat: Text.PlainText
        leftPadding: Theme.vast
        text: check.text
        color: Theme.ink
        font.pixelSize: Theme.text
        verticalAlignment: Text.AlignVCenter
        wrapMode: Text.Wrap
        Accessible.ignored: true

        KeptNames { of: words }
    }
}
