// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/frame/search.h"

#include "answers/bench_file.h"
#include "print/tags/tag_picture.h"
#include "problem/faults/components/part_fault.h"
#include "screen/desk/house.h"
#include "words/bench_words.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/sentences.h"
#include "words/words.h"

#include <QStringList>

#include <algorithm>
#include <set>

namespace crownring::screen {

using namespace words;

namespace {

constexpr std::size_t ofEach = 8;
constexpr int ofJournal = 12;

bool says(const QString& text, const QStringList& words) {
    return std::all_of(words.begin(), words.end(),
                       [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
}

/// By the number that stands on its papers. One that is called just so stands first of all.
void addInspections(const std::vector<InspectionCard>& cards, const QStringList& words, std::vector<Choice>& found) {
    std::size_t inspections = 0;
    for (const auto& card : cards) {
        const auto name = inward(card.inspection.text());
        if (inspections >= ofEach || !says(name, words))
            continue;
        ++inspections;
        Choice choice{
            name,
            joined({name, BenchWords::subject(card.balloon, card.items)}, QStringLiteral(", ")),
            Search::tr("inspection · %1 · opened %2").arg(BenchWords::visit(card.visit), inward(card.opened.iso())),
            -1,
            -1,
            false,
            QVariant::fromValue(Search::What::Inspection)};
        const bool exact = name.compare(words.join(u' '), Qt::CaseInsensitive) == 0;
        found.insert(exact ? found.begin() : found.end(), std::move(choice));
    }
}

}

void Search::setWords(const QString& words) {
    if (words == m_words)
        return;
    m_words = words;
    look();
}

std::vector<Choice> Search::inTheFleet() const {
    const auto sheet = house().fleet.sheet();
    if (!sheet)
        return {};
    const auto words = m_words.split(u' ', Qt::SkipEmptyParts);
    std::vector<Choice> found;
    for (const auto& card : sheet->balloons()) {
        const auto name = inward(card.balloon.text());
        if (found.size() < ofEach && says(name + u' ' + inward(card.title), words))
            found.push_back({name, name, tr("balloon · %1").arg(inward(card.title)), -1, -1, false,
                             QVariant::fromValue(What::Balloon)});
    }
    std::size_t items = 0;
    for (const auto& item : sheet->items()) {
        const auto name = inward(item.id.text());
        const auto serial = inward(item.serial.value_or(""));
        if (items < ofEach && says(name + u' ' + serial + u' ' + inward(item.type.value_or("")), words)) {
            ++items;
            found.push_back({name, name,
                             tr("%1 · serial %2 · %3")
                                 .arg(Words::kind(item.kind), serial,
                                      item.balloon ? inward(item.balloon->text()) : tr("in the pool")),
                             -1, -1, false, QVariant::fromValue(What::Item)});
        }
    }
    std::set<RequirementId> seen;
    for (const auto& row : sheet->rows()) {
        const auto& requirement = *row.requirement;
        if (seen.size() < ofEach && !seen.contains(requirement.id) &&
            says(inward(requirement.id.text()) + u' ' + words::said(requirement.title) + u' ' +
                     words::said(requirement.source),
                 words)) {
            seen.insert(requirement.id);
            found.push_back({inward(requirement.id.text()), words::said(requirement.title),
                             tr("requirement · %1").arg(words::said(requirement.source)), -1, -1, false,
                             QVariant::fromValue(What::Requirement)});
        }
    }
    return found;
}

void Search::look() {
    const auto turn = ++m_turn;
    m_nothing = false;
    if (m_words.trimmed().isEmpty()) {
        m_found.show({});
        emit changed();
        return;
    }
    auto found = inTheFleet();
    m_found.show(found);
    emit changed();
    const JournalQuery query{.text = outward(m_words), .kind = {}, .before = {}, .limit = ofJournal};
    struct Answer {
        Result<std::vector<JournalLine>> lines;
        Result<std::vector<InspectionCard>> inspections;
    };
    hear(house().desk.ask([query, on = house().day.date()](Record& record) -> Answer {
        return {record.lines(query), inspectionsOn(record, on)};
    }),
         this, [this, turn, found](const Answer& answer) {
             if (turn != m_turn)
                 return;
             auto all = found;
             if (answer.inspections)
                 addInspections(*answer.inspections, m_words.split(u' ', Qt::SkipEmptyParts), all);
             if (answer.lines)
                 for (const auto& line : *answer.lines) {
                     const auto& entry = nowOf(line);
                     all.push_back({inward(entry.id.text()), Sentences::of(line, *house().fleet.titles()),
                                    tr("journal · %1 · %2").arg(inward(entry.on.iso()), inward(entry.by)), -1, -1,
                                    false, QVariant::fromValue(What::Entry)});
                 }
             m_nothing = all.empty();
             m_found.show(std::move(all));
             emit changed();
         });
}

void Search::choose(int row) {
    if (row < 0 || row >= m_found.count())
        return;
    const auto found = m_found.choices()[static_cast<std::size_t>(row)]; // who hears of it may search anew
    switch (found.of.value<What>()) {
    case What::Balloon:
        return emit balloonChosen(found.value);
    case What::Item:
        return emit itemChosen(found.value);
    case What::Requirement:
        return emit requirementChosen(found.value);
    case What::Entry:
        return emit entryChosen(found.value);
    case What::Inspection:
        return emit inspectionChosen(found.value);
    }
}

void Search::readTag(const QUrl& picture) {
    m_readingTag = true;
    m_tagProblem.clear();
    emit changed();
    const auto file = outward(picture.isLocalFile() ? picture.toLocalFile() : picture.toString());
    // On the record's thread, where nobody waits for the next frame.
    hear(house().desk.ask([file](Record&) { return print::itemOnPicture(file); }), this,
         [this](const Result<ItemId>& read) {
             m_readingTag = false;
             const auto sheet = house().fleet.sheet();
             const auto* item = read && sheet ? sheet->item(*read) : nullptr;
             if (item)
                 emit itemChosen(inward(item->id.text()));
             else
                 m_tagProblem = Words::problem(read ? Problem{PartFault::TagOfUnknown, {*read}} : read.error());
             emit changed();
         });
}

void Search::forgetTag() {
    m_tagProblem.clear();
    emit changed();
}

}
