// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts

// Work that takes its time: what it is, how far it is, and the way to stop it or to begin it again.
Column {
    id: bar

    required property bool working
    required property real progress
    property string text: ""
    property bool stopped: false
    property string beginText: qsTr("Compute the forecast")

    signal stop
    signal begin

    visible: bar.working || bar.stopped
    spacing: Theme.tight

    Row {
        width: parent.width
        spacing: Theme.gap
        Label {
            width: parent.width - button.width - Theme.gap
            height: button.height
            verticalAlignment: Text.AlignVCenter
            text: bar.working ? bar.text : qsTr("It was stopped.")
            Accessible.role: Accessible.AlertMessage
        }
        Button {
            id: button
            objectName: "fabric.stop"
            text: bar.working ? qsTr("Stop") : bar.beginText
            onClicked: bar.working ? bar.stop() : bar.begin()
        }
    }
    Rectangle {
        width: parent.width
        height: Theme.tight
        visible: bar.working
        color: Theme.shade
        Accessible.role: Accessible.ProgressBar
        Accessible.name: qsTr("%1 %").arg(Math.round(bar.progress * 100))
        Rectangle {
            width: parent.width * Math.max(0, Math.min(1, bar.progress))
            height: parent.height
            color: Theme.rattan
        }
    }
}
