// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Lists
import Crownring.Parts
import Crownring.Bench

// What is read, against which limit, and the figure. Enter hands it over; the field is ready for the next one.
Column {
    id: form

    required property ReadingDesk reader
    property bool atWork: true
    property bool terse: false // the limit stands elsewhere

    spacing: Theme.gap

    signal placeAsked
    signal equipmentAsked

    // To what is asked for next: the figure, the held load, or the place on the map.
    function takeFocus() {
        if (panel.visible && panel.text === "")
            panel.forceActiveFocus(Qt.OtherFocusReason);
        else if (figure.visible)
            figure.forceActiveFocus(Qt.OtherFocusReason);
        else if (take.visible)
            take.forceActiveFocus(Qt.TabFocusReason);
        else
            form.placeAsked();
    }
    // Where the hand is: in the fields of this form, and not on the map.
    function typed(): bool {
        return figure.activeFocus || below.activeFocus || keep.activeFocus || enter.activeFocus || panel.activeFocus || take.activeFocus;
    }
    function clear() {
        const typing = form.typed();
        figure.clear();
        below.clear();
        if (typing)
            form.takeFocus();
    }
    function handOver() {
        if (figure.text.trim() === "")
            return form.takeFocus();
        if (form.reader.stepped && below.text.trim() === "" && !below.activeFocus && !form.reader.saysBoth(figure.text))
            return below.forceActiveFocus(Qt.OtherFocusReason);
        form.reader.enter(figure.text, form.reader.stepped ? below.text : "");
    }
    function numberAt(row: int): int {
        return Number(form.reader.series.data(form.reader.series.index(row, 0), ChoiceModel.NumberRole) ?? 0);
    }

    // The first that still asks for readings behind the one at hand, or before it; none while this one does.
    property int next: -1
    property string nextLabel: ""
    function lookAhead() {
        const series = form.reader.series;
        const here = form.reader.current;
        let found = -1;
        if (here >= 0 && form.numberAt(here) <= 0)
            for (let step = 1; step < series.count && found < 0; ++step)
                if (form.numberAt((here + step) % series.count) > 0)
                    found = (here + step) % series.count;
        form.next = found;
        form.nextLabel = found < 0 ? "" : String(series.data(series.index(found, 0), ChoiceModel.LabelRole));
    }
    Component.onCompleted: form.lookAhead()

    readonly property string question: form.reader.question
    onQuestionChanged: {
        if (form.question !== "")
            mend.forceActiveFocus(Qt.TabFocusReason);
    }

    Connections {
        target: form.reader
        function onChanged() {
            form.lookAhead();
        }
    }

    ChoiceField {
        objectName: "bench.series"
        width: parent.width
        name: qsTr("What is read")
        model: form.reader.series
        at: form.reader.current
        displayText: form.reader.title === "" ? empty : qsTr("%1 · %2").arg(form.reader.title).arg(form.reader.progress)
        onPickedAt: at => form.reader.current = at
    }
    Button {
        objectName: "bench.series.next"
        width: parent.width
        visible: form.next >= 0 && form.atWork
        primary: true
        text: qsTr("Next: %1 ›").arg(form.nextLabel)
        onClicked: {
            form.reader.current = form.next;
            form.takeFocus();
        }
    }
    LimitText {
        width: parent.width
        visible: !form.terse
        reader: form.reader
    }
    Flow {
        width: parent.width
        spacing: Theme.snug
        visible: form.atWork
        Segments {
            visible: form.reader.canHold
            names: [qsTr("Held"), qsTr("Failed at …")]
            codes: ["bench.held", "bench.failed"]
            current: form.reader.held ? 0 : 1
            onChosen: index => {
                form.reader.held = index === 0;
                form.takeFocus();
            }
        }
        Chip {
            objectName: "bench.warp"
            visible: form.reader.asksDirection
            text: qsTr("warp")
            chosen: form.reader.direction === "warp"
            onClicked: form.reader.direction = "warp"
        }
        Chip {
            objectName: "bench.weft"
            visible: form.reader.asksDirection
            text: qsTr("weft")
            chosen: form.reader.direction === "weft"
            onClicked: form.reader.direction = "weft"
        }
    }
    Label {
        width: parent.width
        visible: form.reader.held && form.reader.placed && form.atWork
        text: qsTr("Tap where %1 %2 was held.").arg(form.reader.proof).arg(form.reader.unit)
    }
    ChoiceField {
        objectName: "bench.spot"
        width: parent.width
        visible: form.reader.spots.count > 0 && form.atWork
        name: qsTr("Where on the basket")
        model: form.reader.spots
        value: form.reader.spot
        onPicked: value => {
            form.reader.spot = value;
            form.takeFocus();
        }
    }
    Field {
        id: panel
        objectName: "bench.panel"
        width: parent.width
        visible: form.reader.inZone && form.atWork
        name: qsTr("Panel, counted around from 1")
        placeholderText: qsTr("panel, counted around")
        inputMethodHints: Qt.ImhDigitsOnly
        text: form.reader.panel
        onTextEdited: form.reader.panel = text
        onAccepted: figure.visible ? figure.forceActiveFocus(Qt.OtherFocusReason) : take.forceActiveFocus(Qt.TabFocusReason)
    }
    Button {
        id: take
        objectName: "bench.held.take"
        visible: form.reader.held && !form.reader.placed && form.atWork
        primary: true
        text: qsTr("It held at %1 %2").arg(form.reader.proof).arg(form.reader.unit)
        onClicked: form.reader.tap(0, 0)
    }
    Column {
        width: parent.width
        spacing: Theme.tight
        visible: !form.reader.held && form.atWork && form.reader.current >= 0
        Label {
            width: parent.width
            visible: form.reader.placed
            text: form.reader.gore > 0 ? qsTr("At gore %1, row %2").arg(form.reader.gore).arg(form.reader.row) : qsTr("Choose the place on the map.")
            font.bold: form.reader.gore > 0
        }
        Flow {
            id: entry
            width: parent.width
            spacing: Theme.snug
            readonly property real half: Math.floor((entry.width - Theme.snug) / 2)
            readonly property real rest: Math.floor(entry.width - enter.width - unit.width - 2 * Theme.snug)
            Field {
                id: figure
                objectName: "bench.figure"
                width: form.reader.stepped ? entry.half : entry.rest
                name: form.reader.stepped ? qsTr("At least, %1").arg(form.reader.unit) : qsTr("Figure, %1").arg(form.reader.unit)
                placeholderText: form.reader.stepped ? qsTr("at least – below") : qsTr("figure")
                inputMethodHints: Qt.ImhFormattedNumbersOnly
                onAccepted: form.handOver()
            }
            Field {
                id: below
                objectName: "bench.below"
                visible: form.reader.stepped
                width: entry.half
                name: qsTr("Below, %1; empty for the highest step").arg(form.reader.unit)
                placeholderText: qsTr("below")
                inputMethodHints: Qt.ImhFormattedNumbersOnly
                onAccepted: form.handOver()
            }
            ChoiceField {
                id: unit
                objectName: "bench.unit"
                width: 104
                name: qsTr("Unit")
                model: form.reader.units
                value: form.reader.unit
                onPicked: value => {
                    form.reader.unit = value;
                    figure.text = ""; // typed in the unit before
                    below.text = "";
                }
            }
            Button {
                id: enter
                objectName: "bench.enter"
                width: 68
                text: qsTr("Enter")
                onClicked: form.handOver()
            }
        }
    }
    Rectangle {
        width: parent.width
        height: asked.implicitHeight + 2 * Theme.gap
        visible: form.question !== ""
        color: Theme.shade
        border.width: 2
        border.color: Theme.rust
        radius: Theme.radius
        Column {
            id: asked
            x: Theme.gap
            y: Theme.gap
            width: parent.width - 2 * Theme.gap
            spacing: Theme.snug
            Label {
                width: parent.width
                text: form.question
                font.bold: true
                Accessible.role: Accessible.AlertMessage
            }
            Row {
                spacing: Theme.snug
                Button {
                    id: mend
                    objectName: "bench.question.mend"
                    text: form.reader.equipmentAsked ? qsTr("Choose it") : qsTr("Mend it")
                    onClicked: {
                        if (form.reader.equipmentAsked)
                            return form.equipmentAsked();
                        form.reader.letGo();
                        form.takeFocus();
                        figure.selectAll();
                    }
                }
                Button {
                    id: keep
                    objectName: "bench.question.keep"
                    text: form.reader.equipmentAsked ? qsTr("Write it without") : qsTr("Keep it")
                    onClicked: {
                        form.reader.stand();
                        if (form.question === "")
                            form.takeFocus();
                    }
                }
            }
        }
    }
    Label {
        width: parent.width
        visible: text !== ""
        text: form.reader.problem
        color: Theme.ember
        font.bold: true
        Accessible.role: Accessible.AlertMessage
    }
}
