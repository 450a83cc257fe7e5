// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What others read from our PDF: the programs of poppler, which share nothing with the writer.

#include "paper/document.h"
#include "print/pdf.h"

#include <QProcess>
#include <QTemporaryDir>
#include <QtTest>

namespace crownring::print {

inline QByteArray outputOf(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForFinished(60'000) || process.exitStatus() != QProcess::NormalExit || process.exitCode() != 0)
        qFatal("%s: %s", qPrintable(program), process.readAllStandardError().constData());
    return process.readAllStandardOutput();
}

/// One document in a folder of its own, with its text page by page.
class Readback {
public:
    explicit Readback(const paper::Document& document, PageFormat format = PageFormat::A4)
        : file(m_folder.filePath(QStringLiteral("paper.pdf"))) {
        const Result<void> written = writePdf(document, format, file.toStdString(), Replace::Never);
        if (!written)
            qFatal("%s", text(written.error()).c_str());
        const QString all = QString::fromUtf8(outputOf("pdftotext", {"-layout", "-enc", "UTF-8", file, "-"}));
        pages = all.split(QChar(u'\f'), Qt::SkipEmptyParts);
    }

    /// Of the whole, with every run of blanks as one.
    [[nodiscard]] QString plain() const { return pages.join(QChar(u' ')).simplified(); }

    [[nodiscard]] int pageWith(const QString& words) const {
        for (int page = 0; page < pages.size(); ++page)
            if (pages[page].simplified().contains(words))
                return page;
        return -1;
    }

private:
    QTemporaryDir m_folder;

public:
    QString file;
    QStringList pages;
};

}
