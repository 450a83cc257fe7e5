// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Fabric

// The chart of ageing with all that it needs to be read alone: on the screen, and in a picture.
Rectangle {
    id: drawing

    required property AgeingChart chart
    property real magnified: 1

    implicitHeight: parts.height
    color: Theme.paper

    Column {
        id: parts
        width: parent.width
        spacing: Theme.snug * drawing.magnified

        Label {
            width: parent.width
            visible: text !== ""
            text: drawing.chart.title
            font.bold: true
            font.pixelSize: Theme.textLarge * drawing.magnified
            Accessible.role: Accessible.Heading
        }
        AgeingPlot {
            width: parent.width
            height: Math.min(Math.max(0.75 * width, 300 * drawing.magnified), 420 * drawing.magnified)
            chart: drawing.chart
            magnified: drawing.magnified
        }
        AgeingLegend {
            width: parent.width
            chart: drawing.chart
            magnified: drawing.magnified
        }
        Note { text: drawing.chart.clippedSays }
        Note { text: drawing.chart.caution }
    }

    component Note: Label {
        width: parts.width
        visible: text !== ""
        soft: true
        font.pixelSize: Theme.textSmall * drawing.magnified
    }
}
