// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import Crownring.Theme
import Crownring.Parts
import Crownring.Form

// A month, to pick a day from.
Sheet {
    id: sheet

    signal picked(day: string)

    title: qsTr("Which day?")
    widest: 400
    tallest: 460

    function ask(written: string) {
        leaf.show(written);
        sheet.open();
    }

    MonthLeaf { id: leaf }

    Column {
        x: Theme.snug
        y: Theme.snug
        width: parent.width - 2 * Theme.snug
        spacing: Theme.tight

        Row {
            width: parent.width
            IconButton {
                name: qsTr("A year earlier")
                shape: LineSign.Minus
                onClicked: leaf.step(-12)
            }
            IconButton {
                objectName: "month.earlier"
                name: qsTr("A month earlier")
                shape: LineSign.Back
                onClicked: leaf.step(-1)
            }
            Heading {
                width: parent.width - 4 * Theme.touch
                height: Theme.touch
                text: leaf.title
                horizontalAlignment: Text.AlignHCenter
                verticalAlignment: Text.AlignVCenter
            }
            IconButton {
                name: qsTr("A month later")
                shape: LineSign.Forward
                onClicked: leaf.step(1)
            }
            IconButton {
                name: qsTr("A year later")
                shape: LineSign.Plus
                onClicked: leaf.step(12)
            }
        }
        Row {
            id: names
            width: parent.width
            Repeater {
                model: leaf.weekdays
                Label {
                    required property string modelData
                    width: names.width / 7
                    text: modelData
                    soft: true
                    horizontalAlignment: Text.AlignHCenter
                }
            }
        }
        Grid {
            id: grid
            width: parent.width
            columns: 7
            Repeater {
                model: leaf.days
                T.AbstractButton {
                    id: day
                    required property var modelData
                    objectName: "day." + day.modelData.iso
                    width: grid.width / 7
                    height: Theme.touch
                    Accessible.role: Accessible.Button
                    Accessible.name: day.modelData.spoken
                    Keys.onReturnPressed: day.clicked()
                    onClicked: {
                        sheet.picked(day.modelData.iso);
                        sheet.close();
                    }
                    contentItem: Text {
                        textFormat: Text.PlainText
                        text: day.modelData.number
                        color: day.modelData.inMonth ? Theme.ink : Theme.inkSoft
                        font.pixelSize: Theme.text
                        font.bold: day.modelData.today || day.modelData.chosen
                        horizontalAlignment: Text.AlignHCenter
                        verticalAlignment: Text.AlignVCenter
                        Accessible.ignored: true
                    }
                    background: Rectangle {
                        radius: Theme.radius
                        color: day.down || day.modelData.chosen ? Theme.shade : "transparent"
                        border.width: day.modelData.today ? 2 : 0
                        border.color: Theme.ink
                        FocusRing { shown: day.visualFocus; outset: -2 }
                    }
                }
            }
        }
    }
}
