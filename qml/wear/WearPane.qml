// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Wear

// How an item wears: of a basket its map, and under it what was read, with limit, trend and when the limit will be met.
Scroll {
    id: pane

    required property WearDesk desk

    signal readingAsked(given: var, about: string)

    spacing: Theme.gap

    function read(place: string) {
        pane.readingAsked(pane.desk.givenFor(place), place === "" ? "" : qsTr("Taken at: %1").arg(pane.desk.placeName));
    }

    BasketMap {
        width: Math.min(parent.width, 560)
        height: implicitHeight
        visible: pane.desk.basket
        desk: pane.desk
        onReadingAsked: place => pane.read(place)
    }
    Flow {
        width: parent.width
        visible: pane.desk.place !== ""
        spacing: Theme.snug
        Button {
            objectName: "wear.read"
            primary: true
            text: qsTr("Read %1 …").arg(pane.desk.placeName)
            onClicked: pane.read(pane.desk.place)
        }
        Button {
            objectName: "wear.all"
            quiet: true
            text: qsTr("All places")
            onClicked: pane.desk.place = ""
        }
    }
    Label {
        width: parent.width
        visible: pane.desk.series.count === 0
        text: pane.desk.place === "" ? qsTr("Nothing that wears was read of it.") : qsTr("Nothing that wears was read here.")
        soft: true
    }
    Button {
        objectName: "wear.first"
        visible: pane.desk.series.count === 0 && pane.desk.place === ""
        text: qsTr("Write down a reading …")
        onClicked: pane.read("")
    }
    Repeater {
        model: pane.desk.series
        Column {
            id: series
            required property int index
            required property string label
            required property string detail
            required property int standing
            objectName: "wear.series." + series.index
            width: pane.width - 2 * pane.margin
            spacing: 2
            Row {
                width: parent.width
                spacing: Theme.snug
                GoreGauge {
                    width: 14
                    visible: series.standing >= 0
                    standing: series.standing
                    used: 0.5
                    decoration: true
                }
                Label {
                    width: parent.width - (series.standing >= 0 ? 14 + Theme.snug : 0)
                    text: series.label
                    font.bold: true
                }
            }
            Label {
                width: parent.width
                text: series.detail
                font.pixelSize: Theme.textSmall
                Accessible.role: Accessible.StaticText
            }
            Item {
                width: 1
                height: Theme.snug
            }
            Rule { width: parent.width }
        }
    }
    Label {
        width: parent.width
        visible: pane.desk.series.count > 0
        text: qsTr("A trend plans work. What grounds is a reading beyond its limit; the manual's limit decides.")
        soft: true
        font.pixelSize: Theme.textSmall
    }
}
