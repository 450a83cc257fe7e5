// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/group_model.h"

#include "rules/due/defects.h"
#include "rules/due/lists.h"
#include "screen/desk/due_model.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <QStringList>

#include <set>

namespace crownring::screen {

using namespace words;

namespace {

constexpr qsizetype namedAlso = 2;

QString titleOf(const DueRow& row) {
    if (!isOfTheRecord(row) || row.programme == &directiveProgramme())
        return words::said(row.requirement->title);
    if (row.programme == &listProgramme())
        return GroupModel::tr("Lists of discrepancies");
    return row.programme == &defectProgramme() ? GroupModel::tr("Open defects")
                                               : GroupModel::tr("Readings against limits");
}

QString balloonOf(const GroupKey& key) {
    return key.balloon ? inward(key.balloon->text()) : GroupModel::tr("In the pool");
}

/// What is not clear besides what governs: two by name, and how many more.
QString comesWith(const DueGroup& group) {
    QStringList titles;
    std::set<RequirementId> seen{group.governs->requirement->id};
    for (const auto* row : group.rows)
        if (row->state.standing <= Standing::Nearing && isRequired(row->state) &&
            seen.insert(row->requirement->id).second)
            titles += titleOf(*row);
    titles.removeDuplicates();
    if (titles.isEmpty())
        return {};
    const auto more = titles.size() - namedAlso;
    const auto named = titles.mid(0, namedAlso).join(QStringLiteral(", "));
    return more <= 0 ? GroupModel::tr("with it: %1").arg(named)
                     : GroupModel::tr("with it: %1 and %n more", nullptr, static_cast<int>(more)).arg(named);
}

/// "12 balloons"
QString whose(const DueGroup& group) {
    std::set<Registration> balloons;
    for (const auto* row : group.rows)
        if (row->item->balloon)
            balloons.insert(*row->item->balloon);
    return balloons.empty() ? GroupModel::tr("In the pool")
                            : GroupModel::tr("%n balloons", nullptr, static_cast<int>(balloons.size()));
}

}

GroupLine groupLine(const DueGroup& group, Grouping grouping) {
    const auto& row = *group.governs;
    GroupLine line;
    line.key = group.key;
    const auto items = GroupModel::tr("%n items", nullptr, static_cast<int>(group.items));
    switch (grouping) {
    case Grouping::None:
    case Grouping::Balloon:
        line.title = balloonOf(group.key);
        line.governs =
            GroupModel::tr("%1, %2 %3").arg(titleOf(row), Words::kind(row.item->kind), inward(row.item->id.text()));
        line.also = comesWith(group);
        break;
    case Grouping::Visit:
        line.title = titleOf(row);
        line.governs = GroupModel::tr("%1 · %2").arg(balloonOf(group.key), items);
        break;
    case Grouping::Requirement:
        line.title = titleOf(row);
        line.governs = GroupModel::tr("%1 · %2").arg(whose(group), items);
        break;
    }
    line.word = Words::standing(row.state);
    line.left = DueTexts::left(row);
    line.due = DueTexts::due(row);
    line.standing = static_cast<int>(reckonedAs(row.state));
    line.used = DueTexts::used(row);
    return line;
}

QVariant GroupModel::data(const QModelIndex& index, int role) const {
    if (index.row() < 0 || index.row() >= static_cast<int>(m_lines.size()))
        return {};
    const auto& line = m_lines[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
    case TitleRole:
        return line.title;
    case GovernsRole:
        return line.governs;
    case AlsoRole:
        return line.also;
    case StandingWordRole:
        return line.word;
    case RemainsRole:
        return line.left;
    case DueRole:
        return line.due;
    case StandingRole:
        return line.standing;
    case UsedRole:
        return line.used;
    case SpokenRole:
        return joined({line.title, line.governs, line.word, line.left, line.due, line.also}, QStringLiteral(", "));
    default:
        return {};
    }
}

}
