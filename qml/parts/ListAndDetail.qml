// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme

// A list and what is chosen in it: side by side on a desk, one over the other on a phone.
FocusScope {
    id: pair

    property bool phone: false
    property bool detailShown: false
    property real listShare: 0.44
    property string detailName: ""
    property alias list: listHolder.data
    property alias detail: detailHolder.data

    signal closed

    Item {
        id: listHolder
        width: pair.phone ? pair.width : Math.round(Math.max(400, pair.width * pair.listShare))
        height: pair.height
        visible: !pair.phone || !pair.detailShown
    }
    Rule {
        x: listHolder.width
        width: Theme.hair
        height: pair.height
        visible: !pair.phone
    }
    Rectangle {
        x: pair.phone ? 0 : listHolder.width + Theme.hair
        width: pair.width - x
        height: pair.height
        visible: !pair.phone || pair.detailShown
        color: Theme.paper
        Item {
            id: back
            width: parent.width
            height: pair.phone ? Theme.touch : 0
            visible: pair.phone
            Button {
                id: backButton
                height: Theme.touch
                quiet: true
                text: qsTr("‹ Back")
                onClicked: pair.closed()
            }
            Label {
                anchors.left: backButton.right
                anchors.right: parent.right
                anchors.verticalCenter: parent.verticalCenter
                text: pair.detailName
                elide: Text.ElideRight
                wrapMode: Text.NoWrap
                soft: true
            }
            Rule {
                anchors.bottom: parent.bottom
                width: parent.width
            }
        }
        Item {
            id: detailHolder
            y: back.height
            width: parent.width
            height: parent.height - back.height
        }
    }
}
