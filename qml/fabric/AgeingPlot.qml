// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtCharts
import Crownring.Theme
import Crownring.Parts
import Crownring.Fabric

// The curve, the limit and the readings against hours flown. Until now the band is solid, beyond it lighter and dashed.
Item {
    id: plot

    required property AgeingChart chart
    property real magnified: 1 // for a picture: all sizes at once
    readonly property real footing: 1.5 * Theme.textSmall * plot.magnified
    property rect field: Qt.rect(0, 0, 0, 0) // of the plot; the view changes it while it lays itself out

    Accessible.role: Accessible.Chart
    Accessible.name: plot.chart.title
    Accessible.description: plot.chart.spoken

    function fill() {
        plot.chart.fillBand(lowUntilNow, middleUntilNow, highUntilNow, false);
        plot.chart.fillBand(lowAhead, middleAhead, highAhead, true);
        plot.chart.fillLines(limitLine, nowLine);
    }
    Component.onCompleted: plot.fill()

    Connections {
        target: plot.chart
        function onShown() {
            plot.fill();
        }
    }

    component Axis: ValuesAxis {
        color: Theme.edge
        gridLineColor: Theme.hairline
        labelsColor: Theme.ink
        labelsFont.family: upward.font.family
        labelsFont.pixelSize: Theme.textSmall * plot.magnified
    }

    component Words: Label {
        font.pixelSize: Theme.textSmall * plot.magnified
    }

    Words {
        id: upward
        width: parent.width
        text: plot.chart.valueTitle
    }
    ChartView {
        id: view
        onPlotAreaChanged: plot.field = view.plotArea
        anchors.fill: parent
        anchors.topMargin: upward.height + Theme.tight * plot.magnified
        anchors.bottomMargin: plot.footing - Theme.snug * plot.magnified
        antialiasing: true
        animationOptions: ChartView.NoAnimation
        localizeNumbers: true
        legend.visible: false
        backgroundColor: Theme.paper
        backgroundRoundness: 0
        dropShadowEnabled: false
        plotAreaColor: Theme.sheet
        margins.top: 0
        margins.bottom: 0
        margins.left: 0
        margins.right: Theme.gap * plot.magnified
        Accessible.ignored: true

        AreaSeries {
            axisX: hours
            axisY: values
            color: Theme.sky
            opacity: 0.32
            borderWidth: 0
            borderColor: "transparent"
            upperSeries: LineSeries { id: highUntilNow }
            lowerSeries: LineSeries { id: lowUntilNow }
        }
        AreaSeries {
            axisX: hours
            axisY: values
            color: Theme.sky
            opacity: 0.18
            borderWidth: 0
            borderColor: "transparent"
            upperSeries: LineSeries { id: highAhead }
            lowerSeries: LineSeries { id: lowAhead }
        }
        LineSeries {
            id: middleUntilNow
            axisX: hours
            axisY: values
            color: Theme.sky
            width: 2 * plot.magnified
        }
        LineSeries {
            id: middleAhead
            axisX: hours
            axisY: values
            color: Theme.sky
            width: 2 * plot.magnified
            style: Qt.DashLine
        }
        LineSeries {
            id: nowLine
            axisX: hours
            axisY: values
            color: Theme.inkSoft
            width: plot.magnified
            style: Qt.DotLine
        }
        LineSeries {
            id: limitLine
            axisX: hours
            axisY: values
            color: Theme.ink
            width: 1.5 * plot.magnified
            style: Qt.DashDotLine
        }
    }

    Axis {
        id: hours
        min: plot.chart.hoursAxis.minimum
        max: plot.chart.hoursAxis.maximum
        tickCount: plot.chart.hoursAxis.ticks
        labelFormat: plot.chart.hoursAxis.format
    }
    Axis {
        id: values
        min: plot.chart.valueAxis.minimum
        max: plot.chart.valueAxis.maximum
        tickCount: plot.chart.valueAxis.ticks
        labelFormat: plot.chart.valueAxis.format
    }

    Item {
        id: area
        x: view.x + plot.field.x
        y: view.y + plot.field.y
        width: plot.field.width
        height: plot.field.height

        // Beyond the limit, where there are the fewest readings; those that are there are drawn over it.
        Words {
            readonly property real line: (1 - plot.chart.limitShare) * parent.height
            readonly property real reach: Theme.tight * plot.magnified
            visible: plot.chart.hasLimit
            x: plot.chart.limitAtRight ? parent.width - width - reach : reach
            y: plot.chart.limitIsLeast ? Math.min(line + reach, parent.height - height) : Math.max(0, line - height - reach)
            text: plot.chart.limitShort
            Rectangle {
                anchors.fill: parent
                z: -1
                color: Theme.sheet
                opacity: 0.75
            }
        }
        AgeingField {
            anchors.fill: parent
            anchors.margins: -overhang
            chart: plot.chart
            tones: [Theme.ink, Theme.ember, Theme.sheet]
            size: Theme.wide * plot.magnified
            overhang: Theme.broad * plot.magnified
        }
    }
    Words {
        x: Math.max(0, Math.min(parent.width - width, area.x + plot.chart.nowShare * area.width - width / 2))
        y: area.y - height - Theme.tight * plot.magnified
        text: plot.chart.nowSays
    }
    Words {
        id: along
        x: area.x
        width: area.width
        height: plot.footing
        anchors.bottom: parent.bottom
        horizontalAlignment: Text.AlignRight
        text: qsTr("hours flown")
    }
}
