// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import QtQuick.Controls.Basic as Basic

// A list of rows: one stop of the tab key, arrows inside, Return opens.
ListView {
    id: rows

    required property string name

    signal opened(index: int)

    // What a field above the rows leaves over of a key opens none of them.
    function open(event: var) {
        let item = rows.Window.activeFocusItem;
        while (item !== null && item !== rows && item !== rows.headerItem)
            item = item.parent;
        event.accepted = item === rows;
        if (event.accepted)
            rows.opened(rows.currentIndex);
    }

    clip: true
    reuseItems: true
    boundsBehavior: Flickable.StopAtBounds
    activeFocusOnTab: rows.count > 0
    keyNavigationEnabled: true
    highlightMoveDuration: 0
    currentIndex: -1
    onActiveFocusChanged: {
        if (rows.activeFocus && rows.currentIndex < 0 && rows.count > 0)
            rows.currentIndex = 0;
    }
    Keys.onReturnPressed: event => rows.open(event)
    Keys.onEnterPressed: event => rows.open(event)
    Keys.onSpacePressed: event => rows.open(event)
    Accessible.role: Accessible.List
    Accessible.name: rows.name
    T.ScrollBar.vertical: Basic.ScrollBar {
        policy: Basic.ScrollBar.AsNeeded
    }
}
