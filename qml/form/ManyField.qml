// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import Crownring.Theme
import Crownring.Parts
import Crownring.Lists

// One of many: what is chosen, and the chooser in its place while another is sought.
FocusScope {
    id: many

    required property string name
    required property string key
    required property string label // of what is chosen
    required property bool wrong
    required property bool seeking
    required property ChoiceSift sift

    signal asked()
    signal dropped()
    signal picked(value: string)

    // What had the keyboard goes with the chooser: without it the next field would be this one.
    onSeekingChanged: {
        if (!many.seeking && many.activeFocus)
            chosen.forceActiveFocus(Qt.TabFocusReason);
    }

    implicitHeight: many.seeking ? seeker.height : chosen.height

    T.Button {
        id: chosen
        objectName: "seek." + many.key
        width: parent.width
        height: Theme.touch
        visible: !many.seeking
        focus: true
        text: many.label === "" ? qsTr("choose …") : many.label
        Accessible.name: qsTr("%1: %2").arg(many.name).arg(text)
        Keys.onReturnPressed: chosen.clicked()
        Keys.onEnterPressed: chosen.clicked()
        onClicked: many.asked()
        contentItem: Text {
            textFormat: Text.PlainText
            leftPadding: Theme.gap
            rightPadding: Theme.vast
            text: chosen.text
            color: many.label === "" ? Theme.inkSoft : Theme.ink
            font.pixelSize: Theme.text
            verticalAlignment: Text.AlignVCenter
            elide: Text.ElideRight
            Accessible.ignored: true
        }
        background: Rectangle {
            radius: Theme.radius
            color: chosen.down ? Theme.shade : Theme.sheet
            border.width: many.wrong ? 2 : Theme.hair
            border.color: many.wrong ? Theme.ember : Theme.edge
            LineSign {
                x: parent.width - width - Theme.snug
                y: (parent.height - height) / 2
                width: 16
                height: 16
                shape: LineSign.Glass
                tone: Theme.inkSoft
            }
            FocusRing { shown: chosen.visualFocus }
        }
    }
    Loader {
        id: seeker
        width: parent.width
        active: many.seeking
        sourceComponent: Chooser {
            name: many.name
            sift: many.sift
            onPicked: value => many.picked(value)
            onDropped: many.dropped()
        }
        onLoaded: (seeker.item as Chooser).enter()
    }
}
