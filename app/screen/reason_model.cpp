// SPDX-License-Identifier: GPL-3.0-or-later
#include "reason_model.h"

#include "border.h"
#include "due_model.h"
#include "words.h"

namespace crownring::screen {

namespace {

ReasonLine lineOf(const DueRow& row) {
    ReasonLine line;
    line.item = inward(row.item->id.text());
    line.requirement = inward(row.requirement->id.text());
    line.title =
        ReasonModel::tr("%1 %2: %3").arg(Words::kind(row.item->kind), line.item, inward(row.requirement->title));
    if (!line.title.isEmpty())
        line.title[0] = line.title[0].toUpper();
    line.source = inward(row.requirement->source);
    line.standing = static_cast<int>(row.state.standing);
    line.word = Words::standing(row.state);
    line.word[0] = line.word[0].toUpper(); // it begins a sentence here
    line.used = DueTexts::used(row);
    return line;
}

QString stateText(const DueRow& row) {
    const auto left = DueTexts::left(row);
    const auto due = DueTexts::due(row);
    if (const auto because = Words::because(row.state); !because.isEmpty())
        return because;
    if (left.isEmpty() || due.isEmpty())
        return Words::standing(row.state);
    return ReasonModel::tr("Due %1: %2.").arg(due, left);
}

QString mendOf(const DueRow& row) {
    switch (row.state.standing) {
    case Standing::Spent:
        return ReasonModel::tr("Its life limit is reached: fly another item.");
    case Standing::Unproven:
        return ReasonModel::tr("Enter the paper that proves when it was last done, or have it done.");
    default:
        return ReasonModel::tr("Have it done, or fly another item.");
    }
}

}

ReasonLine reasonLine(const RigUpReason& reason) {
    auto line = lineOf(*reason.row);
    switch (reason.kind) {
    case RigUpReason::Kind::Standing:
        line.text = stateText(*reason.row);
        line.mend = mendOf(*reason.row);
        break;
    case RigUpReason::Kind::TooLong:
        line.text = reason.limit
                        ? ReasonModel::tr("The flight needs more than is left: %1.").arg(Words::left(*reason.limit))
                        : ReasonModel::tr("The flight needs more than is left.");
        line.mend = ReasonModel::tr("Fly shorter, have it done before, or fly another item.");
        break;
    case RigUpReason::Kind::Positioning:
        line.text = ReasonModel::tr("In a tolerance that only serves to reach the place of the inspection.");
        line.mend = ReasonModel::tr("Mark the flight as one to the place of the inspection, or have it done.");
        break;
    }
    return line;
}

ReasonLine noteLine(const DueRow& row) {
    auto line = lineOf(row);
    line.text = stateText(row);
    line.mend = DueTexts::remark(row);
    return line;
}

QVariant ReasonModel::data(const QModelIndex& index, int role) const {
    if (index.row() < 0 || index.row() >= static_cast<int>(m_lines.size()))
        return {};
    const auto& line = m_lines[static_cast<std::size_t>(index.row())];
    switch (role) {
    case ItemRole:
        return line.item;
    case RequirementRole:
        return line.requirement;
    case Qt::DisplayRole:
    case TitleRole:
        return line.title;
    case TextRole:
        return line.text;
    case SourceRole:
        return line.source;
    case MendRole:
        return line.mend;
    case WordRole:
        return line.word;
    case StandingRole:
        return line.standing;
    case UsedRole:
        return line.used;
    case SpokenRole:
        return joined({line.title, line.word, line.text, line.mend, line.source}, QStringLiteral(", "));
    default:
        return {};
    }
}

QHash<int, QByteArray> ReasonModel::roleNames() const {
    return {{ItemRole, "item"},    {RequirementRole, "requirement"}, {TitleRole, "title"},
            {TextRole, "says"},    {SourceRole, "source"},           {MendRole, "mend"},
            {WordRole, "word"},    {StandingRole, "standing"},       {UsedRole, "used"},
            {SpokenRole, "spoken"}};
}

}
