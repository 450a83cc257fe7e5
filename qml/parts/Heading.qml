// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme

Label {
    id: heading

    font.pixelSize: Theme.textTitle
    font.bold: true
    Accessible.role: Accessible.Heading
}
