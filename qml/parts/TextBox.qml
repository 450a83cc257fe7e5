// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import Crownring.Theme

// Several lines of text. It says them a little after the last letter, and when it is left; the tab key goes on.
T.TextArea {
    id: box

    required property string name
    property string lastSaid: ""

    signal said(text: string)

    // Takes what the program proposes, unless somebody is writing.
    function follow(text: string) {
        if (box.activeFocus || box.text === text)
            return;
        box.lastSaid = text;
        box.text = text;
    }
    function say() {
        pause.stop();
        if (box.text === box.lastSaid)
            return;
        box.lastSaid = box.text;
        box.said(box.text);
    }

    implicitHeight: Math.max(Theme.touch, box.contentHeight + 2 * Theme.gap)
    implicitWidth: 160
    padding: Theme.gap
    color: Theme.ink
    placeholderTextColor: Theme.inkSoft
    selectionColor: Theme.sky
    selectedTextColor: Theme.skyInk
    font.pixelSize: Theme.text
    wrapMode: TextEdit.Wrap
    textFormat: TextEdit.PlainText
    selectByMouse: true
    activeFocusOnTab: true
    Accessible.role: Accessible.EditableText
    Accessible.multiLine: true
    Accessible.name: box.name
    Keys.priority: Keys.BeforeItem
    Keys.onTabPressed: box.nextItemInFocusChain(true).forceActiveFocus(Qt.TabFocusReason)
    Keys.onBacktabPressed: box.nextItemInFocusChain(false).forceActiveFocus(Qt.BacktabFocusReason)
    onTextChanged: {
        if (box.activeFocus)
            pause.restart();
    }
    onActiveFocusChanged: {
        if (!box.activeFocus)
            box.say();
    }
    Component.onCompleted: box.lastSaid = box.text

    Timer {
        id: pause
        interval: 400
        onTriggered: box.say()
    }
    Text {
        textFormat: Text.PlainText
        anchors.fill: parent
        anchors.margins: Theme.gap
        visible: box.text === "" && box.preeditText === ""
        text: box.placeholderText
        color: box.placeholderTextColor
        font: box.font
        elide: Text.ElideRight
        Accessible.ignored: true
    }
    background: Rectangle {
        radius: Theme.radius
        color: Theme.sheet
        border.width: Theme.hair
        border.color: Theme.edge
        FocusRing { shown: box.activeFocus }
    }
}
