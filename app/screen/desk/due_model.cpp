// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/desk/due_model.h"

#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <QStringList>

#include <algorithm>

namespace crownring::screen {

using namespace words;

bool DueModel::Line::sameAs(const Line& other) const {
    return row == other.row ||
           (row->item->id == other.row->item->id && row->requirement->id == other.row->requirement->id);
}

bool DueModel::Line::operator==(const Line& other) const {
    return row == other.row || (row->state == other.row->state && row->item->balloon == other.row->item->balloon &&
                                row->requirement->title == other.row->requirement->title);
}

int DueModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

const DueRow* DueModel::row(int at) const {
    return at >= 0 && at < static_cast<int>(m_lines.size()) ? m_lines[static_cast<std::size_t>(at)].row : nullptr;
}

QVariant DueModel::data(const QModelIndex& index, int role) const {
    const auto* row = this->row(index.row());
    if (row == nullptr)
        return {};
    switch (role) {
    case ItemRole:
        return inward(row->item->id.text());
    case KindRole:
        return Words::kind(row->item->kind);
    case BalloonRole:
        return row->item->balloon ? inward(row->item->balloon->text()) : QString();
    case WhereRole:
        return DueTexts::where(*row);
    case RequirementRole:
        return inward(row->requirement->id.text());
    case Qt::DisplayRole:
    case TitleRole:
        return words::said(row->requirement->title);
    case SourceRole:
        return words::said(row->requirement->source);
    case StandingRole:
        return static_cast<int>(reckonedAs(row->state));
    case StandingWordRole:
        return Words::standing(row->state);
    case UsedRole:
        return DueTexts::used(*row);
    case RemainsRole:
        return DueTexts::left(*row);
    case DueRole:
        return DueTexts::due(*row);
    case RemarkRole:
        return DueTexts::remark(*row);
    case SpokenRole:
        return DueTexts::spoken(*row);
    default:
        return {};
    }
}

void DueModel::show(Sheet sheet, const DueRows& rows) {
    std::vector<Line> lines;
    lines.reserve(rows.size());
    for (const auto* row : rows)
        lines.push_back({row});
    const auto kept = std::exchange(m_sheet, std::move(sheet)); // the old rows are looked at until they are replaced
    replaceRows(m_lines, std::move(lines));
}

void DueModel::mend(Sheet sheet, const DueRows& gone, const DueRows& come, const DueBefore& before) {
    const auto kept = std::exchange(m_sheet, std::move(sheet)); // the old rows are looked at until they are replaced
    const auto count = m_lines.size();
    std::vector<bool> placed(come.size());
    for (const auto* old : gone) {
        const auto same = std::ranges::find_if(come, [&](const DueRow* row) { return Line{row}.sameAs({old}); });
        if (same == come.end()) {
            remove(*old, before);
        } else {
            replace(*old, **same, before);
            placed[static_cast<std::size_t>(same - come.begin())] = true;
        }
    }
    for (std::size_t at = 0; at < come.size(); ++at)
        if (!placed[at])
            insert(*come[at], before);
    if (m_lines.size() != count)
        emit countChanged();
}

/// Where it stands, or would stand.
std::ptrdiff_t DueModel::placeOf(const DueRow& row, const DueBefore& before) const {
    auto at =
        std::ranges::lower_bound(m_lines, row, before, [](const Line& line) -> const DueRow& { return *line.row; });
    while (at != m_lines.end() && at->row != &row && !before(row, *at->row))
        ++at;
    return at - m_lines.begin();
}

void DueModel::replace(const DueRow& gone, const DueRow& come, const DueBefore& before) {
    const auto from = placeOf(gone, before);
    const auto sought = placeOf(come, before); // with the old one still there
    const auto to = sought > from ? sought - 1 : sought;
    const auto first = m_lines.begin();
    if (from < to) {
        beginMoveRows({}, static_cast<int>(from), static_cast<int>(from), {}, static_cast<int>(to) + 1);
        std::rotate(first + from, first + from + 1, first + to + 1);
        endMoveRows();
    } else if (to < from) {
        beginMoveRows({}, static_cast<int>(from), static_cast<int>(from), {}, static_cast<int>(to));
        std::rotate(first + to, first + from, first + from + 1);
        endMoveRows();
    }
    const bool changes = !(first[to] == Line{&come});
    first[to] = {&come};
    if (changes)
        emit dataChanged(index(static_cast<int>(to)), index(static_cast<int>(to)));
}

void DueModel::remove(const DueRow& gone, const DueBefore& before) {
    const auto at = placeOf(gone, before);
    beginRemoveRows({}, static_cast<int>(at), static_cast<int>(at));
    m_lines.erase(m_lines.begin() + at);
    endRemoveRows();
}

void DueModel::insert(const DueRow& come, const DueBefore& before) {
    const auto at = placeOf(come, before);
    beginInsertRows({}, static_cast<int>(at), static_cast<int>(at));
    m_lines.insert(m_lines.begin() + at, {&come});
    endInsertRows();
}

int DueModel::find(const QString& item, const QString& requirement) const {
    const ItemId wantedItem(outward(item));
    const RequirementId wanted(outward(requirement));
    const auto at = std::find_if(m_lines.begin(), m_lines.end(), [&](const Line& line) {
        return line.row->item->id == wantedItem && line.row->requirement->id == wanted;
    });
    return at == m_lines.end() ? -1 : static_cast<int>(at - m_lines.begin());
}

QString DueTexts::where(const DueRow& row) {
    const auto item = DueModel::tr("%1 %2").arg(Words::kind(row.item->kind), inward(row.item->id.text()));
    return row.item->balloon ? DueModel::tr("%1 · %2").arg(inward(row.item->balloon->text()), item) : item;
}

QString DueTexts::left(const DueRow& row) {
    const auto* limit = governingLimit(row.state);
    return limit ? Words::left(*limit) : QString();
}

QString DueTexts::due(const DueRow& row) {
    const auto* limit = governingLimit(row.state);
    return limit ? Words::due(*limit) : QString();
}

QString DueTexts::remark(const DueRow& row) {
    QStringList remarks;
    if (row.requirement->force == Force::Recommended)
        remarks += DueModel::tr("recommended");
    if (row.state.because == Because::Deferred && reckonedAs(row.state) != Reckoned::Deferred)
        remarks += DueModel::tr("deferred");
    if (row.requirement->blocks == Blocks::Filling && row.state.standing <= Standing::Tolerance)
        remarks += DueModel::tr("not to be refilled");
    if (row.state.standing == Standing::Tolerance && row.requirement->toleranceFor == ToleranceFor::Positioning)
        remarks += DueModel::tr("only to reach the place of the inspection");
    return remarks.join(QStringLiteral(" · "));
}

QString DueTexts::spoken(const DueRow& row) {
    QStringList parts{words::said(row.requirement->title), where(row), Words::standing(row.state)};
    if (const auto text = left(row); !text.isEmpty())
        parts += text;
    if (const auto text = due(row); !text.isEmpty())
        parts += DueModel::tr("due %1").arg(text);
    if (const auto text = remark(row); !text.isEmpty())
        parts += text;
    return parts.join(QStringLiteral(", "));
}

double DueTexts::used(const DueRow& row) {
    return row.state.share ? std::clamp(1.0 - *row.state.share, 0.0, 1.0) : -1.0;
}

}
