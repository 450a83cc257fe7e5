// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import Crownring.Theme
import Crownring.Parts
import Crownring.Envelope
import Crownring.Fabric

// The envelope map of one quantity, and the time that it shows: now what was read, later what is expected.
Column {
    id: pane

    required property FabricDesk desk
    property bool phone: false
    readonly property bool legendBeside: !pane.phone && pane.width >= 800

    signal readingAsked(gore: int, row: int)

    spacing: Theme.snug

    Row {
        width: parent.width
        spacing: Theme.gap
        visible: pane.desk.warranted && map.known
        Label {
            id: now
            height: slider.height
            verticalAlignment: Text.AlignVCenter
            text: qsTr("now")
            soft: true
        }
        T.Slider {
            id: slider
            objectName: "fabric.ahead"
            width: parent.width - now.width - later.width - 2 * Theme.gap
            height: Theme.touch
            from: 0
            to: pane.desk.mostAhead
            stepSize: 1
            value: pane.desk.hoursAhead
            Accessible.name: qsTr("Hours flown from now: %1").arg(Math.round(slider.value))
            onMoved: pane.desk.hoursAhead = slider.value
            Keys.onPressed: event => {
                if (event.key === Qt.Key_PageUp || event.key === Qt.Key_PageDown) {
                    pane.desk.hoursAhead = slider.value + (event.key === Qt.Key_PageUp ? 25 : -25);
                    event.accepted = true;
                }
            }
            background: Rectangle {
                y: (slider.height - height) / 2
                width: slider.width
                height: Theme.tight
                radius: height / 2
                color: Theme.hairline
                Rectangle {
                    width: slider.visualPosition * parent.width
                    height: parent.height
                    radius: height / 2
                    color: Theme.rattan
                }
            }
            handle: Rectangle {
                x: slider.visualPosition * (slider.width - width)
                y: (slider.height - height) / 2
                width: Theme.broad
                height: Theme.broad
                radius: width / 2
                color: Theme.sheet
                border.width: 2
                border.color: Theme.rattan
                FocusRing { shown: slider.visualFocus }
            }
        }
        Label {
            id: later
            height: slider.height
            verticalAlignment: Text.AlignVCenter
            text: qsTr("%1 h flown").arg(pane.desk.mostAhead)
            soft: true
        }
    }
    Label {
        width: parent.width
        text: pane.desk.aheadSays
        font.bold: true
    }
    EnvelopeMap {
        id: map
        objectName: "fabric.map"
        width: parent.width
        height: pane.phone ? 420 : Math.max(320, Math.min(760, pane.desk.rows * (Theme.broad + Theme.tight) + 3 * Theme.touch))
        phone: pane.phone
        panels: pane.desk.panels
        gores: pane.desk.gores
        rows: pane.desk.rows
        forecast: pane.desk.hoursAhead > 0
        lots: pane.desk.lots
        legendShown: pane.legendBeside
    }
    Button {
        objectName: "fabric.enter"
        visible: map.known
        enabled: map.chosenGore > 0
        text: map.chosenGore > 0 ? qsTr("Enter a reading at gore %1, row %2 …").arg(map.chosenGore).arg(map.chosenRow)
                                 : qsTr("Choose a panel to enter a reading there")
        onClicked: pane.readingAsked(map.chosenGore, map.chosenRow)
    }
    EnvelopeLegend {
        width: parent.width
        visible: map.known && !pane.phone && !pane.legendBeside
        forecast: map.forecast
        lots: map.lots
    }
}
