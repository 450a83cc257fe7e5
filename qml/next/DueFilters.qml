// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Screen
import Crownring.Theme
import Crownring.Parts

// Over the due list: how it stands (with numbers), which balloon, which kind, words, and the order.
Column {
    id: filters

    required property NextPlace place

    leftPadding: Theme.wide
    rightPadding: Theme.wide
    bottomPadding: Theme.snug
    spacing: Theme.tight

    Flow {
        width: filters.width - 2 * Theme.wide
        spacing: Theme.tight
        Repeater {
            model: filters.place.standings
            Chip {
                required property int index
                required property string label
                text: label
                // `number`, `standing` and `chosen` come from the model under the names that a chip has
                required number
                required standing
                required chosen
                visible: number > 0 || chosen
                onClicked: filters.place.standing = filters.place.standing === index ? -1 : index
            }
        }
    }
    Flow {
        width: filters.width - 2 * Theme.wide
        spacing: Theme.snug
        SearchField {
            width: Math.max(160, Math.min(240, filters.width - 2 * Theme.wide))
            name: qsTr("Item, serial, requirement")
            onSaid: words => filters.place.words = words
        }
        ChoiceField {
            name: qsTr("Balloon")
            width: 152
            model: filters.place.balloons
            value: filters.place.balloon
            onPicked: value => filters.place.balloon = value
        }
        ChoiceField {
            name: qsTr("Kind")
            width: 152
            model: filters.place.kinds
            value: filters.place.kind
            onPicked: value => filters.place.kind = value
        }
    }
    Item {
        width: filters.width - 2 * Theme.wide
        height: Theme.touch
        Label {
            anchors.verticalCenter: parent.verticalCenter
            anchors.left: parent.left
            anchors.right: buttons.left
            text: filters.place.summary
            soft: true
            elide: Text.ElideRight
            wrapMode: Text.NoWrap
        }
        Row {
            id: buttons
            anchors.right: parent.right
            Button {
                visible: filters.place.filtered
                quiet: true
                text: qsTr("Clear")
                onClicked: filters.place.clearFilters()
            }
            Button {
                quiet: true
                text: filters.place.soonestFirst ? qsTr("Soonest first") : qsTr("Worst first")
                onClicked: filters.place.soonestFirst = !filters.place.soonestFirst
            }
        }
    }
}
