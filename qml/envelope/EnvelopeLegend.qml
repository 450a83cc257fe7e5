// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Envelope

// What the signs of the envelope map mean.
Column {
    id: legend

    property bool forecast: false
    property list<string> lots

    spacing: Theme.tight
    Accessible.role: Accessible.List
    Accessible.name: qsTr("Signs of the envelope map")

    component Sign: Row {
        id: line

        required property string text
        property alias reading: sign.reading
        property alias share: sign.share
        property alias figure: sign.figure
        property alias lot: sign.lot
        property alias readings: sign.readings
        property alias asked: sign.asked
        property alias repaired: sign.repaired
        property alias defect: sign.defect

        width: legend.width
        spacing: Theme.snug
        PanelSign {
            id: sign
            width: Theme.vast
            height: Theme.broad + Theme.tight
            tones: Theme.mapTones
            Accessible.ignored: true
        }
        Label {
            width: line.width - sign.width - line.spacing
            height: Math.max(implicitHeight, sign.height)
            verticalAlignment: Text.AlignVCenter
            text: line.text
            font.pixelSize: Theme.textSmall
        }
    }

    component Signs: Column {
        spacing: legend.spacing
    }

    Signs {
        visible: !legend.forecast
        Sign { text: qsTr("not read") }
        Sign {
            text: qsTr("a reading is asked for")
            asked: true
        }
        Sign {
            text: qsTr("held: at least this much")
            reading: Panel.Held
            share: 1.0
        }
        Sign {
            text: qsTr("fails its limit")
            reading: Panel.Fails
        }
    }
    Signs {
        visible: legend.forecast
        Sign { text: qsTr("nothing is expected") }
        Sign {
            text: qsTr("slanted: expected, not read")
            reading: Panel.Forecast
            share: 1.5
            figure: "150"
        }
        Sign {
            text: qsTr("expected beyond its limit")
            reading: Panel.Forecast
            share: 0.5
        }
    }
    Sign {
        text: qsTr("at its limit")
        reading: Panel.Value
        share: 1.0
    }
    Sign {
        text: qsTr("1.5 times the limit")
        reading: Panel.Value
        share: 1.5
    }
    Sign {
        text: qsTr("twice the limit or better")
        reading: Panel.Value
        share: 2.0
    }
    Sign {
        text: qsTr("repaired")
        repaired: true
    }
    Sign {
        text: qsTr("an open defect")
        defect: true
    }
    Sign {
        text: legend.forecast ? qsTr("dots: readings taken there") : qsTr("dots: earlier readings")
        reading: Panel.Value
        share: 1.5
        readings: 3
    }
    Repeater {
        model: legend.lots
        Sign {
            required property int index
            required property string modelData

            text: qsTr("lot %1").arg(modelData)
            lot: index + 1
        }
    }
}
