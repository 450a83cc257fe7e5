// SPDX-License-Identifier: GPL-3.0-or-later

/// What leads away from the release: to what a reason is about, and to the papers.

#include "bench/release/release_phrase.h"
#include "screen/bench/release_desk.h"
#include "screen/desk/house.h"
#include "screen/desk/papers/paper_file.h"
#include "sheets/sheet_parts.h"
#include "sheets/sheets.h"
#include "words/bench_words.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/spoken.h"

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

const words::Spoken language;

}

QString ReleaseDesk::provenBy() const {
    const auto* closed =
        m_desk && m_desk->file() && m_desk->file()->inspection.closed ? &*m_desk->file()->inspection.closed : nullptr;
    return closed && closed->body.signatory ? inward(provenText(closed->body.proof, language)) : QString();
}

const Refusal* ReleaseDesk::refusalAt(int row) const {
    return row < 0 || row >= static_cast<int>(m_drafted.size()) ? nullptr : &m_drafted[static_cast<std::size_t>(row)];
}

QString ReleaseDesk::itemOfRefusal(int row) const {
    const auto* refusal = refusalAt(row);
    return refusal && refusal->item ? inward(refusal->item->text()) : QString();
}

QString ReleaseDesk::entryOfRefusal(int row) const {
    const auto* refusal = refusalAt(row);
    return refusal && refusal->entry ? inward(refusal->entry->text()) : QString();
}

QString ReleaseDesk::wayOfRefusal(int row) const {
    const auto* refusal = refusalAt(row);
    if (!refusal)
        return {};
    if (refusal->kind == Refusal::Kind::Defect)
        return QStringLiteral("defects");
    if (refusal->fault == ReleaseFault::WorkNotDescribed || refusal->fault == ReleaseFault::WorkNotDescribedOn)
        return QStringLiteral("describe");
    if (refusal->entry) {
        const auto& readings =
            m_desk && m_desk->file() ? m_desk->file()->inspection.readings : std::vector<Said<ReadingTaken>>{};
        const bool isRead = std::ranges::find(readings, *refusal->entry, &Said<ReadingTaken>::id) != readings.end();
        if (!isRead)
            return refusal->fault == ReleaseFault::GradeNotSaid ? QStringLiteral("grade") : QStringLiteral("work");
        return refusal->kind == Refusal::Kind::Tester ? QStringLiteral("equipment") : QStringLiteral("reading");
    }
    return refusal->line.empty() ? QString() : QStringLiteral("line");
}

QUrl ReleaseDesk::proposedPaper() const {
    if (!m_desk || !m_desk->file())
        return {};
    const auto& file = *m_desk->file();
    const auto& opened = file.inspection.opened.body;
    const auto on = file.inspection.closed ? file.inspection.closed->stamp.at.on() : file.on;
    const auto name = QStringList{BenchWords::subject(opened.balloon, opened.items), words::said(titleOfVisit(file)),
                                  inward(on.iso()), file.inspection.closed ? QString() : tr("draft")}
                          .join(u' ')
                          .trimmed();
    return PaperFile::proposed(name);
}

void ReleaseDesk::print(const QUrl& file, bool letter) {
    if (!m_desk || !m_desk->file())
        return;
    std::vector<paper::Document> documents;
    for (const auto kind : sheetsOf(*m_desk->file()))
        documents.push_back(sheet(kind, *m_desk->file(), language));
    const auto format = letter ? print::PageFormat::Letter : print::PageFormat::A4;
    PaperFile::write(house(), this, bound(documents, language), format, file);
}

}
