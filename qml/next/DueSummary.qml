// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Next

// How many rows are shown of how many, by what they are grouped, and in which order; or the group that is opened.
Item {
    id: summary

    required property NextPlace place
    property bool phone: false
    property bool unfolded: false

    signal fold

    readonly property real firstRows: summary.phone ? 2 * Theme.touch : Theme.touch
    height: summary.firstRows + (range.visible ? range.implicitHeight + Theme.snug : 0)

    Segments {
        id: groupings
        names: summary.phone ? [qsTr("Each"), qsTr("Balloon"), qsTr("Visit"), qsTr("Rule")]
                             : [qsTr("Each"), qsTr("By balloon"), qsTr("By visit"), qsTr("By rule")]
        codes: ["next.each", "next.balloon", "next.visit", "next.rule"]
        current: summary.place.grouping
        onChosen: index => summary.place.grouping = index
    }
    Label {
        x: summary.phone ? 0 : groupings.width + Theme.tight
        y: (summary.phone ? Theme.touch : 0) + (Theme.touch - height) / 2
        width: buttons.x - x
        text: summary.place.summary
        soft: true
        elide: Text.ElideRight
        wrapMode: Text.NoWrap
    }
    Label {
        id: range
        objectName: "next.range"
        y: summary.firstRows
        width: parent.width
        visible: text !== ""
        text: summary.place.range
        soft: true
        font.pixelSize: Theme.textSmall
    }
    Row {
        id: buttons
        anchors.right: parent.right
        anchors.rightMargin: -Theme.wide
        y: summary.phone ? Theme.touch : 0
        Button {
            visible: summary.place.filtered
            quiet: true
            text: qsTr("All")
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
