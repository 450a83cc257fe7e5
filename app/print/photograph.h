// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A photograph or a scan as the record keeps it.

#include "record/journal.h"

#include <QtCore/QByteArray>
#include <QtGui/QImage>

#include <string>

namespace crownring::print {

/// Upright, at most so many pixels wide or high. FileUnreadable, PictureTooLarge, NoPicture.
[[nodiscard]] Result<QImage> imageFrom(const std::string& file, int longest);

/// JPEG, upright, at most 2,000 pixels wide or high; what the camera wrote beside the picture (where, with what) is
/// left out. FileUnreadable for a file that is not there, PictureTooLarge, NoPicture. Takes a tenth of a second and
/// more: not for the thread of the screen.
[[nodiscard]] Result<Picture> photographFrom(const std::string& file);

/// As photographs are kept; empty where it cannot be made.
[[nodiscard]] QByteArray jpegOf(const QImage& image);

}
