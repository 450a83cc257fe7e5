// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import QtQuick.Controls.Basic as Basic
import Crownring.Theme
import Crownring.Parts
import Crownring.Form

// The form of one entry. It closes itself when the entry is written; what was typed is not thrown away unasked.
Sheet {
    id: sheet

    required property EntryForm form
    readonly property bool asked: sheet.form.open

    property bool leaving: false

    title: sheet.form.title
    held: sheet.form.touched && !sheet.form.saving
    onLeaveAsked: {
        sheet.leaving = true;
        stay.forceActiveFocus(Qt.TabFocusReason);
    }
    onAskedChanged: sheet.asked ? sheet.open() : sheet.close()
    onOpened: {
        sheet.leaving = false;
        scroll.contentY = 0;
        scroll.entered = null;
        scroll.enter(sheet.form.firstRow());
    }
    onClosed: sheet.form.cancel()

    Connections {
        target: sheet.form
        function onMarked(row: int) {
            scroll.enter(row);
        }
    }

    Scroll {
        id: scroll
        anchors.fill: parent
        anchors.bottomMargin: foot.height

        property FormField entered: null
        function enter(row: int) {
            const field = fields.itemAt(row) as FormField;
            if (field === null)
                return;
            field.enter();
            scroll.entered = field;
            scroll.reveal(field);
        }
        // What is told under a field, and in the foot below, comes after it was entered.
        function keepInView() {
            const field = scroll.entered;
            if (field === null || field.problem === "" && field.question === "")
                return;
            field.forceLayout();
            scroll.reveal(field);
        }
        onHeightChanged: inView.start()
        onContentHeightChanged: inView.start()
        Timer {
            id: inView // once all is laid out
            interval: 0
            onTriggered: scroll.keepInView()
        }

        Label {
            width: parent.width
            visible: text !== ""
            text: sheet.form.about
            soft: true
        }
        Repeater {
            id: fields
            model: sheet.form.fields
            FormField {
                id: field
                width: scroll.width - 2 * Theme.wide
                form: sheet.form
                onEdited: value => sheet.form.setValue(index, value)
                onToggled: choice => sheet.form.toggle(index, choice)
                onDaysAgo: days => sheet.form.setDaysAgo(index, days)
                onMonthAsked: written => month.askFor(index, written)
                onFocused: item => {
                    scroll.entered = null;
                    scroll.reveal(item);
                }
            }
        }
    }
    Rectangle {
        id: foot
        anchors.bottom: parent.bottom
        width: parent.width
        height: Math.max(64, words.height + save.height + 3 * Theme.snug)
        color: "transparent"
        Rule { width: parent.width }
        Column {
            id: words
            x: Theme.wide
            y: Theme.snug
            width: parent.width - 2 * Theme.wide
            spacing: Theme.tight
            Flickable {
                id: moved
                width: parent.width
                height: Math.min(follows.height, 160)
                contentHeight: follows.height
                visible: follows.text !== ""
                clip: true
                boundsBehavior: Flickable.StopAtBounds
                activeFocusOnTab: moved.contentHeight > moved.height
                T.ScrollBar.vertical: Basic.ScrollBar {
                    policy: moved.contentHeight > moved.height ? Basic.ScrollBar.AlwaysOn : Basic.ScrollBar.AlwaysOff
                }
                function by(pixels: real) {
                    moved.contentY = Math.max(0, Math.min(moved.contentHeight - moved.height, moved.contentY + pixels));
                }
                Keys.onUpPressed: moved.by(-40)
                Keys.onDownPressed: moved.by(40)
                FocusRing { parent: moved; outset: 0; shown: moved.activeFocus }
                Label {
                    id: follows
                    objectName: "form.follows"
                    width: moved.width - Theme.wide
                    text: sheet.form.follows
                }
            }
            Column {
                width: parent.width
                visible: sheet.leaving
                spacing: Theme.tight
                Label {
                    width: parent.width
                    text: qsTr("What was typed here is not written yet. Leave it?")
                    font.bold: true
                    Accessible.role: Accessible.AlertMessage
                }
                Flow {
                    width: parent.width
                    spacing: Theme.snug
                    Button {
                        id: stay
                        objectName: "form.stay"
                        text: qsTr("Go on writing")
                        onClicked: {
                            sheet.leaving = false;
                            scroll.enter(sheet.form.firstRow());
                        }
                    }
                    Button {
                        objectName: "form.leave"
                        text: qsTr("Leave it")
                        onClicked: sheet.close()
                    }
                }
            }
            T.AbstractButton {
                id: marked
                width: parent.width
                implicitHeight: contentItem.implicitHeight
                visible: sheet.form.problem !== ""
                Accessible.name: sheet.form.problem
                onClicked: sheet.form.goToMarked()
                contentItem: Label {
                    objectName: "form.problem"
                    text: sheet.form.problem
                    color: Theme.ember
                    font.bold: true
                    Accessible.role: Accessible.AlertMessage
                }
                background: Item {
                    FocusRing { shown: marked.visualFocus }
                }
            }
        }
        Button {
            id: save
            objectName: "form.save"
            anchors.right: parent.right
            anchors.rightMargin: Theme.wide
            anchors.bottom: parent.bottom
            anchors.bottomMargin: Theme.snug
            primary: !sheet.form.signing
            enabled: !sheet.form.saving && !sheet.form.reading
            text: sheet.form.saving ? qsTr("Writing …") : sheet.form.verb
            onClicked: {
                save.forceActiveFocus(); // what is being typed is said by then
                sheet.form.save();
            }
        }
    }
    MonthSheet {
        id: month
        property int row: -1
        function askFor(row: int, written: string) {
            month.row = row;
            month.ask(written);
        }
        onPicked: day => sheet.form.setValue(month.row, day)
    }
}
