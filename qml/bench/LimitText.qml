// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme
import Crownring.Parts
import Crownring.Bench

// The limit of what is read, what passing means, and where that is stated.
Label {
    id: words

    required property ReadingDesk reader

    text: words.reader.limit
    soft: true
    font.pixelSize: Theme.textSmall
}
