// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/pdf.h"

#include "print/composition.h"
#include "print/page_frame.h"
#include "print/pagination.h"
#include "print/typeface.h"
#include "problem/faults/writing_fault.h"
#include "writing/write_out.h"

#include <QtCore/QBuffer>
#include <QtGui/QPainter>
#include <QtGui/QPdfWriter>

namespace crownring::print {

namespace {

/// A document on its pages, ready to be drawn.
class Sheets {
public:
    Sheets(const paper::Document& document, PageFormat format)
        : m_frame(document, typeArea(format)), m_pages(setOnPages(document, m_frame.body().size())) {}

    [[nodiscard]] int count() const { return static_cast<int>(m_pages.size()); }

    /// @param page from 1; the painter's unit is a dot of the sheet
    void draw(QPainter& painter, int page) const {
        m_frame.draw(painter, page, count());
        for (const Placed& placed : m_pages[static_cast<std::size_t>(page - 1)]) {
            painter.save();
            painter.translate(m_frame.body().topLeft() + QPointF(0, placed.top));
            painter.scale(placed.scale, placed.scale);
            placed.piece->draw(painter, {});
            painter.restore();
        }
    }

private:
    PageFrame m_frame;
    std::vector<Page> m_pages;
};

}

Result<void> writePdf(const paper::Document& document, PageFormat format, const std::string& file, Replace replace) {
    if (auto why = whyNotWritten(file, replace))
        return tl::unexpected(std::move(*why));
    const Sheets sheets(document, format);
    QBuffer bytes;
    bytes.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&bytes);
        writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
        writer.setResolution(dotsPerInch);
        writer.setPageSize(QPageSize(format == PageFormat::A4 ? QPageSize::A4 : QPageSize::Letter));
        writer.setPageMargins(QMarginsF());
        writer.setTitle(QString::fromStdString(document.title + ", " + document.recordId));
        writer.setCreator(QStringLiteral("Crownring"));
        QPainter painter(&writer);
        if (!painter.isActive())
            return problem(WritingFault::NotWritten, {std::string("QPdfWriter::begin")}, {file, 0, {}});
        for (int page = 1; page <= sheets.count(); ++page) {
            if (page > 1)
                writer.newPage();
            sheets.draw(painter, page);
        }
    }
    const auto& written = bytes.data();
    return writeOut(file, {written.constData(), static_cast<std::size_t>(written.size())}, replace);
}

std::vector<QImage> renderPages(const paper::Document& document, PageFormat format, double resolution) {
    const Sheets sheets(document, format);
    const QSizeF size = sheetMillimetres(format) * resolution / 25.4;
    std::vector<QImage> pages;
    for (int page = 1; page <= sheets.count(); ++page) {
        QImage picture(size.toSize(), QImage::Format_RGB32);
        picture.fill(Qt::white);
        QPainter painter(&picture);
        painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
        painter.scale(resolution / dotsPerInch, resolution / dotsPerInch);
        sheets.draw(painter, page);
        pages.push_back(picture);
    }
    return pages;
}

}
