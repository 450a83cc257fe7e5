// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import Crownring.Theme
import Crownring.Parts

// A photograph of the record, small; a tap shows it whole.
T.AbstractButton {
    id: button

    required property string digest

    implicitWidth: 72
    implicitHeight: 72
    Keys.onReturnPressed: button.clicked()
    Keys.onEnterPressed: button.clicked()
    contentItem: Image {
        source: "image://record/" + button.digest
        sourceSize.width: 144
        sourceSize.height: 144
        fillMode: Image.PreserveAspectCrop
        asynchronous: true
    }
    background: Rectangle {
        color: Theme.shade
        FocusRing { shown: button.visualFocus; outset: 2 }
    }
}
