// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/desk/journal_model.h"

#include "record/chain/recorded.h"
#include "words/border.h"
#include "words/sentences.h"

#include <QStringList>

namespace crownring::screen {

using namespace words;

namespace {

QString onText(const Entry& entry) {
    const auto on = inward(entry.on.iso());
    return entry.time ? on + u' ' + inward(entry.time->iso()) : on;
}

}

int JournalModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

QVariant JournalModel::data(const QModelIndex& index, int role) const {
    if (index.row() < 0 || index.row() >= static_cast<int>(m_lines.size()))
        return {};
    const auto& row = m_lines[static_cast<std::size_t>(index.row())];
    const auto& entry = row.now();
    switch (role) {
    case EntryRole:
        return inward(entry.id.text());
    case NumberRole:
        return QVariant::fromValue(static_cast<qlonglong>(row.line.number));
    case DayRole:
        return onText(entry);
    case KindRole:
        return Sentences::kindOf(row.line);
    case Qt::DisplayRole:
    case SentenceRole:
        return Sentences::of(row.line, *m_titles);
    case ByRole:
        return inward(entry.by);
    case NoteRole:
        return inward(entry.note);
    case RecordedRole:
        return inward(recordedFrom(row.line.recordedAt).at);
    case ChangeRole:
        return row.line.voided    ? tr("voided")
               : row.line.unread  ? tr("cannot be read")
               : row.line.current ? tr("corrected")
                                  : QString();
    case VoidedRole:
        return row.line.voided;
    case AmendableRole:
        return !row.line.voided && !row.line.unread && !amends(entry);
    case FactsRole:
        return joined({onText(entry), Sentences::kindOf(row.line), inward(entry.by), data(index, ChangeRole).toString(),
                       inward(entry.note)},
                      QStringLiteral(" · "));
    case SpokenRole: {
        QStringList parts{onText(entry), Sentences::of(row.line, *m_titles)};
        if (row.line.voided)
            parts += tr("voided");
        return parts.join(QStringLiteral(": "));
    }
    case PhotographsRole:
        return photographsOf(entry);
    case FlightRole:
        return isLiveFlight(row.line);
    default:
        return {};
    }
}

QStringList JournalModel::photographsOf(const Entry& entry) {
    const auto* found = std::get_if<DefectFound>(&entry.body);
    const auto* settled = std::get_if<LineSettled>(&entry.body);
    QStringList digests;
    for (const auto& digest : found ? found->photographs : settled ? settled->photographs : std::vector<std::string>())
        digests += inward(digest);
    return digests;
}

bool JournalModel::isLiveFlight(const JournalLine& line) {
    return !line.voided && !line.unread && std::holds_alternative<FlightLogged>(nowOf(line).body);
}

void JournalModel::show(const std::vector<JournalLine>& lines, std::shared_ptr<const Titles> titles) {
    m_titles = std::move(titles);
    std::vector<Line> rows;
    rows.reserve(lines.size());
    for (const auto& line : lines)
        rows.push_back({line});
    replaceRows(m_lines, std::move(rows));
}

void JournalModel::append(const std::vector<JournalLine>& lines) {
    if (lines.empty())
        return;
    beginInsertRows({}, count(), count() + static_cast<int>(lines.size()) - 1);
    for (const auto& line : lines)
        m_lines.push_back({line});
    endInsertRows();
    emit countChanged();
}

std::optional<std::int64_t> JournalModel::oldest() const {
    return m_lines.empty() ? std::nullopt : std::optional(m_lines.back().line.number);
}

}
