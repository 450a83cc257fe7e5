// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import QtQuick.Controls.Basic as Basic

// A list of rows: one stop of the tab key, arrows inside, Return opens.
ListView {
    id: rows

    required property string name

    signal opened(index: int)

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
    Keys.onReturnPressed: rows.opened(rows.currentIndex)
    Keys.onEnterPressed: rows.opened(rows.currentIndex)
    Keys.onSpacePressed: rows.opened(rows.currentIndex)
    Accessible.role: Accessible.List
    Accessible.name: rows.name
    T.ScrollBar.vertical: Basic.ScrollBar {
        policy: Basic.ScrollBar.AsNeeded
    }
}
