// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/due_detail.h"

#include "answers/defects/told.h"
#include "rules/due/defects.h"
#include "rules/due/directive_rows.h"
#include "rules/due/fabric_rows.h"
#include "rules/due/incomplete.h"
#include "rules/due/lists.h"
#include "screen/desk/due_model.h"
#include "screen/desk/house.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

Choice limitLine(const DueRow& row, const LimitState& limit) {
    Choice line;
    line.value = QString::number(static_cast<int>(limit.clock));
    line.label = &limit == governingLimit(row.state) ? DueDetail::tr("%1 · governs").arg(Words::clock(limit.clock))
                                                     : Words::clock(limit.clock);
    const auto* onDay = limit.calendar();
    const auto* byUse = limit.usage();
    const bool isSomeLeft = onDay ? onDay->left > Days(0) : byUse && byUse->left > ClockCount(0);
    if (!limit.isProven())
        line.detail = DueDetail::tr("nothing to count from");
    else
        line.detail =
            (isSomeLeft ? DueDetail::tr("last %1 · due %2 · left %3") : DueDetail::tr("last %1 · due %2 · %3"))
                .arg(Words::last(limit), Words::due(limit), Words::left(limit));
    if (limit.standing == Standing::Tolerance)
        line.detail = DueDetail::tr("%1 · tolerance left %2").arg(line.detail, Words::toleranceLeft(limit));
    line.standing = static_cast<int>(limit.standing);
    return line;
}

}

void DueDetail::movedIn() { connect(&house().fleet, &Fleet::listed, this, &DueDetail::look); }

void DueDetail::setItem(const QString& item) { show(item, m_requirement); }
void DueDetail::setRequirement(const QString& requirement) { show(m_item, requirement); }

void DueDetail::show(const QString& item, const QString& requirement) {
    if (item == m_item && requirement == m_requirement)
        return;
    m_item = item;
    m_requirement = requirement;
    emit subjectChanged();
    look();
}

void DueDetail::look() {
    m_row = nullptr;
    m_sheet = house().fleet.list();
    std::vector<Choice> limits;
    if (m_sheet) {
        for (const auto* row : m_sheet->rowsOf(ItemId(outward(m_item))))
            if (row->requirement->id.text() == outward(m_requirement))
                m_row = row;
    }
    if (m_row != nullptr)
        for (const auto& limit : m_row->state.limits) {
            limits.push_back(limitLine(*m_row, limit));
            limits.back().of = static_cast<int>(limits.size()); // a row may have two limits of one clock
        }
    m_limits.show(std::move(limits));
    emit changed();
    askPhotographs();
}

void DueDetail::askPhotographs() {
    ++m_turn;
    const auto defect = isDefect() ? defectOf(m_row->requirement->id) : std::nullopt;
    if (!defect)
        return showPhotographs({});
    for (const auto& open : openDefects(*m_row->item))
        if (open.found->defect == *defect)
            hear(house().desk.ask([found = *open.found](Record& record) { return photographsOf(record, found); }), this,
                 [this, turn = m_turn](const Result<std::vector<std::string>>& digests) {
                     if (turn == m_turn)
                         showPhotographs(digests ? *digests : std::vector<std::string>());
                 });
}

void DueDetail::showPhotographs(const std::vector<std::string>& digests) {
    QStringList photographs;
    for (const auto& digest : digests)
        photographs += inward(digest);
    if (photographs == m_photographs)
        return;
    m_photographs = photographs;
    emit photographsChanged();
}

bool DueDetail::isDefect() const { return m_row && m_row->programme == &defectProgramme(); }
bool DueDetail::isDeferrable() const {
    const auto defect = isDefect() ? defectOf(m_row->requirement->id) : std::nullopt;
    return defect && std::ranges::any_of(openDefects(*m_row->item), [&](const OpenDefect& open) {
               return open.found->defect == *defect && !isGrounding(*open.found);
           });
}
bool DueDetail::isList() const {
    return m_row && (m_row->programme == &listProgramme() || m_row->programme == &incompleteProgramme());
}
bool DueDetail::isFabric() const { return m_row && m_row->programme == &fabricProgramme(); }
bool DueDetail::isDirective() const { return m_row && m_row->programme == &directiveProgramme(); }
QString DueDetail::directiveNumber() const {
    const auto directive = isDirective() ? directiveOf(m_row->requirement->id) : std::nullopt;
    return directive ? inward(directive->text()) : QString();
}
QString DueDetail::title() const { return m_row ? words::said(m_row->requirement->title) : QString(); }
QString DueDetail::where() const { return m_row ? DueTexts::where(*m_row) : QString(); }
QString DueDetail::source() const { return m_row ? words::said(m_row->requirement->source) : QString(); }
QString DueDetail::rule() const {
    if (m_row == nullptr)
        return {};
    if (m_row->programme == &incompleteProgramme())
        return tr("from when it is released until the closing release");
    return isDefect()      ? tr("from when it is found until it is rectified")
           : isList()      ? tr("from when it is signed until the return to service is approved")
           : isDirective() ? tr("as the directive states it; no tolerance of inspections applies")
           : isFabric()    ? tr("the latest readings at each place, against the bound of its type's manual")
                           : Words::limits(*m_row->requirement);
}
QString DueDetail::note() const { return m_row ? words::said(m_row->requirement->note) : QString(); }
QString DueDetail::because() const { return m_row ? Words::because(*m_row) : QString(); }
QString DueDetail::remark() const { return m_row ? DueTexts::remark(*m_row) : QString(); }
int DueDetail::standing() const { return m_row ? static_cast<int>(reckonedAs(m_row->state)) : -1; }
QString DueDetail::standingWord() const { return m_row ? Words::standing(m_row->state) : QString(); }
double DueDetail::used() const { return m_row ? DueTexts::used(*m_row) : -1; }
QString DueDetail::left() const { return m_row ? DueTexts::left(*m_row) : QString(); }
QString DueDetail::due() const { return m_row ? DueTexts::due(*m_row) : QString(); }

QString DueDetail::balloon() const {
    return m_row && m_row->item->balloon ? inward(m_row->item->balloon->text()) : QString();
}

QString DueDetail::programme() const {
    if (m_row == nullptr || m_row->programme == nullptr)
        return {};
    if (m_row->programme->revision.empty())
        return words::said(m_row->programme->title);
    return tr("%1, revision %2").arg(words::said(m_row->programme->title), inward(m_row->programme->revision));
}

}
