// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/balloons/status_file.h"

#include "print/status/status_papers.h"
#include "screen/desk/house.h"
#include "screen/desk/papers/paper_file.h"
#include "words/border.h"
#include "words/words.h"

#include <QLocale>

namespace crownring::screen {

using namespace words;

QUrl StatusFile::proposed(Paper paper, const QString& balloon) const {
    return PaperFile::proposed((paper == Directives ? tr("directives %1 %2") : tr("events %1 %2"))
                                   .arg(balloon, inward(house().day.date().iso())));
}

void StatusFile::write(Paper paper, const QString& balloon, const QUrl& file) {
    constexpr int daysBack = 365;
    using Answer = Result<paper::Document>;
    hear(house().desk.ask(
             [paper, of = Registration(outward(balloon)), on = house().day.date()](Record& record) -> Answer {
                 return paper == Directives ? print::directiveStatusOf(record, of, on)
                                            : print::eventStatusOf(record, record, of, addDays(on, -daysBack), on);
             }),
         this, [this, file](const Answer& document) {
             if (!document)
                 return house().notice.tell(Words::problem(document.error()));
             const auto format = QLocale().measurementSystem() == QLocale::ImperialUSSystem ? print::PageFormat::Letter
                                                                                            : print::PageFormat::A4;
             PaperFile::write(house(), this, *document, format, file);
         });
}

}
