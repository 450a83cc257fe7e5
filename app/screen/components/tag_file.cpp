// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/components/tag_file.h"

#include "print/pdf.h"
#include "print/tag_sheet.h"
#include "screen/desk/house.h"
#include "words/border.h"
#include "words/words.h"

#include <QLocale>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QtConcurrent>

namespace crownring::screen {

using namespace words;

QUrl TagFile::proposed(const QStringList& items) const {
    static const QRegularExpression unfit(QStringLiteral("[/\\\\:*?\"<>|,\\s]+"));
    auto name = items.size() == 1 ? tr("tag %1").arg(items.front()) : tr("tags");
    return QUrl::fromLocalFile(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation) + u'/' +
                               name.replace(unfit, QStringLiteral("-")) + QStringLiteral(".pdf"));
}

void TagFile::write(const QStringList& items, const QUrl& file) {
    const auto sheet = house().fleet.sheet();
    if (!sheet)
        return;
    std::vector<ItemFacts> facts;
    for (const auto& item : items)
        if (const auto* known = sheet->item(ItemId(outward(item))))
            facts.push_back(*known);
    const auto path = file.isLocalFile() ? file.toLocalFile() : file.toString();
    const auto format =
        QLocale().measurementSystem() == QLocale::ImperialUSSystem ? print::PageFormat::Letter : print::PageFormat::A4;
    // Pages are set off the screen's thread.
    hear(QtConcurrent::run([document = print::tagSheet(facts, sheet->on()), format, path]() -> Result<void> {
             return print::writePdf(document, format, path.toStdString(), Replace::Asked);
         }),
         this, [this, path](const Result<void>& answer) {
             if (answer)
                 house().notice.tell(tr("Written: %1").arg(path));
             else
                 house().notice.tellTrouble(Words::problem(answer.error()));
         });
}

}
