// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/desk/kept_photograph.h"

#include "problem/faults/use_fault.h"
#include "words/border.h"

#include <QBuffer>
#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QImage>
#include <QImageReader>
#include <QStandardPaths>
#include <QUrl>

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

constexpr int quality = 85;

QByteArray jpegOf(const QImage& image) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    return image.save(&buffer, "JPEG", quality) ? bytes : QByteArray();
}

/// JPEG is made smaller while it is read; anything else is read whole first, for which Qt grants 128 MB.
qint64 mostPixels(const QByteArray& format) {
    constexpr qint64 ofJpeg = 120'000'000;
    constexpr qint64 ofOthers = 32'000'000;
    return format == "jpeg" ? ofJpeg : ofOthers;
}

void addPicturesOf(const QDir& folder, QFileInfoList& pictures) {
    pictures += folder.entryInfoList({QStringLiteral("*.jpg"), QStringLiteral("*.jpeg"), QStringLiteral("*.png")},
                                     QDir::Files | QDir::Readable);
}

/// It has its end: what a camera is still writing has none. A format that ends otherwise is whole once nobody has
/// written to it for a while.
bool isWhole(const QFileInfo& picture) {
    constexpr int quietFor = 10; // seconds
    constexpr qint64 tail = 64;
    QFile file(picture.filePath());
    if (!file.open(QIODevice::ReadOnly))
        return false;
    file.seek(std::max<qint64>(0, file.size() - tail));
    const auto end = file.read(tail);
    return end.contains(QByteArrayLiteral("\xff\xd9")) || end.contains("IEND") ||
           picture.lastModified().secsTo(QDateTime::currentDateTimeUtc()) > quietFor;
}

}

Result<Picture> photographFrom(const QUrl& file) {
    constexpr int longest = 2000;
    const auto path = file.isLocalFile() ? file.toLocalFile() : file.toString();
    const Where where{outward(path), 0, {}};
    if (!QFile(path).open(QIODevice::ReadOnly))
        return problem(UseFault::FileUnreadable, {}, where);
    QImageReader reader(path);
    reader.setAutoTransform(true);
    const auto size = reader.size();
    if (qint64(size.width()) * size.height() > mostPixels(reader.format()))
        return problem(UseFault::PictureTooLarge, {size.width(), size.height()}, where);
    if (std::max(size.width(), size.height()) > longest)
        reader.setScaledSize(size.scaled(longest, longest, Qt::KeepAspectRatio));
    auto image = reader.read();
    if (image.isNull())
        return problem(UseFault::NoPicture, {outward(reader.errorString())}, where);
    if (std::max(image.width(), image.height()) > longest) // of formats that do not tell their size before
        image = image.scaled(longest, longest, Qt::KeepAspectRatio, Qt::SmoothTransformation);
    const auto bytes = jpegOf(image);
    if (bytes.isEmpty())
        return problem(UseFault::PictureNotKept, {}, where);
    return Picture{"image/jpeg", bytes.toStdString()};
}

QString smallPhotograph(const Picture& picture) {
    constexpr int side = 288;
    const auto image = QImage::fromData(QByteArray::fromStdString(picture.bytes));
    if (image.isNull())
        return {};
    const auto small = jpegOf(image.scaled(side, side, Qt::KeepAspectRatio, Qt::SmoothTransformation));
    return QStringLiteral("data:image/jpeg;base64,") + QString::fromLatin1(small.toBase64());
}

QStringList latestPictures(CivilDate day, const QString& of, int most) {
    QFileInfoList pictures;
    for (const auto& path :
         of.isEmpty() ? QStandardPaths::standardLocations(QStandardPaths::PicturesLocation) : QStringList{of}) {
        const QDir folder(path);
        addPicturesOf(folder, pictures);
        for (const auto& within : folder.entryInfoList(QDir::Dirs | QDir::NoDotAndDotDot))
            addPicturesOf(QDir(within.filePath()), pictures);
    }
    const auto first = inward(addDays(day, -1).iso());
    pictures.removeIf([&](const QFileInfo& each) { return each.lastModified().toString(Qt::ISODate) < first; });
    std::ranges::sort(pictures, std::ranges::greater(), [](const QFileInfo& each) { return each.lastModified(); });
    QStringList urls;
    for (const auto& each : pictures) {
        const auto url = QUrl::fromLocalFile(each.filePath()).toString(QUrl::FullyEncoded);
        if (urls.size() < most && !urls.contains(url) && isWhole(each))
            urls += url;
    }
    return urls;
}

}
