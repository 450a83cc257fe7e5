// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Bench

// One line of the checklist: by itself where it is about one item, else once, with a cell for each item beside it; below
// these, where asked, each item by itself.
Item {
    id: group

    required property InspectionDesk desk
    required property int index
    required property string line
    required property string title
    required property string lookFor
    required property string source
    required property string apart
    required property CheckLineModel cells
    property bool phone: false
    property bool unfolded: false

    readonly property bool single: group.cells.count === 1
    readonly property real cellsWide: group.cells.count * 116 + (group.cells.count - 1) * Theme.tight
    readonly property bool beside: !group.phone && group.cellsWide < group.width * 0.62

    signal said // a cell or a line was settled with a tap
    signal readingsAsked(item: string)
    signal photographAsked(at: int)
    signal photographShown(digest: string)
    signal defectAsked(at: int)
    signal directiveAsked(directive: string, revision: string, item: string, about: string)

    implicitHeight: all.height
    height: implicitHeight

    // The row of the desk's lines that is asked for is opened and has the keyboard.
    function open(at: int): bool {
        group.unfolded = true;
        for (let row = 0; row < rows.count; ++row) {
            const here = rows.itemAt(row) as CheckLineRow;
            if (here !== null && here.at === at) {
                here.takeFocus();
                return true;
            }
        }
        return false;
    }

    // The keyboard goes to a row's cell, or to it where it stands alone.
    function look(at: int) {
        for (let row = 0; row < grid.cells.count; ++row) {
            const cell = grid.cells.itemAt(row) as CheckCell;
            if (cell !== null && cell.at === at)
                return cell.forceActiveFocus(Qt.TabFocusReason);
        }
        group.open(at);
    }

    Column {
        id: all
        width: parent.width
        Item {
            width: parent.width
            height: Math.max(words.implicitHeight, group.beside ? grid.implicitHeight : words.implicitHeight + Theme.snug + grid.implicitHeight) + 2 * Theme.gap
            visible: !group.single
            Column {
                id: words
                y: Theme.gap
                width: group.beside ? parent.width - group.cellsWide - Theme.gap : parent.width
                spacing: Theme.tight
                Label {
                    width: parent.width
                    text: group.title
                    font.bold: true
                }
                Label {
                    width: parent.width
                    visible: text !== ""
                    text: group.lookFor
                }
                Label {
                    width: parent.width
                    visible: text !== ""
                    text: group.apart === "" ? group.source : qsTr("%1 · %2").arg(group.apart).arg(group.source)
                    soft: true
                    font.pixelSize: Theme.textSmall
                }
                Button {
                    objectName: "bench.group." + group.index + ".each"
                    quiet: true
                    text: group.unfolded ? qsTr("Fold") : qsTr("Each by itself …")
                    Accessible.name: group.unfolded ? qsTr("Fold the items of %1").arg(group.title) : qsTr("Each item by itself: %1").arg(group.title)
                    onClicked: group.unfolded = !group.unfolded
                }
            }
            Flow {
                id: grid
                x: group.beside ? parent.width - width : 0
                y: group.beside ? Theme.gap : words.y + words.implicitHeight + Theme.snug
                width: group.beside ? group.cellsWide : parent.width
                spacing: Theme.tight
                readonly property alias cells: each
                readonly property real cell: group.beside ? 116 : Math.floor((grid.width - Theme.tight) / 2)
                Repeater {
                    id: each
                    model: group.single ? null : group.cells
                    CheckCell {
                        width: group.beside || !group.phone ? 116 : grid.cell
                        desk: group.desk
                        onByItself: group.unfolded = true
                        onSaid: group.said()
                    }
                }
            }
            Rule {
                anchors.bottom: parent.bottom
                width: parent.width
                visible: !group.unfolded
            }
        }
        Repeater {
            id: rows
            model: group.single || group.unfolded ? group.cells : null
            CheckLineRow {
                x: group.single ? 0 : Theme.wide
                width: group.width - x
                desk: group.desk
                inGrid: !group.single
                onSaid: group.said()
                onReadingsAsked: group.readingsAsked(item)
                onPhotographAsked: group.photographAsked(at)
                onPhotographShown: digest => group.photographShown(digest)
                onDefectAsked: group.defectAsked(at)
                onDirectiveAsked: (directive, revision, item, about) => group.directiveAsked(directive, revision, item, about)
            }
        }
    }
}
