// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import QtQuick.Controls.Basic as Basic
import Crownring.Theme
import Crownring.Parts
import Crownring.Envelope

// The envelope unrolled, with its numbers around it and the chosen panel in words below. One stop of the tab key: arrows
// move over the panels, Return or Space chooses as a tap does. Where panels would be too small to hit it scrolls.
FocusScope {
    id: map

    required property PanelModel panels
    property int gores: 0 // as on the data plate; 0 when not known
    property int rows: 0
    property list<string> lots // their names, in the order of the marks' numbers
    property bool forecast: false // what is expected is shown, not what was read
    property bool phone: false
    property bool legendShown: !map.phone
    property bool whole: false // all of it at one look, too small to hit: a tap goes closer
    readonly property int chosenGore: field.chosenGore
    readonly property int chosenRow: field.chosenRow
    readonly property string chosenText: field.chosenText
    readonly property int asked: field.asked
    readonly property bool known: map.gores > 0 && map.rows > 0

    signal tapped(gore: int, row: int)

    function choose(gore: int, row: int) {
        field.choose(gore, row);
    }
    function chooseNextAsked(): bool {
        return field.chooseNextAsked();
    }

    // Where there is room for each number; else of every fifth.
    function numbered(index: int, room: real): bool {
        return room >= Theme.wide + Theme.tight || index === 0 || (index + 1) % 5 === 0;
    }

    component Numeral: Text {
        textFormat: Text.PlainText
        color: Theme.inkSoft
        font.pixelSize: Theme.textSmall
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        Accessible.ignored: true
    }

    Item {
        id: chart

        width: map.phone || !map.legendShown ? map.width : map.width - sideLegend.width - Theme.gap
        height: map.height - below.height
        visible: map.known

        Flickable {
            id: view

            anchors.fill: parent
            anchors.leftMargin: rowNumbers.width
            anchors.bottomMargin: goreNumbers.height
            clip: true
            contentWidth: field.width + 2 * field.x
            contentHeight: field.height + 2 * field.y
            boundsBehavior: Flickable.StopAtBounds
            T.ScrollBar.vertical: Basic.ScrollBar { policy: view.contentHeight > view.height ? Basic.ScrollBar.AsNeeded : Basic.ScrollBar.AlwaysOff }
            T.ScrollBar.horizontal: Basic.ScrollBar { policy: view.contentWidth > view.width ? Basic.ScrollBar.AsNeeded : Basic.ScrollBar.AlwaysOff }

            // The chosen panel is in view with a neighbour beside it.
            function reveal() {
                const area = field.chosenArea;
                if (area.width <= 0)
                    return;
                view.contentX = view.kept(view.contentX, area.x - area.width, area.x + 2 * area.width, view.width, view.contentWidth);
                view.contentY = view.kept(view.contentY, area.y - area.height, area.y + 2 * area.height, view.height, view.contentHeight);
            }
            function kept(at: real, from: real, to: real, room: real, whole: real): real {
                const moved = from < at ? from : to > at + room ? to - room : at;
                return Math.max(0, Math.min(moved, whole - room));
            }

            UnrolledEnvelope {
                id: field

                x: Theme.tight // room for the frame of an outermost panel
                y: Theme.tight
                width: implicitWidth
                height: implicitHeight
                focus: true
                panels: map.panels
                gores: map.gores
                rows: map.rows
                tones: Theme.mapTones
                roomWidth: view.width - 2 * x
                roomHeight: view.height - 2 * y
                leastPanel: map.whole ? Theme.tight : map.phone ? Theme.touch : Theme.broad + Theme.tight
                mostPanel: 2 * Theme.touch
                ventHeight: Theme.broad
                onChosenAreaChanged: view.reveal()
                onTapped: (gore, row) => {
                    if (map.whole)
                        map.whole = false;
                    else
                        map.tapped(gore, row);
                }
                Accessible.role: Accessible.Button
                Accessible.focusable: true
                Accessible.name: field.chosenText === "" ? qsTr("Envelope map") : field.chosenText
                Accessible.description: qsTr("Envelope map: arrows move over the panels")
                Accessible.onPressAction: {
                    if (field.chosenGore > 0)
                        map.tapped(field.chosenGore, field.chosenRow);
                }
            }
            Numeral {
                x: view.contentX
                y: field.y
                width: view.width
                height: field.ventHeight
                text: qsTr("parachute vent")
            }
        }

        Item {
            id: rowNumbers

            width: Math.max(crownWord.implicitWidth, mouthWord.implicitWidth) + Theme.tight
            anchors.top: parent.top
            anchors.bottom: goreNumbers.top
            clip: true
            Item {
                y: field.y - view.contentY
                width: parent.width
                Numeral {
                    id: crownWord
                    width: parent.width
                    height: field.ventHeight
                    text: qsTr("crown")
                }
                Repeater {
                    model: map.rows
                    Numeral {
                        required property int index

                        y: field.ventHeight + (map.rows - 1 - index) * field.panelHeight
                        width: rowNumbers.width
                        height: field.panelHeight
                        visible: map.numbered(index, field.panelHeight)
                        text: index + 1
                        color: field.chosenRow === index + 1 ? Theme.ink : Theme.inkSoft
                        font.bold: field.chosenRow === index + 1
                    }
                }
            }
        }
        Numeral {
            id: mouthWord
            anchors.left: parent.left
            anchors.bottom: parent.bottom
            width: rowNumbers.width
            height: goreNumbers.height
            text: qsTr("mouth")
        }
        Item {
            id: goreNumbers

            anchors.left: rowNumbers.right
            anchors.right: parent.right
            anchors.bottom: parent.bottom
            height: Theme.wide + Theme.tight
            clip: true
            Repeater {
                model: map.gores
                Numeral {
                    required property int index

                    x: field.x + index * field.panelWidth - view.contentX
                    width: field.panelWidth
                    height: goreNumbers.height
                    visible: map.numbered(index, field.panelWidth)
                    text: index + 1
                    color: field.chosenGore === index + 1 ? Theme.ink : Theme.inkSoft
                    font.bold: field.chosenGore === index + 1
                }
            }
        }
    }

    Item {
        id: below

        y: map.height - height
        width: map.width
        height: Math.max(words.implicitHeight + Theme.snug, signs.visible ? signs.height : 0)
        visible: map.known
        Column {
            id: words
            anchors.verticalCenter: parent.verticalCenter
            x: Theme.tight
            width: parent.width - x - (signs.visible ? signs.width : 0) - (closer.visible ? closer.width : 0)
            Label {
                width: parent.width
                text: map.chosenText !== "" ? map.chosenText : map.asked > 0 ? qsTr("Readings asked for: %1").arg(map.asked) : qsTr("No panel is chosen.")
                Accessible.ignored: true // the map says it
            }
            Label {
                width: parent.width
                visible: field.outside > 0
                text: qsTr("Not shown, since the envelope has no such gore or row: %1").arg(field.outside)
                soft: true
                font.pixelSize: Theme.textSmall
            }
        }
        Button {
            id: closer
            objectName: "map.whole"
            anchors.right: signs.visible ? signs.left : parent.right
            visible: !map.legendShown && (map.whole || view.contentWidth > view.width + 1)
            quiet: true
            text: map.whole ? qsTr("Closer") : qsTr("All gores")
            onClicked: map.whole = !map.whole
        }
        Button {
            id: signs
            anchors.right: parent.right
            visible: map.phone
            quiet: true
            text: map.legendShown ? qsTr("Map") : qsTr("Signs")
            Accessible.name: map.legendShown ? qsTr("Show the map") : qsTr("What the signs mean")
            onClicked: map.legendShown = !map.legendShown
        }
    }

    // Beside the map on a desk, in its place on a phone.
    Rectangle {
        id: sideLegend

        x: map.phone ? 0 : map.width - width
        width: map.phone ? map.width : map.legendShown ? 3 * Theme.touch + Theme.wide : 0
        height: chart.height
        visible: map.known && map.legendShown
        color: Theme.paper
        Scroll {
            anchors.fill: parent
            margin: Theme.tight
            EnvelopeLegend {
                width: parent.width
                forecast: map.forecast
                lots: map.lots
            }
        }
    }

    Label {
        anchors.fill: parent
        anchors.margins: Theme.wide
        visible: !map.known
        text: qsTr("The map needs to know how many gores and panel rows the envelope has. State them for its type or for the envelope.")
        soft: true
    }
}
