// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A paper that the screen writes to a file.

#include "print/pdf.h"

#include <QCoreApplication>
#include <QUrl>

namespace crownring::screen {

struct House;

struct PaperFile {
    Q_DECLARE_TR_FUNCTIONS(PaperFile)

public:
    /// Where it is kept unless somebody says otherwise: in the folder of documents, by its title without what a file's
    /// name cannot hold.
    [[nodiscard]] static QUrl proposed(const QString& title);
    /// Sets its pages off the screen's thread, replaces a paper that is there, and tells of it.
    /// @param owner nobody is told once it is gone
    static void write(House& house, QObject* owner, paper::Document document, print::PageFormat format,
                      const QUrl& file);
};

}
