// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Crownring.Theme

// A hairline.
Rectangle {
    implicitHeight: Theme.hair
    implicitWidth: Theme.hair
    color: Theme.hairline
}
