// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Desk
import Crownring.Next

// Over the due list: how it stands, with numbers; words, which balloon, which kind. On a phone the fields may be folded.
Flow {
    id: filters

    required property NextPlace place
    property bool phone: false
    property bool unfolded: true

    spacing: filters.phone ? Theme.tight : Theme.snug

    Flickable {
        width: filters.phone ? filters.width : Math.min(chips.width, filters.width)
        height: Theme.touch
        contentWidth: chips.width
        boundsBehavior: Flickable.StopAtBounds
        flickableDirection: Flickable.HorizontalFlick
        interactive: contentWidth > width
        clip: interactive
        Row {
            id: chips
            spacing: Theme.tight
            Chip {
                objectName: "next.mine"
                visible: Habits.mine.length > 0
                text: qsTr("Mine")
                chosen: Habits.mineOnly
                onClicked: Habits.mineOnly = !Habits.mineOnly
            }
            Chip {
                visible: filters.phone
                text: qsTr("Next six weeks")
                chosen: filters.place.weeks === 6
                onClicked: filters.place.chooseWeeks(6)
            }
            Repeater {
                model: filters.place.standings
                Chip {
                    required property int index
                    required property string label
                    required number
                    required standing
                    required chosen
                    text: label
                    // What is closed or not required is told of at the strip.
                    readonly property bool isToldOf: index === 8 || index === 6 && !filters.phone
                    visible: number > 0 && !isToldOf || chosen
                    onClicked: filters.place.standing = filters.place.standing === index ? -1 : index
                }
            }
        }
    }
    SearchField {
        visible: filters.unfolded
        width: filters.phone ? filters.width : 148
        name: qsTr("Item, serial …")
        text: filters.place.words
        onSaid: words => filters.place.words = words
    }
    ChoiceField {
        visible: filters.unfolded
        name: qsTr("Balloon")
        width: filters.phone ? (filters.width - Theme.tight) / 2 : 140
        model: filters.place.balloons
        value: filters.place.balloon
        onPicked: value => filters.place.balloon = value
    }
    ChoiceField {
        visible: filters.unfolded
        name: qsTr("Kind")
        width: filters.phone ? (filters.width - Theme.tight) / 2 : 116
        model: filters.place.kinds
        value: filters.place.kind
        onPicked: value => filters.place.kind = value
    }
}
