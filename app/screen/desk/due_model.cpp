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
    return row->item->id == other.row->item->id && row->requirement->id == other.row->requirement->id;
}

bool DueModel::Line::operator==(const Line& other) const {
    return row->state == other.row->state && row->item->balloon == other.row->item->balloon &&
           row->requirement->title == other.row->requirement->title;
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
        return static_cast<int>(row->state.standing);
    case StandingWordRole:
        return Words::standing(row->state);
    case UsedRole:
        return DueTexts::used(*row);
    case LeftRole:
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

QHash<int, QByteArray> DueModel::roleNames() const {
    return {{ItemRole, "item"},     {KindRole, "kind"},         {BalloonRole, "balloon"},
            {WhereRole, "where"},   {TitleRole, "title"},       {RequirementRole, "requirement"},
            {SourceRole, "source"}, {StandingRole, "standing"}, {StandingWordRole, "standingWord"},
            {UsedRole, "used"},     {LeftRole, "remains"},      {DueRole, "due"},
            {RemarkRole, "remark"}, {SpokenRole, "spoken"}};
}

void DueModel::show(Sheet sheet, const RowNumbers& numbers) {
    std::vector<Line> lines;
    lines.reserve(numbers.size());
    for (const auto number : numbers)
        lines.push_back({&sheet->due.rows[number]});
    const auto kept = std::exchange(m_sheet, std::move(sheet)); // the old rows are looked at until they are replaced
    replaceRows(m_lines, std::move(lines));
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
