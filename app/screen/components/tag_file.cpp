// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/components/tag_file.h"

#include "print/tags/tag_sheet.h"
#include "screen/desk/house.h"
#include "screen/desk/papers/paper_file.h"
#include "words/border.h"

#include <QLocale>

namespace crownring::screen {

using namespace words;

QUrl TagFile::proposed(const QStringList& items) const {
    return PaperFile::proposed(items.size() == 1 ? tr("tag %1").arg(items.front()) : tr("tags"));
}

void TagFile::write(const QStringList& items, const QUrl& file) {
    const auto sheet = house().fleet.sheet();
    if (!sheet)
        return;
    std::vector<ItemFacts> facts;
    for (const auto& item : items)
        if (const auto* known = sheet->item(ItemId(outward(item))))
            facts.push_back(*known);
    const auto format =
        QLocale().measurementSystem() == QLocale::ImperialUSSystem ? print::PageFormat::Letter : print::PageFormat::A4;
    PaperFile::write(house(), this, print::tagSheet(facts, sheet->on()), format, file);
}

}
