// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import Crownring.Theme
import Crownring.Parts

// A drawing alone says nothing to a screen reader: a name is required.
T.Button {
    id: button

    required property string name
    property int shape: LineSign.None

    implicitWidth: Theme.touch
    implicitHeight: Theme.touch
    Accessible.name: button.name
    Accessible.role: Accessible.Button
    Keys.onReturnPressed: button.clicked()
    Keys.onEnterPressed: button.clicked()

    contentItem: Item {
        LineSign {
            anchors.centerIn: parent
            width: 22
            height: 22
            shape: button.shape
            tone: Theme.ink
        }
    }
    background: Rectangle {
        radius: Theme.radius
        color: button.down ? Theme.shade : "transparent"
        FocusRing { shown: button.visualFocus; outset: -2 }
    }
}
