// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Components

// An item as a component: what it is a part of, what it came with, what is stamped on it, and the parts that it has.
Scroll {
    id: pane

    required property ComponentDesk desk

    signal itemAsked(item: string)
    signal componentAct(kind: string, item: string)

    spacing: Theme.gap

    TagSaver { id: saver }
    Flow {
        width: parent.width
        spacing: Theme.snug
        Button {
            objectName: "component.carrier"
            visible: pane.desk.partOf !== ""
            text: qsTr("Part of %1").arg(pane.desk.partOf)
            onClicked: pane.itemAsked(pane.desk.partOf)
        }
        Button {
            objectName: "component.replace"
            visible: pane.desk.fitted
            text: qsTr("Replace it …")
            onClicked: pane.componentAct("component.replaced", pane.desk.item)
        }
        Button {
            objectName: "component.takeOff"
            visible: pane.desk.partOf !== ""
            text: qsTr("Take it off …")
            onClicked: pane.componentAct("component.taken-off", pane.desk.item)
        }
        Button {
            objectName: "component.fit"
            text: qsTr("Fit a part to it …")
            onClicked: pane.componentAct("component.fitted", pane.desk.item)
        }
        Button {
            objectName: "component.fill"
            visible: pane.desk.vessel
            text: qsTr("It was filled …")
            onClicked: pane.componentAct("cylinder.filled", pane.desk.item)
        }
        Button {
            objectName: "component.tag"
            text: qsTr("Its tag …")
            Accessible.name: qsTr("Write its tag with a QR code, to be printed")
            onClicked: saver.ask([pane.desk.item])
        }
    }
    Facts {
        width: parent.width
        name: qsTr("Stamped on it")
        text: pane.desk.stamped
    }
    Facts {
        width: parent.width
        name: qsTr("Filling")
        text: pane.desk.filled
    }
    Facts {
        width: parent.width
        name: qsTr("Time in service")
        text: pane.desk.times
    }
    Facts {
        width: parent.width
        name: qsTr("Lot")
        text: pane.desk.lot
    }
    Facts {
        width: parent.width
        name: qsTr("It came with")
        text: pane.desk.release
    }
    Column {
        width: parent.width
        spacing: 0
        Label {
            width: parent.width
            bottomPadding: Theme.snug
            text: pane.desk.parts.count === 0 ? qsTr("No item of the record is a part of it.") : qsTr("Its parts, each with a life of its own")
            soft: true
            font.pixelSize: Theme.textSmall
        }
        Repeater {
            model: pane.desk.parts
            Line {
                id: part
                required property int index
                required property string value
                required property string label
                required property string detail
                required property int standing
                objectName: "component.part." + part.index
                width: pane.width - 2 * pane.margin
                height: Math.max(Theme.touch, words.implicitHeight + 2 * Theme.snug)
                leftPadding: 0
                rightPadding: 0
                focusPolicy: Qt.StrongFocus
                held: part.visualFocus
                Accessible.role: Accessible.Button
                Accessible.name: qsTr("%1, %2").arg(part.label).arg(part.detail)
                onClicked: pane.itemAsked(part.value)
                Keys.onReturnPressed: part.clicked()
                Keys.onEnterPressed: part.clicked()
                contentItem: Item {
                    GoreGauge {
                        id: gauge
                        anchors.verticalCenter: parent.verticalCenter
                        width: 16
                        standing: part.standing
                        used: 0.4
                        decoration: true
                        opacity: part.standing >= 0 ? 1 : 0
                    }
                    Column {
                        id: words
                        anchors.left: gauge.right
                        anchors.leftMargin: Theme.gap
                        anchors.right: swap.left
                        anchors.rightMargin: Theme.snug
                        anchors.verticalCenter: parent.verticalCenter
                        spacing: 2
                        Label {
                            width: parent.width
                            text: part.label
                            font.bold: true
                            Accessible.ignored: true
                        }
                        Label {
                            width: parent.width
                            text: part.detail
                            soft: true
                            font.pixelSize: Theme.textSmall
                            Accessible.ignored: true
                        }
                    }
                    Button {
                        id: swap
                        objectName: "component.part." + part.index + ".replace"
                        anchors.right: parent.right
                        anchors.verticalCenter: parent.verticalCenter
                        text: qsTr("Replace …")
                        Accessible.name: qsTr("Replace %1").arg(part.label)
                        onClicked: pane.componentAct("component.replaced", part.value)
                    }
                }
            }
        }
    }
    Facts {
        width: parent.width
        name: qsTr("Parts that are listed of it")
        text: pane.desk.listed
    }
}
