// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import Crownring.Theme
import Crownring.Parts

// A sheet laid over the place: the whole screen on a phone, a page in the middle on a desk. Escape puts it away, unless
// it holds what would be lost.
T.Popup {
    id: sheet

    required property string title
    property int widest: 560
    property int tallest: 720
    property bool held: false // leaving it is asked about
    readonly property bool narrow: sheet.parent !== null && sheet.parent.width < Theme.phoneBelow
    signal leaveAsked

    function leave() {
        if (sheet.held)
            sheet.leaveAsked();
        else
            sheet.close();
    }

    default property alias content: holder.data
    property alias closer: close

    parent: T.Overlay.overlay
    x: sheet.narrow ? 0 : Math.round((parent.width - width) / 2)
    y: sheet.narrow ? 0 : Math.round(Math.max(Theme.wide, (parent.height - height) / 3))
    width: sheet.narrow && parent ? parent.width : sheet.widest
    height: parent ? (sheet.narrow ? parent.height : Math.min(parent.height - 2 * Theme.wide, sheet.tallest)) : sheet.tallest
    modal: true
    focus: true
    padding: 0
    closePolicy: sheet.held ? T.Popup.NoAutoClose : T.Popup.CloseOnEscape
    T.Overlay.modal: Rectangle {
        color: Theme.veil
    }
    background: Rectangle {
        color: Theme.paper
        radius: sheet.narrow ? 0 : Theme.radius
        border.width: sheet.narrow ? 0 : Theme.hair
        border.color: Theme.edge
    }
    contentItem: FocusScope {
        focus: true
        Accessible.role: Accessible.Dialog
        Accessible.name: sheet.title
        Keys.onEscapePressed: sheet.leave()
        Heading {
            id: heading
            anchors.left: parent.left
            anchors.leftMargin: Theme.wide
            anchors.right: close.left
            height: Math.max(56, implicitHeight + 2 * Theme.tight)
            verticalAlignment: Text.AlignVCenter
            text: sheet.title
        }
        IconButton {
            id: close
            anchors.right: parent.right
            anchors.rightMargin: Theme.tight
            anchors.verticalCenter: heading.verticalCenter
            name: qsTr("Close")
            shape: LineSign.Close
            onClicked: sheet.leave()
        }
        Rule {
            anchors.top: heading.bottom
            width: parent.width
        }
        Item {
            id: holder
            anchors.top: heading.bottom
            anchors.topMargin: Theme.hair
            anchors.bottom: parent.bottom
            width: parent.width
        }
    }
}
