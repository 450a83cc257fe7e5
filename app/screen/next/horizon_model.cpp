// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/horizon_model.h"

#include "words/border.h"
#include "words/words.h"

#include <QLocale>
#include <QStringList>

#include <algorithm>
#include <numeric>

namespace crownring::screen {

using namespace words;

namespace {

int total(const Tally& tally) { return std::accumulate(tally.begin(), tally.end(), 0); }

/// The name of the month that begins in the seven days from `first`, else of the first week's own, unless that of the
/// next week would be written over it.
QString monthOf(CivilDate first, bool strip) {
    const auto shown = addDays(first, 6);
    const bool begins = first.month() != shown.month() || first.day() == 1;
    if (!begins && (!strip || addDays(first, 13).month() != first.month()))
        return {};
    const auto name = QLocale().standaloneMonthName(shown.month(), QLocale::ShortFormat);
    return shown.month() == 1 ? HorizonModel::tr("%1 %2").arg(name, QString::number(shown.year())) : name;
}

}

int HorizonModel::Bin::total() const { return screen::total(tally); }

int HorizonModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_bins.size());
}

QVariant HorizonModel::data(const QModelIndex& index, int role) const {
    if (index.row() < 0 || index.row() >= static_cast<int>(m_bins.size()))
        return {};
    const auto& bin = m_bins[static_cast<std::size_t>(index.row())];
    switch (role) {
    case BinRole:
        return bin.number;
    case Qt::DisplayRole:
    case LabelRole:
        return bin.label;
    case MonthRole:
        return bin.month;
    case TallyRole:
        return QVariant::fromValue(QList<int>(bin.tally.begin(), bin.tally.end()));
    case TotalRole:
        return bin.total();
    case SpokenRole:
        return bin.spoken;
    case ZoneRole:
        return bin.zone;
    default:
        return {};
    }
}

void HorizonModel::showCalendar(CivilDate on, const std::array<Tally, calendarBins>& tallies, const Tally& off) {
    std::vector<Bin> bins;
    for (int number = 0; number < calendarBins; ++number) {
        Bin bin;
        bin.number = number;
        bin.tally = tallies[static_cast<std::size_t>(number)];
        bin.zone = number < FirstWeekBin || number >= LaterBin;
        if (number == UnprovenBin) {
            bin.label = tr("no proof");
        } else if (number == OverdueBin) {
            bin.label = tr("overdue");
        } else if (number == LaterBin) {
            bin.label = tr("later");
        } else if (number == NoDateBin) {
            bin.label = tr("no date");
        } else {
            const auto first = addDays(on, 7 * (number - FirstWeekBin));
            bin.label = tr("week from %1").arg(inward(first.iso()));
            bin.month = monthOf(first, number == FirstWeekBin);
        }
        bin.spoken = tr("%1: %2").arg(bin.label, told(bin.tally));
        bins.push_back(std::move(bin));
    }
    show(std::move(bins), total(off) == 0 ? QString() : tr("Not on the strip: %1.").arg(told(off)));
}

void HorizonModel::showUse(const std::array<Tally, useBins>& tallies, const Tally& off) {
    std::vector<Bin> bins;
    for (int number = 0; number < useBins; ++number) {
        Bin bin;
        bin.number = number;
        bin.tally = tallies[static_cast<std::size_t>(number)];
        const auto steps = static_cast<int>(useSteps.size());
        if (number == 0)
            bin.label = tr("used up");
        else if (number <= steps)
            bin.label = tr("to %1 h").arg(useSteps[static_cast<std::size_t>(number - 1)] / 60);
        else if (number == steps + 1)
            bin.label = tr("over %1 h").arg(useSteps.back() / 60);
        else
            bin.label = tr("landings");
        bin.spoken = tr("%1 left: %2").arg(bin.label, told(bin.tally));
        bins.push_back(std::move(bin));
    }
    show(std::move(bins), total(off) == 0 ? QString() : tr("No use limits, or is done with: %1.").arg(told(off)));
}

void HorizonModel::show(std::vector<Bin> bins, const QString& leftOut) {
    if (leftOut != m_leftOut) {
        m_leftOut = leftOut;
        emit leftOutChanged();
    }
    int tallest = 1;
    for (const auto& bin : bins)
        if (!bin.zone)
            tallest = std::max(tallest, bin.total());
    replaceRows(m_bins, std::move(bins));
    if (tallest != m_tallest) {
        m_tallest = tallest;
        emit tallestChanged();
    }
}

QString HorizonModel::told(const Tally& tally) {
    QStringList parts;
    for (int sort = 0; sort < reckonedCount; ++sort)
        if (const int n = tally[static_cast<std::size_t>(sort)]; n > 0)
            parts += tr("%1 %2").arg(QString::number(n), Words::standing(static_cast<Reckoned>(sort)));
    return parts.isEmpty() ? tr("nothing") : parts.join(QStringLiteral(", "));
}

QString HorizonModel::label(int bin) const {
    return bin >= 0 && bin < static_cast<int>(m_bins.size()) ? m_bins[static_cast<std::size_t>(bin)].label : QString();
}

}
