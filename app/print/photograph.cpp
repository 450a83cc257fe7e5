// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/photograph.h"

#include "problem/faults/use_fault.h"

#include <QtCore/QBuffer>
#include <QtCore/QFile>
#include <QtCore/QFileInfo>
#include <QtGui/QImageReader>

#include <algorithm>

namespace crownring::print {

namespace {

constexpr int quality = 85;
constexpr int longestKept = 2000;

/// JPEG is made smaller while it is read; anything else is read whole first, for which Qt grants 128 MB.
qint64 mostPixels(const QByteArray& format) {
    constexpr qint64 ofJpeg = 120'000'000;
    constexpr qint64 ofOthers = 32'000'000;
    return format == "jpeg" ? ofJpeg : ofOthers;
}

}

QByteArray jpegOf(const QImage& image) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    return image.save(&buffer, "JPEG", quality) ? bytes : QByteArray();
}

Result<QImage> imageFrom(const std::string& file, int longest) {
    const Where where{file, 0, {}};
    const auto path = QString::fromStdString(file);
    if (const QFileInfo named(path); named.exists() && !named.isFile())
        return problem(UseFault::NotAFile, {}, where);
    if (!QFile(path).open(QIODevice::ReadOnly))
        return problem(UseFault::FileUnreadable, {}, where);
    QImageReader reader(path);
    reader.setAutoTransform(true);
    const auto size = reader.size();
    if (qint64(size.width()) * size.height() > mostPixels(reader.format()))
        return problem(UseFault::PictureTooLarge, {size.width(), size.height()}, where);
    if (std::max(size.width(), size.height()) > longest)
        reader.setScaledSize(size.scaled(longest, longest, Qt::KeepAspectRatio));
    const auto image = reader.read();
    if (image.isNull())
        return problem(UseFault::NoPicture, {reader.errorString().toStdString()}, where);
    return std::max(image.width(), image.height()) > longest // of formats that do not tell their size before
               ? image.scaled(longest, longest, Qt::KeepAspectRatio, Qt::SmoothTransformation)
               : image;
}

Result<Picture> photographFrom(const std::string& file) {
    const auto image = imageFrom(file, longestKept);
    if (!image)
        return tl::unexpected(image.error());
    const auto bytes = jpegOf(*image);
    if (bytes.isEmpty())
        return problem(UseFault::PictureNotKept, {}, {file, 0, {}});
    return Picture{"image/jpeg", bytes.toStdString()};
}

}
