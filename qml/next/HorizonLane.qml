// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import Crownring.Theme
import Crownring.Parts
import Crownring.Next

// One lane of the horizon: bins along a ground line, in each a stack of small gores and their number. One stop of the tab
// key; arrows move along it, Return chooses.
Item {
    id: lane

    required property HorizonModel bins
    required property string name
    property int chosen: -1
    property int last: lane.chosen // of a range
    property real binWidth: 20
    property real zoneWidth: 64
    property bool months: false

    signal picked(bin: int)
    signal stretched(bin: int) // the range reaches to it

    function take(bin: int, modifiers: int) {
        if (modifiers & Qt.ShiftModifier)
            lane.stretched(bin);
        else
            lane.picked(bin);
    }

    ListView {
        id: strip

        anchors.fill: parent
        orientation: ListView.Horizontal
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        model: lane.bins
        activeFocusOnTab: true
        highlightMoveDuration: 0
        currentIndex: -1
        cacheBuffer: 4000
        onActiveFocusChanged: {
            if (activeFocus && currentIndex < 0)
                currentIndex = 0;
        }
        Keys.onReturnPressed: event => lane.take(currentIndex, event.modifiers)
        Keys.onEnterPressed: event => lane.take(currentIndex, event.modifiers)
        Keys.onSpacePressed: lane.picked(currentIndex)
        Accessible.role: Accessible.List
        Accessible.name: lane.name
        Accessible.description: qsTr("Return chooses one. To hold it, or Shift and Return, chooses all from the one that is chosen.")

        delegate: T.AbstractButton {
            id: bin

            required property int index
            required property string label
            required property string month
            required property list<int> tally
            required property int total
            required property string spoken
            required property bool zone
            readonly property bool chosen: lane.chosen >= 0 && bin.index >= lane.chosen && bin.index <= Math.max(lane.chosen, lane.last)

            width: bin.zone || !lane.months ? lane.zoneWidth : lane.binWidth
            height: ListView.view ? ListView.view.height : 0
            focusPolicy: Qt.NoFocus
            Accessible.role: Accessible.ListItem
            Accessible.name: bin.spoken
            Accessible.selected: bin.chosen
            onClicked: lane.picked(bin.index)
            onPressAndHold: lane.stretched(bin.index)

            Rectangle { // chosen, or the zones that are no week
                anchors.fill: parent
                anchors.bottomMargin: ground.height
                color: bin.chosen ? Theme.shade : "transparent"
                border.width: bin.chosen ? 2 : 0
                border.color: Theme.ink
                radius: Theme.radius
            }
            Text {
                textFormat: Text.PlainText
                anchors.horizontalCenter: parent.horizontalCenter
                y: Math.max(2, stack.y + stack.height - stack.stacked - 16)
                visible: bin.total > 0
                text: bin.total
                color: Theme.ink
                font.pixelSize: 11
                font.bold: bin.chosen
                Accessible.ignored: true
            }
            GoreStack {
                id: stack
                x: bin.zone || !lane.months ? 8 : 0
                width: bin.width - 2 * x
                anchors.top: parent.top
                anchors.topMargin: 18
                anchors.bottom: parent.bottom
                anchors.bottomMargin: ground.height + 2
                tally: bin.tally
                tallest: lane.bins.tallest
                measureWidth: (lane.months ? lane.binWidth : lane.zoneWidth) - 2 * (lane.months ? 0 : 8)
                tones: Theme.standings
            }
            Item {
                id: ground
                anchors.bottom: parent.bottom
                width: parent.width
                height: 22
                Rectangle {
                    width: parent.width
                    height: 2
                    color: Theme.rattan
                }
                Rectangle { // a month begins
                    visible: bin.month !== ""
                    width: Theme.hair
                    height: 8
                    color: Theme.rattan
                }
                Text {
                    textFormat: Text.PlainText
                    y: 6
                    x: bin.zone || !lane.months ? 0 : 4
                    width: bin.zone || !lane.months ? parent.width : implicitWidth
                    horizontalAlignment: bin.zone || !lane.months ? Text.AlignHCenter : Text.AlignLeft
                    text: bin.zone || !lane.months ? bin.label : bin.month
                    color: Theme.inkSoft
                    font.pixelSize: 11
                    Accessible.ignored: true
                }
            }
            Rectangle { // the day asked
                visible: lane.months && bin.index === 2
                x: -1
                y: 4
                width: 2
                height: parent.height - ground.height - 4
                color: Theme.ink
            }
            FocusRing { shown: strip.activeFocus && bin.ListView.isCurrentItem; outset: -1 }
        }
    }
}
