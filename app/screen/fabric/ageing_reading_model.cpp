// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/fabric/ageing_reading_model.h"

#include "words/border.h"

#include <QHash>
#include <QLocale>

#include <map>

namespace crownring::screen {

using namespace words;

namespace {

QString spoken(const AgeingRow& row) {
    const auto& reading = row.reading;
    return joined({reading.day, AgeingReadingModel::tr("%1 hours flown").arg(row.hours), reading.place,
                   reading.lot.isEmpty() ? QString() : AgeingReadingModel::tr("lot %1").arg(reading.lot), reading.says,
                   reading.judgement,
                   reading.ofThisPlace ? QString() : AgeingReadingModel::tr("another set of fabric")},
                  QStringLiteral(", "));
}

}

QVariant AgeingReadingModel::data(const QModelIndex& index, int role) const {
    if (index.row() < 0 || index.row() >= static_cast<int>(m_rows.size()))
        return {};
    const auto& row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case DayRole:
        return row.reading.day;
    case HoursRole:
        return row.hours;
    case PlaceRole:
        return row.reading.place;
    case LotRole:
        return row.reading.lot;
    case Qt::DisplayRole:
    case SaysRole:
        return row.reading.says;
    case JudgementRole:
        return row.reading.judgement;
    case FailsRole:
        return row.reading.fails;
    case KindRole:
        return QVariant::fromValue(row.reading.kind);
    case OtherRole:
        return !row.reading.ofThisPlace;
    case SpokenRole:
        return spoken(row);
    default:
        return {};
    }
}

void AgeingReadingModel::show(const std::vector<AgeingReading>& readings) {
    std::vector<AgeingRow> rows;
    rows.reserve(readings.size());
    std::map<std::array<QString, 4>, int> above;
    for (const auto& reading : readings) {
        AgeingRow row{reading, QLocale().toString(reading.hours, 'f', 1)};
        row.likeItAbove = above[row.said()]++;
        rows.push_back(std::move(row));
    }
    replaceRows(m_rows, std::move(rows));
}

}
