// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts

// Says the words a little after the last letter, so that a long list is not sifted at every key.
Field {
    id: search

    signal said(words: string)

    leftPadding: Theme.vast + Theme.tight
    placeholderText: search.name
    onTextEdited: pause.restart()
    Keys.onEscapePressed: event => {
        event.accepted = search.text !== "";
        search.clear();
        search.said("");
    }
    onAccepted: {
        pause.stop();
        search.said(search.text);
    }

    Timer {
        id: pause
        interval: 160
        onTriggered: search.said(search.text)
    }
    LineSign {
        x: Theme.gap
        anchors.verticalCenter: parent.verticalCenter
        width: 18
        height: 18
        shape: LineSign.Glass
        tone: Theme.inkSoft
    }
}
