// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Next

// How many rows are shown of how many, and in which order.
Item {
    id: summary

    required property NextPlace place
    property bool phone: false
    property bool unfolded: false

    signal fold

    height: Theme.touch

    Label {
        anchors.verticalCenter: parent.verticalCenter
        anchors.left: parent.left
        anchors.right: buttons.left
        text: summary.place.summary
        soft: true
        elide: Text.ElideRight
        wrapMode: Text.NoWrap
    }
    Row {
        id: buttons
        anchors.right: parent.right
        anchors.rightMargin: -Theme.wide
        Button {
            visible: summary.place.filtered
            quiet: true
            text: qsTr("Clear")
            onClicked: summary.place.clearFilters()
        }
        Button {
            visible: summary.phone
            quiet: true
            text: summary.unfolded ? qsTr("Fold") : qsTr("Filter")
            onClicked: summary.fold()
        }
        Button {
            visible: !summary.phone || summary.unfolded
            quiet: true
            text: summary.place.soonestFirst ? qsTr("Soonest first") : qsTr("Worst first")
            onClicked: summary.place.soonestFirst = !summary.place.soonestFirst
        }
    }
}
