// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/desk/kept_photograph.h"

#include "print/photograph.h"
#include "words/border.h"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QImage>
#include <QStandardPaths>
#include <QUrl>

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

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
    return print::photographFrom(outward(file.isLocalFile() ? file.toLocalFile() : file.toString()));
}

QString smallPhotograph(const Picture& picture) {
    constexpr int side = 288;
    const auto image = QImage::fromData(QByteArray::fromStdString(picture.bytes));
    if (image.isNull())
        return {};
    const auto small = print::jpegOf(image.scaled(side, side, Qt::KeepAspectRatio, Qt::SmoothTransformation));
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
