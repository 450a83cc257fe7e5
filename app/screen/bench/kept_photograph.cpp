// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/bench/kept_photograph.h"

#include "problem/faults/use_fault.h"

#include <QBuffer>
#include <QImage>
#include <QImageReader>
#include <QUrl>

namespace crownring::screen {

Result<Picture> photographFrom(const QUrl& file) {
    constexpr int longest = 2000;
    constexpr int quality = 85;
    const auto path = file.isLocalFile() ? file.toLocalFile() : file.toString();
    QImageReader reader(path);
    reader.setAutoTransform(true);
    auto image = reader.read();
    if (image.isNull())
        return problem(UseFault::NoPicture, {reader.errorString().toStdString()}, {path.toStdString(), 0, {}});
    if (std::max(image.width(), image.height()) > longest)
        image = image.scaled(longest, longest, Qt::KeepAspectRatio, Qt::SmoothTransformation);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    if (!image.save(&buffer, "JPEG", quality))
        return problem(UseFault::PictureNotKept, {}, {path.toStdString(), 0, {}});
    return Picture{"image/jpeg", bytes.toStdString()};
}

}
