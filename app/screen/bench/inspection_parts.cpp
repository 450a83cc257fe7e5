// SPDX-License-Identifier: GPL-3.0-or-later
/// The parts of the work, what of each is left, and the way from one to the next.

#include "screen/bench/bench_rows.h"
#include "screen/bench/inspection_desk.h"
#include "words/border.h"

#include <algorithm>
#include <map>

namespace crownring::screen {

using namespace words;

int InspectionDesk::partAt() const {
    const auto& parts = m_parts.choices();
    const auto at = std::ranges::find(parts, true, &Choice::chosen);
    return at == parts.end() ? -1 : static_cast<int>(at - parts.begin());
}

void InspectionDesk::setPartAt(int at) {
    if (at >= 0 && at < m_parts.count())
        goTo(m_parts.choices()[static_cast<std::size_t>(at)].of.value<WorkPart>());
}

void InspectionDesk::goTo(const WorkPart& part) {
    if (m_part == part)
        return;
    m_part = part;
    if (m_file) {
        showParts();
        showLines();
    }
    emit changed();
}

QString InspectionDesk::partDetail() const {
    const auto at = partAt();
    return at < 0 ? QString() : m_parts.choices()[static_cast<std::size_t>(at)].detail;
}

QString InspectionDesk::partTitle() const {
    const auto at = partAt();
    return at < 0 ? QString() : m_parts.choices()[static_cast<std::size_t>(at)].label;
}

int InspectionDesk::restOpen() const {
    return !isOpen() || !m_part
               ? 0
               : static_cast<int>(std::ranges::count_if(gridOf(*m_file, *m_part), [&](const auto& work) {
                     return isOnlyALook(*m_file, work) && !isFoundOn(work);
                 }));
}

int InspectionDesk::partOpen() const {
    const auto at = partAt();
    return at < 0 ? 0 : m_parts.choices()[static_cast<std::size_t>(at)].number;
}

QString InspectionDesk::restLeft() const {
    if (!isOpen() || !m_part)
        return {};
    std::map<Apart, int> left;
    int found = 0;
    for (const auto& work : gridOf(*m_file, *m_part)) {
        if (work.state() != LineState::Open)
            continue;
        const auto apart = apartOf(*m_file, work);
        found += apart == Apart::No && isFoundOn(work) ? 1 : 0;
        left[apart] += 1;
    }
    QStringList texts;
    for (const auto& [apart, lines] : left)
        if (apart != Apart::No)
            texts += apartCount(apart, lines);
    if (found > 0)
        texts += tr("%n have a finding", nullptr, found);
    return joined(texts, QStringLiteral(" · "));
}

QString InspectionDesk::untouched() const {
    if (!isOpen() || !isMaintenance(m_file->visit()))
        return {};
    QStringList items;
    for (const auto& item : m_file->items)
        if (!m_file->inspection.concerns(item.id))
            items += inward(item.id.text());
    return items.isEmpty() ? QString()
                           : tr("No work is written down, and so nothing asked, of: %1. Lines come with the work.")
                                 .arg(items.join(QStringLiteral(", ")));
}

QString InspectionDesk::defectsSaid() const {
    if (!m_file)
        return {};
    if (const auto listed = listedOf(*m_file); !listed.empty()) {
        const auto standing = std::ranges::count(listed, true, &ListedItem::stands);
        const auto list =
            tr("It was closed with a list of discrepancies: %1 of %2 still stand.").arg(standing).arg(listed.size());
        return m_file->inspection.isPending()
                   ? tr("%1 The list grounds the balloon until the return to service is approved.").arg(list)
                   : list;
    }
    const auto& cleared = m_file->inspection.cleared;
    if (m_barring == 0 && isOpen() && !cleared.empty())
        return tr("Rectified in this visit: %1. That counts once a release of it stands; until then each defect "
                  "stands as before.")
            .arg(cleared.size());
    if (m_defects.count() == 0)
        return tr("No defect is open on the items of this visit.");
    if (m_barring == 0)
        return tr("None of the open defects grounds the balloon.");
    return isOpen() ? tr("%n defects ground the balloon and stand in the way of the release.", nullptr, m_barring)
                    : tr("%n defects ground the balloon.", nullptr, m_barring);
}

void InspectionDesk::showParts() {
    std::vector<Choice> parts;
    std::vector<int> all;
    std::vector<QStringList> on;
    m_linesOpen = m_linesAll = 0;
    for (const auto& work : workLines(m_file->inspection, m_file->items)) {
        const auto here = QVariant::fromValue(partOf(work));
        auto part = std::ranges::find(parts, here, &Choice::of);
        if (part == parts.end()) {
            parts.push_back({{}, sectionTitle(m_file->inspection, work), {}, 0, -1, false, here});
            all.push_back(0);
            on.emplace_back();
            part = parts.end() - 1;
        }
        const auto at = static_cast<std::size_t>(part - parts.begin());
        ++all[at];
        if (const auto item = work.item ? inward(work.item->id.text()) : QString();
            !item.isEmpty() && !on[at].contains(item))
            on[at] += item;
        part->number += work.state() == LineState::Open ? 1 : 0;
        m_linesAll += !work.line || work.line->required ? 1 : 0;
        m_linesOpen += work.isMissing() ? 1 : 0;
    }
    if (!m_part && !parts.empty()) {
        const auto first = std::ranges::find_if(parts, [](const Choice& part) { return part.number > 0; });
        m_part = (first == parts.end() ? parts.front() : *first).of.value<WorkPart>();
    }
    for (std::size_t i = 0; i < parts.size(); ++i) {
        parts[i].chosen = parts[i].of.value<WorkPart>() == m_part;
        const auto items =
            on[i].size() > 1 ? tr("%n items", nullptr, static_cast<int>(on[i].size())) : on[i].join(QString());
        parts[i].detail =
            joined({items, tr("%1 of %2").arg(all[i] - parts[i].number).arg(all[i])}, QStringLiteral(" · "));
    }
    m_parts.show(std::move(parts));
}

void InspectionDesk::showLines() {
    std::vector<CheckRow> rows;
    if (m_part)
        for (const auto& work : gridOf(*m_file, *m_part)) {
            rows.push_back(rowOf(*m_file, work));
            rows.back().at = static_cast<int>(rows.size()) - 1;
        }
    m_grid.show(rows);
    m_lines.show(std::move(rows));
}

bool InspectionDesk::nextPart() {
    if (!m_file)
        return false;
    // What is open in a part behind this one is shown once, what is missing anywhere until it is settled.
    const auto here = partAt();
    int next = -1;
    for (const auto& work : workLines(m_file->inspection, m_file->items)) {
        if (work.state() != LineState::Open || awaitsReadings(*m_file, work))
            continue;
        const auto& parts = m_parts.choices();
        const auto at =
            static_cast<int>(std::ranges::find(parts, QVariant::fromValue(partOf(work)), &Choice::of) - parts.begin());
        if (at == here || (at < here && !work.isMissing()))
            continue;
        const auto round = [&](int part) { return part > here ? part : part + m_parts.count(); };
        if (next < 0 || round(at) < round(next))
            next = at;
    }
    setPartAt(next);
    return next >= 0;
}

QStringList InspectionDesk::awaited() const {
    if (!isOpen() || !m_part)
        return {};
    for (const auto& work : gridOf(*m_file, *m_part))
        if (work.line && work.item && work.state() == LineState::Open &&
            std::ranges::any_of(work.line->readings, [&](const AskedReading& asked) {
                return !readingCount(*m_file, *work.item, asked).enough();
            }))
            return {inward(work.item->id.text()), inward(work.line->id)};
    return {};
}

int InspectionDesk::nextLook() const {
    if (!isOpen() || !m_part)
        return -1;
    int at = 0;
    for (const auto& work : gridOf(*m_file, *m_part)) {
        const bool said = std::ranges::any_of(m_handed, [&](const LineSettled& each) {
            return each.line == (work.line ? work.line->id : std::string()) && work.item &&
                   each.item == work.item->id && each.state != LineState::Open;
        });
        if (work.state() == LineState::Open && apartOf(*m_file, work) == Apart::OwnLook && !said)
            return at;
        ++at;
    }
    return -1;
}

int InspectionDesk::showLine(const QString& line, const QString& item) {
    if (!m_file)
        return -1;
    for (const auto& work : workLines(m_file->inspection, m_file->items)) {
        const auto row = rowOf(*m_file, work);
        if (row.line != line || (!item.isEmpty() && row.item != item))
            continue;
        goTo(partOf(work));
        const auto& rows = m_lines.rows();
        const auto at = std::ranges::find_if(rows, [&](const CheckRow& each) { return each.sameAs(row); });
        return at == rows.end() ? -1 : static_cast<int>(at - rows.begin());
    }
    return -1;
}

}
