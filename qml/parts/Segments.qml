// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import Crownring.Theme

// A few leaves of one place, side by side; where they are too many for its width in two rows of as many, so that none
// stands alone. The chosen one stands on a load tape.
Flow {
    id: segments

    required property list<string> names
    property list<string> codes // the objects' names, for who looks for a leaf by name
    property int current: 0

    signal chosen(index: int)

    readonly property real inOneRow: {
        let sum = 0;
        for (let at = 0; at < leaves.count; ++at)
            sum += leaves.itemAt(at)?.implicitWidth ?? 0;
        return sum;
    }
    readonly property bool broken: segments.width > 0 && segments.inOneRow > segments.width + 1
    readonly property int inARow: Math.ceil(leaves.count / 2)

    function focusCurrent() {
        const leaf = leaves.itemAt(segments.current);
        if (leaf !== null)
            leaf.forceActiveFocus(Qt.TabFocusReason);
    }

    Accessible.role: Accessible.PageTabList

    Repeater {
        id: leaves
        model: segments.names
        T.AbstractButton {
            id: leaf

            required property int index
            required property string modelData
            readonly property bool here: segments.current === leaf.index

            objectName: segments.codes.length > leaf.index ? segments.codes[leaf.index] : ""
            width: segments.broken ? Math.floor(segments.width / segments.inARow) : leaf.implicitWidth
            implicitHeight: Theme.touch
            implicitWidth: words.implicitWidth + 2 * Theme.gap
            Accessible.role: Accessible.PageTab
            Accessible.name: leaf.modelData
            Accessible.selected: leaf.here
            onClicked: segments.chosen(leaf.index)
            Keys.onReturnPressed: segments.chosen(leaf.index)
            Keys.onEnterPressed: segments.chosen(leaf.index)
            contentItem: Text {
                id: words
                textFormat: Text.PlainText
                text: leaf.modelData
                color: leaf.here ? Theme.ink : Theme.inkSoft
                font.pixelSize: Theme.text
                font.bold: leaf.here
                horizontalAlignment: Text.AlignHCenter
                verticalAlignment: Text.AlignVCenter
                Accessible.ignored: true
            }
            background: Item {
                Rectangle {
                    anchors.bottom: parent.bottom
                    width: parent.width
                    height: leaf.here ? 3 : Theme.hair
                    color: leaf.here ? Theme.rattan : Theme.hairline
                }
                FocusRing { shown: leaf.visualFocus; outset: -3 }
            }
        }
    }
}
