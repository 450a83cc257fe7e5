// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import QtQuick.Controls.Basic as Basic
import Crownring.Theme
import Crownring.Parts

// One of several: a field that opens a list. `value` is what is chosen; choosing says `picked`. Where values alone do not
// tell the choices apart, `at` is the place of what is chosen, and choosing says `pickedAt`. What has a detail says it in
// a second line. Typing opens the list and goes to what begins so, else to what holds it; Return chooses.
T.ComboBox {
    id: choice

    required property string name
    property string value: ""
    property int at: choice.byValue // -1: nothing
    readonly property int byValue: -2
    property string typed: "" // since the last pause
    property bool wrong: false
    property string empty: qsTr("choose …")

    signal picked(value: string)
    signal pickedAt(at: int)

    implicitHeight: Theme.touch
    implicitWidth: 180
    leftPadding: Theme.gap
    rightPadding: Theme.vast
    textRole: "label"
    valueRole: "value"
    displayText: choice.currentIndex < 0 ? choice.empty : choice.currentText
    Accessible.role: Accessible.ComboBox
    Accessible.name: qsTr("%1: %2").arg(choice.name).arg(choice.displayText)
    onActivated: index => {
        choice.picked(choice.valueAt(index));
        choice.pickedAt(index);
    }
    onValueChanged: choice.follow()
    onAtChanged: choice.follow()
    onCountChanged: choice.follow()
    onModelChanged: choice.follow()
    Component.onCompleted: choice.follow()
    Keys.onPressed: event => {
        const isText = event.text >= " " && event.text !== "\u007f" && !(event.modifiers & (Qt.ControlModifier | Qt.AltModifier | Qt.MetaModifier));
        if (!isText || (event.text === " " && choice.typed === ""))
            return;
        event.accepted = true;
        choice.seek(choice.typed + event.text);
    }

    function seek(text: string) {
        choice.typed = text;
        pause.restart();
        const begins = choice.find(text, Qt.MatchStartsWith);
        const at = begins >= 0 ? begins : choice.find(text, Qt.MatchContains);
        choice.popup.open();
        while (at >= 0 && choice.highlightedIndex < at)
            choice.incrementCurrentIndex();
        while (at >= 0 && choice.highlightedIndex > at)
            choice.decrementCurrentIndex();
    }

    Timer {
        id: pause
        interval: 1500
        onTriggered: choice.typed = ""
    }
    function follow() {
        choice.currentIndex = choice.at === choice.byValue ? choice.indexOfValue(choice.value) : choice.at;
    }

    contentItem: Text {
        textFormat: Text.PlainText
        text: choice.displayText
        color: choice.currentIndex < 0 ? Theme.inkSoft : Theme.ink
        font.pixelSize: Theme.text
        verticalAlignment: Text.AlignVCenter
        elide: Text.ElideRight
        Accessible.ignored: true
    }
    indicator: LineSign {
        x: choice.width - width - Theme.snug
        y: (choice.height - height) / 2
        width: 16
        height: 16
        rotation: 90
        shape: LineSign.Forward
        tone: Theme.inkSoft
    }
    background: Rectangle {
        radius: Theme.radius
        color: Theme.sheet
        border.width: choice.wrong ? 2 : Theme.hair
        border.color: choice.wrong ? Theme.ember : Theme.edge
        FocusRing { shown: choice.visualFocus }
    }
    delegate: T.ItemDelegate {
        id: option

        required property int index
        required property var model
        readonly property string detail: option.model.detail ?? ""

        width: ListView.view ? ListView.view.width : choice.width
        height: option.detail === "" ? Theme.touch : Theme.touch + Theme.gap
        highlighted: choice.highlightedIndex === option.index
        Accessible.role: Accessible.ListItem
        Accessible.name: option.detail === "" ? choice.textAt(option.index) : qsTr("%1, %2").arg(choice.textAt(option.index)).arg(option.detail)
        contentItem: Item {
            Column {
                x: Theme.gap
                width: parent.width - 2 * Theme.gap
                anchors.verticalCenter: parent.verticalCenter
                Text {
                    textFormat: Text.PlainText
                    width: parent.width
                    text: choice.textAt(option.index)
                    color: Theme.ink
                    font.pixelSize: Theme.text
                    font.bold: choice.currentIndex === option.index
                    elide: Text.ElideRight
                    Accessible.ignored: true
                }
                Text {
                    textFormat: Text.PlainText
                    width: parent.width
                    visible: option.detail !== ""
                    text: option.detail
                    color: Theme.inkSoft
                    font.pixelSize: Theme.textSmall
                    elide: Text.ElideRight
                    Accessible.ignored: true
                }
            }
        }
        background: Rectangle {
            color: option.highlighted ? Theme.shade : Theme.sheet
        }
    }
    popup: T.Popup {
        y: choice.height + Theme.tight
        width: Math.max(choice.width, 240)
        height: Math.min(contentItem.implicitHeight + 2, 360)
        margins: Theme.snug
        padding: Theme.hair
        contentItem: ListView {
            clip: true
            implicitHeight: contentHeight
            model: choice.delegateModel
            currentIndex: choice.highlightedIndex
            T.ScrollBar.vertical: Basic.ScrollBar {}
        }
        background: Rectangle {
            radius: Theme.radius
            color: Theme.sheet
            border.width: Theme.hair
            border.color: Theme.edge
        }
    }
}
