// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/ahead/agenda_model.h"

#include "words/border.h"

#include <QDate>
#include <QLocale>

namespace crownring::screen {

using namespace words;

QVariant AgendaModel::data(const QModelIndex& index, int role) const {
    if (index.row() < 0 || index.row() >= static_cast<int>(m_lines.size()))
        return {};
    const auto& line = m_lines[static_cast<std::size_t>(index.row())];
    switch (role) {
    case EntryRole:
        return line.entry;
    case DayRole:
        return line.day;
    case Qt::DisplayRole:
    case TitleRole:
        return line.title;
    case SaysRole:
        return line.says;
    case LinesRole:
        return line.lines;
    case VisitRole:
        return line.visit;
    case GoodRole:
        return line.good;
    case SpokenRole:
        return (QStringList{line.day, line.title, line.says} + line.lines).join(QStringLiteral(", "));
    default:
        return {};
    }
}

QString dayText(CivilDate day, CivilDate on) {
    const QDate date(day.year(), day.month(), day.day());
    return QLocale().toString(date,
                              day.year() == on.year() ? QStringLiteral("ddd d MMM") : QStringLiteral("ddd d MMM yyyy"));
}

QString daysText(CivilDate first, CivilDate last, CivilDate on) {
    return first == last ? dayText(first, on) : AgendaModel::tr("%1 to %2").arg(dayText(first, on), dayText(last, on));
}

}
