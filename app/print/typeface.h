// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The type of Crownring, on the screen and on paper: B612, which was drawn for cockpits (Debian: fonts-b612). It is
/// put into the program when it is built; where it was not found, the system's sans serves.

#include <QtCore/QString>
#include <QtGui/QColor>
#include <QtGui/QFont>

namespace crownring::print {

/// The family's name for QFont; empty when B612 is not in the program. Needs a QGuiApplication.
[[nodiscard]] QString ownFamily();

enum class Face { Regular, Bold, Italic };

/// @param size in points, as printed
[[nodiscard]] QFont typeFont(double size, Face face = Face::Regular);

// Sizes in points.
inline constexpr double titleSize = 15, bodySize = 10, tableSize = 9, smallSize = 8;

// One accent; everything is told without it too.
inline const QColor ink(0x1b, 0x23, 0x30), softInk(0x4d, 0x57, 0x66), hairline(0xa9, 0xa9, 0xa4),
    accent(0x2b, 0x6c, 0x99);

}
