// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import Crownring.Theme

T.TextField {
    id: field

    required property string name
    property bool wrong: false

    implicitHeight: Theme.touch
    implicitWidth: 160
    leftPadding: Theme.gap
    rightPadding: Theme.gap
    color: Theme.ink
    placeholderTextColor: Theme.inkSoft
    selectionColor: Theme.sky
    selectedTextColor: Theme.skyInk
    font.pixelSize: Theme.text
    verticalAlignment: TextInput.AlignVCenter
    selectByMouse: true
    activeFocusOnTab: true
    Accessible.role: Accessible.EditableText
    Accessible.name: field.name

    Text {
        textFormat: Text.PlainText
        anchors.fill: parent
        anchors.leftMargin: field.leftPadding
        anchors.rightMargin: field.rightPadding
        visible: field.text === "" && field.preeditText === ""
        text: field.placeholderText
        color: field.placeholderTextColor
        font: field.font
        verticalAlignment: Text.AlignVCenter
        elide: Text.ElideRight
        Accessible.ignored: true
    }
    background: Rectangle {
        radius: Theme.radius
        color: Theme.sheet
        border.width: field.wrong ? 2 : Theme.hair
        border.color: field.wrong ? Theme.ember : Theme.edge
        FocusRing { shown: field.activeFocus }
    }
}
