// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Reading a tag off a picture (by ZXing): which item it hangs on. Takes some tenths of a second: not for the thread of
/// the screen.

#include "measure/name.h"
#include "problem/problem.h"

#include <QtGui/QImage>

#include <string>

namespace crownring::print {

/// @return TagNotFound where no code is legible, TagOfAnother for one that is none of ours, TagsOfSeveral
[[nodiscard]] Result<ItemId> itemOnPicture(const QImage& picture);

/// The same of a file, turned as the camera says. FileUnreadable, NoPicture.
[[nodiscard]] Result<ItemId> itemOnPicture(const std::string& file);

}
