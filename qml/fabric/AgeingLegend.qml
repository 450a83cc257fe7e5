// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Fabric

// What is drawn on the chart of ageing, in words; signs that are not drawn are not explained.
Flow {
    id: legend

    required property AgeingChart chart
    property real magnified: 1

    spacing: Theme.gap * legend.magnified
    Accessible.role: Accessible.List
    Accessible.name: qsTr("Signs of the chart")

    component Entry: Row {
        id: entry

        required property string text
        default property alias sign: place.data

        spacing: Theme.snug * legend.magnified
        Item {
            id: place
            width: Theme.broad * legend.magnified
            height: Theme.gauge * legend.magnified
        }
        Label {
            width: Math.min(implicitWidth, legend.width - place.width - entry.spacing)
            height: Math.max(implicitHeight, place.height)
            verticalAlignment: Text.AlignVCenter
            text: entry.text
            font.pixelSize: Theme.textSmall * legend.magnified
        }
    }
    component Sign: AgeingSign {
        anchors.fill: parent
        tones: [Theme.ink, Theme.ember, Theme.paper]
        Accessible.ignored: true
    }
    // A stroke of a line, in as many pieces as tell it from the others.
    component Stroke: Row {
        id: stroke

        required property list<int> pieces
        property color tone: Theme.ink
        property real thick: 2

        anchors.centerIn: parent
        spacing: 2 * legend.magnified
        Repeater {
            model: stroke.pieces
            Rectangle {
                required property int modelData
                width: modelData * legend.magnified
                height: stroke.thick * legend.magnified
                color: stroke.tone
            }
        }
    }
    component Band: Rectangle {
        anchors.fill: parent
        anchors.topMargin: Theme.tight * legend.magnified
        anchors.bottomMargin: Theme.tight * legend.magnified
        color: Theme.sky
    }

    Entry {
        visible: legend.chart.hasBand
        text: qsTr("until now: the middle, and the band from 5 % to 95 %")
        Band { opacity: 0.32 }
        Stroke { pieces: [24]; tone: Theme.sky }
    }
    Entry {
        visible: (legend.chart.signs & AgeingChart.Forecast) !== 0
        text: qsTr("forecast: the same beyond now")
        Band { opacity: 0.18 }
        Stroke { pieces: [6, 6, 6]; tone: Theme.sky }
    }
    Entry {
        visible: legend.chart.hasLimit
        text: legend.chart.limitSays
        Stroke { pieces: [8, 2, 8]; thick: 1.5 }
    }
    Entry {
        visible: (legend.chart.signs & AgeingChart.Value) !== 0
        text: qsTr("a reading")
        Sign { kind: Ageing.Value }
    }
    Entry {
        visible: (legend.chart.signs & AgeingChart.AtLeast) !== 0
        text: qsTr("at least this much")
        Sign { kind: Ageing.AtLeast }
    }
    Entry {
        visible: (legend.chart.signs & AgeingChart.AtMost) !== 0
        text: qsTr("at most this much")
        Sign { kind: Ageing.AtMost }
    }
    Entry {
        visible: (legend.chart.signs & AgeingChart.Between) !== 0
        text: qsTr("between its two ends")
        Sign { kind: Ageing.Between }
    }
    Entry {
        visible: (legend.chart.signs & AgeingChart.Fails) !== 0
        text: qsTr("crossed: beyond the limit")
        Sign { fails: true }
    }
    Entry {
        visible: (legend.chart.signs & AgeingChart.Other) !== 0
        text: qsTr("hollow: another set of fabric")
        Sign { hollow: true }
    }
}
