// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Screen
import Crownring.Theme
import Crownring.Parts

// Over the due list: how it stands (with numbers), which balloon, which kind, words, and the order. On a phone the fields
// wait behind a button.
Column {
    id: filters

    required property NextPlace place
    property bool phone: false
    property bool unfolded: !filters.phone

    readonly property real inner: filters.width - 2 * Theme.wide

    leftPadding: Theme.wide
    rightPadding: Theme.wide
    topPadding: Theme.tight
    spacing: Theme.tight

    Flickable {
        width: filters.inner
        height: Theme.touch
        contentWidth: chips.width
        boundsBehavior: Flickable.StopAtBounds
        flickableDirection: Flickable.HorizontalFlick
        clip: contentWidth > width
        Row {
            id: chips
            spacing: Theme.tight
            Repeater {
                model: filters.place.standings
                Chip {
                    required property int index
                    required property string label
                    required number
                    required standing
                    required chosen
                    text: label
                    visible: number > 0 || chosen
                    onClicked: filters.place.standing = filters.place.standing === index ? -1 : index
                }
            }
        }
    }
    Flow {
        width: filters.inner
        spacing: Theme.snug
        visible: filters.unfolded
        SearchField {
            width: filters.phone ? filters.inner : Math.max(160, Math.min(264, filters.inner - 2 * (160 + Theme.snug)))
            name: qsTr("Item, serial, requirement")
            onSaid: words => filters.place.words = words
        }
        ChoiceField {
            name: qsTr("Balloon")
            width: filters.phone ? (filters.inner - Theme.snug) / 2 : 160
            model: filters.place.balloons
            value: filters.place.balloon
            onPicked: value => filters.place.balloon = value
        }
        ChoiceField {
            name: qsTr("Kind")
            width: filters.phone ? (filters.inner - Theme.snug) / 2 : 160
            model: filters.place.kinds
            value: filters.place.kind
            onPicked: value => filters.place.kind = value
        }
    }
    Item {
        width: filters.inner
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
                visible: filters.phone
                quiet: true
                text: filters.unfolded ? qsTr("Fold") : qsTr("Filter")
                onClicked: filters.unfolded = !filters.unfolded
            }
            Button {
                visible: !filters.phone || filters.unfolded
                quiet: true
                text: filters.place.soonestFirst ? qsTr("Soonest first") : qsTr("Worst first")
                onClicked: filters.place.soonestFirst = !filters.place.soonestFirst
            }
        }
    }
}
