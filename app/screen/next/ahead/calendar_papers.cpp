// SPDX-License-Identifier: GPL-3.0-or-later

/// What the calendar writes to files: the months' sheet, their table, the letter to a station.

#include "answers/forecast/station_letter.h"
#include "paper/csv.h"
#include "paper/document_text.h"
#include "print/ahead/ahead_papers.h"
#include "rules/due/reckoned.h"
#include "screen/desk/papers/paper_file.h"
#include "screen/next/ahead/calendar_desk.h"
#include "words/border.h"
#include "words/spoken.h"
#include "words/words.h"
#include "writing/write_out.h"

#include <QLocale>

namespace crownring::screen {

using namespace words;

namespace {

print::PageFormat formatHere() {
    return QLocale().measurementSystem() == QLocale::ImperialUSSystem ? print::PageFormat::Letter
                                                                      : print::PageFormat::A4;
}

std::string fileAt(const QUrl& file) { return outward(file.isLocalFile() ? file.toLocalFile() : file.toString()); }

std::string with(std::string path, std::string_view ending) {
    const auto dot = path.rfind('.');
    const auto slash = path.find_last_of("/\\");
    if (dot != std::string::npos && (slash == std::string::npos || slash < dot))
        path.resize(dot);
    return path + std::string(ending);
}

}

QUrl CalendarDesk::proposedFile() const {
    return PaperFile::proposed(m_balloon.isEmpty()
                                   ? tr("calendar %1").arg(inward(m_span.first.iso().substr(0, 7)))
                                   : tr("calendar %1 %2").arg(m_balloon, inward(m_span.first.iso().substr(0, 7))));
}

void CalendarDesk::save(const QUrl& file) {
    if (!m_sheet)
        return;
    print::MonthsAhead ahead;
    ahead.on = m_sheet->on;
    ahead.first = m_span.first;
    ahead.months = m_span.months;
    if (!m_balloon.isEmpty())
        ahead.balloon = Registration(outward(m_balloon));
    for (std::size_t i = 0; i < m_sheet->due.rows.size(); ++i) {
        const auto reckoned = reckonedAs(m_sheet->due.rows[i].state);
        if (reckoned != Reckoned::Closed && reckoned != Reckoned::NotRequired)
            ahead.dues.push_back({&m_sheet->due.rows[i], m_sheet->bands[i]});
    }
    ahead.visits = m_sheet->planned.visits;
    ahead.flights = m_sheet->planned.flights;
    if (!file.path().endsWith(QStringLiteral(".csv")))
        return PaperFile::write(house(), this, print::monthSheet(ahead), formatHere(), file);
    if (const auto written = writeOut(fileAt(file), paper::csv(print::aheadTable(ahead)), Replace::Asked); !written)
        house().notice.tellTrouble(Words::problem(written.error()));
    else
        house().notice.tell(tr("Written: %1").arg(file.toLocalFile()));
}

QUrl CalendarDesk::proposedLetter(const QString& entry) const {
    const auto* planned = visit(entry);
    return PaperFile::proposed(
        planned ? tr("letter %1 %2").arg(inward(planned->visit.balloon.text()), inward(planned->visit.from.iso()))
                : tr("letter"));
}

void CalendarDesk::writeLetter(const QString& entry, const QUrl& file) {
    if (!m_sheet)
        return;
    const EntryId visit(outward(entry));
    const auto on = m_sheet->on;
    hear(house().desk.ask([visit, on, today = house().day.todayDate()](Record& record) {
        return letterOf(record, visit, on, std::min(on, today));
    }),
         this, [this, file](const Result<StationLetter>& letter) {
             if (!letter)
                 return house().notice.tellTrouble(Words::problem(letter.error()));
             const auto document = print::letter(*letter);
             const Spoken language;
             const auto path = fileAt(file);
             for (const auto& [ending, text] :
                  {std::pair(".json", letterText(*letter)), std::pair(".txt", paper::toText(document, language))})
                 if (const auto written = writeOut(with(path, ending), text, Replace::Asked); !written)
                     return house().notice.tellTrouble(Words::problem(written.error()));
             PaperFile::write(house(), this, document, formatHere(), QUrl::fromLocalFile(inward(with(path, ".pdf"))));
         });
}

}
