// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Window
import QtQuick.Templates as T
import QtQuick.Controls.Basic as Basic
import Crownring.Theme

// A column that scrolls, and follows the keyboard: what is focused is brought into view.
Flickable {
    id: scroll

    default property alias content: column.data
    property int margin: Theme.wide
    property alias spacing: column.spacing

    clip: true
    contentWidth: width
    contentHeight: column.height + 2 * scroll.margin
    boundsBehavior: Flickable.StopAtBounds
    T.ScrollBar.vertical: Basic.ScrollBar {
        policy: Basic.ScrollBar.AsNeeded
    }

    // Only where the tab key led: a finger has seen what it touches.
    readonly property Item focused: Window.activeFocusItem
    onFocusedChanged: {
        const control = scroll.focused as T.Control;
        const field = scroll.focused as T.TextField;
        const why = control !== null ? control.focusReason : field !== null ? field.focusReason : Qt.OtherFocusReason;
        if (why !== Qt.TabFocusReason && why !== Qt.BacktabFocusReason)
            return;
        for (let at = scroll.focused.parent; at !== null; at = at.parent)
            if (at === column)
                return scroll.reveal(scroll.focused);
    }

    function reveal(item: Item) {
        column.forceLayout();
        const top = item.mapToItem(column, 0, 0).y + scroll.margin;
        if (top < scroll.contentY + Theme.snug)
            scroll.contentY = Math.max(0, top - Theme.vast);
        else if (top + item.height > scroll.contentY + scroll.height - Theme.snug)
            scroll.contentY = Math.min(Math.max(0, scroll.contentHeight - scroll.height), top + item.height - scroll.height + Theme.vast);
    }

    Column {
        id: column
        x: scroll.margin
        y: scroll.margin
        width: scroll.width - 2 * scroll.margin
        spacing: Theme.wide
    }
}
