// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A photograph as the record keeps it, and which ones lie at hand.

#include "civil/civil_date.h"
#include "record/journal.h"

#include <QStringList>

class QUrl;

namespace crownring::screen {

/// As `print::photographFrom`, which takes a tenth of a second and more: not for the thread of the screen.
[[nodiscard]] Result<Picture> photographFrom(const QUrl& file);

/// Small, as a URL of its own: `data:image/jpeg;base64,…`. Empty where it cannot be made.
[[nodiscard]] QString smallPhotograph(const Picture& picture);

/// URLs of the latest pictures in the camera's folder and the folders in it, taken on a day or the day before; latest
/// first, each once, at most so many; one that is still being written waits. @param folder empty: the user's folders of
/// pictures
[[nodiscard]] QStringList latestPictures(CivilDate day, const QString& folder = {}, int most = 4);

}
