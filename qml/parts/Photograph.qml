// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import Crownring.Theme
import Crownring.Parts

// A photograph, small: of the record by its digest, or one that is not kept yet. A tap acts on it.
T.AbstractButton {
    id: button

    property string digest: ""
    property string source: button.digest === "" ? "" : "image://record/" + button.digest

    implicitWidth: 72
    implicitHeight: 72
    Accessible.role: Accessible.Button
    Keys.onReturnPressed: button.clicked()
    Keys.onEnterPressed: button.clicked()
    contentItem: Image {
        source: button.source
        sourceSize.width: 144
        sourceSize.height: 144
        fillMode: Image.PreserveAspectCrop
        autoTransform: true
        asynchronous: true
    }
    background: Rectangle {
        color: Theme.shade
        FocusRing { shown: button.visualFocus; outset: 2 }
    }
}
