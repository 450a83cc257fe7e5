// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Lists

// Chooses one of many: what is typed sifts the list, the arrows walk in it, Enter or a tap chooses.
Column {
    id: chooser

    required property string name
    required property ChoiceSift sift
    property int shown: 6 // hits in sight before anything more is typed

    signal picked(value: string)
    signal dropped()

    function enter() {
        typed.clear();
        hits.toFirst();
        typed.forceActiveFocus(Qt.TabFocusReason);
    }

    spacing: Theme.tight

    Field {
        id: typed
        objectName: "chooser.typed"
        width: parent.width
        name: qsTr("%1: type any part of a name, serial number, type or place").arg(chooser.name)
        placeholderText: qsTr("any part of a name, serial, type, place")
        onTextEdited: {
            chooser.sift.sought = text;
            hits.toFirst();
        }
        onAccepted: {
            if (hits.count > 0)
                chooser.picked(chooser.sift.hits.valueAt(Math.max(0, hits.currentIndex)));
        }
        Keys.onDownPressed: hits.incrementCurrentIndex()
        Keys.onUpPressed: hits.decrementCurrentIndex()
        Keys.onEscapePressed: event => {
            event.accepted = true;
            chooser.dropped();
        }
    }
    ListView {
        id: hits
        function toFirst() {
            hits.currentIndex = 0;
            hits.positionViewAtBeginning();
        }
        width: parent.width
        height: Math.min(chooser.shown * Theme.touch, contentHeight)
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        cacheBuffer: 0 // what is sifted away must not be made any more
        model: chooser.sift.hits
        Accessible.role: Accessible.List
        Accessible.name: qsTr("%1: what fits").arg(chooser.name)
        delegate: ChoiceLine {
            width: hits.width
            current: ListView.isCurrentItem && typed.activeFocus
            onClicked: chooser.picked(value)
        }
    }
    Label {
        width: parent.width
        visible: hits.count === 0 || chooser.sift.more > 0
        text: hits.count === 0 ? qsTr("Nothing fits what is typed.") : qsTr("%n more: type on", "", chooser.sift.more)
        soft: true
        font.pixelSize: Theme.textSmall
    }
}
