// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The ageing chart as files: its picture, and its readings as a table. A file that was there stays as it was until the
/// new one is whole.

#include "screen/fabric/ageing_curve.h"

#include <QCoreApplication>
#include <QImage>
#include <QUrl>

namespace crownring::screen {

class AgeingFiles {
    Q_DECLARE_TR_FUNCTIONS(AgeingFiles)
};

/// Where a file dialog's answer lies.
[[nodiscard]] QString pathOf(const QUrl& file);

/// In the folder for documents: the title, as far as every file system takes it, and the ending.
[[nodiscard]] QUrl proposedFile(const AgeingCurve& curve, const QString& ending);

/// Comma-separated, figures with a point in every language: day, hours, place, lot, kind, value, upper value, unit, the
/// reading in words, judgement, and whether it is of the same set of fabric as the curve.
[[nodiscard]] QByteArray tableText(const AgeingCurve& curve);

/// What stood in the way, in words; empty when the file is written.
[[nodiscard]] QString writeTable(const AgeingCurve& curve, const QUrl& file);
[[nodiscard]] QString writePicture(const QImage& picture, const QUrl& file);

}
