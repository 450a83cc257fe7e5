// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Bench

// What belongs to each figure: who writes it, the tester, the pressure and area of the test, the jaws, the load that is held.
Flow {
    id: conditions

    required property ReadingDesk reader
    readonly property real half: (conditions.width - Theme.gap) / 2

    spacing: Theme.gap

    function takeTester() {
        tester.forceActiveFocus(Qt.TabFocusReason);
    }

    component Asked: Column {
        id: asked
        required property string label
        required property string code
        property string text: ""
        property int hints: Qt.ImhFormattedNumbersOnly
        signal edited(text: string)
        width: conditions.half
        spacing: Theme.tight
        Label {
            width: parent.width
            text: asked.label
            soft: true
            font.pixelSize: Theme.textSmall
            Accessible.ignored: true
        }
        Field {
            objectName: asked.code
            width: parent.width
            name: asked.label
            text: asked.text
            inputMethodHints: asked.hints
            onTextEdited: asked.edited(text)
        }
    }

    Asked {
        width: conditions.width
        label: qsTr("Inspector, who writes at this bench")
        code: "bench.inspector"
        text: conditions.reader.desk !== null ? conditions.reader.desk.inspector : ""
        hints: Qt.ImhNone
        onEdited: text => conditions.reader.desk.inspector = text
    }
    Column {
        width: conditions.width
        visible: conditions.reader.asksTester
        spacing: Theme.tight
        Label {
            text: qsTr("Test equipment for it, in calibration on this day")
            soft: true
            font.pixelSize: Theme.textSmall
            Accessible.ignored: true
        }
        ChoiceField {
            id: tester
            objectName: "bench.tester"
            width: parent.width
            name: qsTr("Test equipment")
            empty: conditions.reader.testers.count > 0 ? qsTr("choose …") : qsTr("none for it is in calibration")
            model: conditions.reader.testers
            value: conditions.reader.tester
            onPicked: value => conditions.reader.tester = value
        }
        Button {
            objectName: "bench.tester.name"
            visible: conditions.reader.misnamed > 0
            text: qsTr("Write it to the readings without it: %1").arg(conditions.reader.misnamed)
            onClicked: conditions.reader.nameTester()
        }
        Label {
            objectName: "bench.tester.remark"
            width: parent.width
            visible: text !== ""
            text: conditions.reader.testerRemark
            font.pixelSize: Theme.textSmall
            color: Theme.ember
        }
    }
    Asked {
        visible: conditions.reader.canHold && conditions.reader.held
        label: qsTr("Proof load, %1").arg(conditions.reader.unit)
        code: "bench.proof"
        text: conditions.reader.proof
        onEdited: text => conditions.reader.proof = text
    }
    Asked {
        visible: conditions.reader.asksJaw
        label: qsTr("Width of the jaws, mm")
        code: "bench.jaw"
        text: conditions.reader.jaw
        onEdited: text => conditions.reader.jaw = text
    }
    Asked {
        visible: conditions.reader.asksAirflow
        label: qsTr("Pressure, Pa")
        code: "bench.pressure"
        text: conditions.reader.pressure
        onEdited: text => conditions.reader.pressure = text
    }
    Asked {
        visible: conditions.reader.asksAirflow
        label: qsTr("Area, cm²")
        code: "bench.area"
        text: conditions.reader.area
        onEdited: text => conditions.reader.area = text
    }
    Column {
        width: conditions.width
        visible: conditions.reader.zones.count > 0
        spacing: Theme.tight
        Label {
            text: qsTr("Part of the envelope")
            soft: true
            font.pixelSize: Theme.textSmall
            Accessible.ignored: true
        }
        ChoiceField {
            objectName: "bench.zone"
            width: parent.width
            name: qsTr("Part of the envelope")
            model: conditions.reader.zones
            value: conditions.reader.zone
            onPicked: value => conditions.reader.zone = value
        }
    }
    Flow {
        width: conditions.width
        visible: conditions.reader.asksWay
        spacing: Theme.snug
        Chip {
            objectName: "bench.soap"
            text: qsTr("soap solution")
            chosen: conditions.reader.way === "soap"
            onClicked: conditions.reader.way = chosen ? "" : "soap"
        }
        Chip {
            objectName: "bench.decay"
            text: qsTr("pressure decay")
            chosen: conditions.reader.way === "pressure-decay"
            onClicked: conditions.reader.way = chosen ? "" : "pressure-decay"
        }
    }
    Asked {
        visible: conditions.reader.asksSeconds
        label: qsTr("Held for, s")
        code: "bench.seconds"
        text: conditions.reader.seconds
        onEdited: text => conditions.reader.seconds = text
    }
    Asked {
        visible: conditions.reader.asksWarmth
        label: conditions.reader.zones.count > 0 ? qsTr("Temperature, °C") : qsTr("Fuel in the cylinder, °C")
        code: "bench.warmth"
        text: conditions.reader.warmth
        onEdited: text => conditions.reader.warmth = text
    }
    Label {
        objectName: "bench.pressed"
        width: conditions.width
        visible: text !== ""
        text: conditions.reader.pressed
        soft: true
        font.pixelSize: Theme.textSmall
    }
    Flow {
        width: conditions.width
        visible: conditions.reader.zones.count > 0
        spacing: Theme.snug
        Chip {
            objectName: "bench.dry"
            text: qsTr("dry")
            chosen: conditions.reader.dry === "yes"
            onClicked: conditions.reader.dry = chosen ? "" : "yes"
        }
        Chip {
            objectName: "bench.notdry"
            text: qsTr("not dry")
            chosen: conditions.reader.dry === "no"
            onClicked: conditions.reader.dry = chosen ? "" : "no"
        }
        Chip {
            objectName: "bench.inside"
            text: qsTr("from inside")
            chosen: conditions.reader.side === "inside"
            onClicked: conditions.reader.side = chosen ? "" : "inside"
        }
        Chip {
            objectName: "bench.outside"
            text: qsTr("from outside")
            chosen: conditions.reader.side === "outside"
            onClicked: conditions.reader.side = chosen ? "" : "outside"
        }
    }
}
