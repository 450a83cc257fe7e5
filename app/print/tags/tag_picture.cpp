// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/tags/tag_picture.h"

#include "print/photograph.h"
#include "print/tags/tag_sheet.h"
#include "problem/faults/components/part_fault.h"

#include <QtCore/QString>

#define ZX_USE_UTF8
#include <ReadBarcode.h>

#include <algorithm>
#include <set>
#include <vector>

namespace crownring::print {

namespace {

constexpr int longestRead = 2000; ///< pixels: a tag that fills a tenth of it is read

std::vector<std::string> codesOn(const QImage& grey, ZXing::Binarizer binarizer) {
    ZXing::DecodeHints hints;
    hints.setFormats(ZXing::BarcodeFormat::QRCode).setBinarizer(binarizer).setCharacterSet("UTF8");
    const ZXing::ImageView view(grey.constBits(), grey.width(), grey.height(), ZXing::ImageFormat::Lum,
                                static_cast<int>(grey.bytesPerLine()));
    std::vector<std::string> codes;
    for (const auto& found : ZXing::ReadBarcodes(view, hints))
        codes.push_back(found.text());
    return codes;
}

/// What was blurred, with its edges drawn out: twice the picture without what is left of it made small.
QImage sharpened(const QImage& grey) {
    constexpr int coarse = 6;
    const auto soft = grey.scaled(std::max(1, grey.width() / coarse), std::max(1, grey.height() / coarse),
                                  Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
                          .scaled(grey.size(), Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
                          .convertToFormat(QImage::Format_Grayscale8);
    QImage sharp = grey;
    for (int y = 0; y < sharp.height(); ++y) {
        auto* line = sharp.scanLine(y);
        const auto* under = soft.constScanLine(y);
        for (int x = 0; x < sharp.width(); ++x)
            line[x] = static_cast<uchar>(std::clamp(3 * line[x] - 2 * under[x], 0, 255));
    }
    return sharp;
}

/// Of the first way to look that finds any.
std::vector<std::string> codesOn(const QImage& grey) {
    for (const auto binarizer : {ZXing::Binarizer::LocalAverage, ZXing::Binarizer::GlobalHistogram})
        if (auto codes = codesOn(grey, binarizer); !codes.empty())
            return codes;
    return codesOn(sharpened(grey), ZXing::Binarizer::LocalAverage);
}

}

Result<ItemId> itemOnPicture(const QImage& picture) {
    auto grey = picture.convertToFormat(QImage::Format_Grayscale8);
    if (std::max(grey.width(), grey.height()) > longestRead)
        grey = grey.scaled(longestRead, longestRead, Qt::KeepAspectRatio, Qt::SmoothTransformation)
                   .convertToFormat(QImage::Format_Grayscale8);
    const auto codes = codesOn(grey);
    std::set<ItemId> items;
    for (const auto& code : codes)
        if (auto item = itemOfTag(code))
            items.insert(std::move(*item));
    if (items.size() == 1)
        return *items.begin();
    if (codes.empty())
        return problem(PartFault::TagNotFound);
    if (items.empty())
        return problem(PartFault::TagOfAnother, {codes.front()});
    return problem(PartFault::TagsOfSeveral, {listed(items, Listed::Joined::And)});
}

Result<ItemId> itemOnPicture(const std::string& file) {
    const auto picture = imageFrom(file, longestRead);
    if (!picture)
        return tl::unexpected(picture.error());
    return itemOnPicture(*picture).map_error([&](Problem found) {
        found.where = {file, 0, {}};
        return found;
    });
}

}
