// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/due_sieve.h"

#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <QStringList>

#include <algorithm>
#include <tuple>

namespace crownring::screen {

using namespace words;

namespace {

bool says(const DueRow& row, const QStringList& words) {
    if (words.isEmpty())
        return true;
    const auto text = inward(row.item->id.text()) + u' ' + inward(row.item->serial.value_or("")) + u' ' +
                      (row.item->balloon ? inward(row.item->balloon->text()) : QString()) + u' ' +
                      words::said(row.requirement->title) + u' ' + words::said(row.requirement->source);
    return std::all_of(words.begin(), words.end(),
                       [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
}

/// Soonest by date; what has no date comes after, by hours left.
auto soonestKey(const DueRow& row) {
    const auto due = calendarDue(row.state);
    const auto* limit = governingLimit(row.state);
    const auto* reach = limit ? limit->usage() : nullptr;
    return std::tuple(row.state.standing == Standing::Closed || !isRequired(row.state), !due.has_value(),
                      due.value_or(CivilDate()), reach ? reach->left : ClockCount(0));
}

/// One sieve over many rows.
class Sieve {
public:
    Sieve(const DueSieve& sieve, CivilDate on, Spread& spread, int times)
        : m_sieve(sieve), m_words(sieve.words.split(u' ', Qt::SkipEmptyParts)), m_on(on), m_upTo(sieve.upTo(on)),
          m_spread(spread), m_times(times) {}

    bool passes(const DueRow& row) {
        if (!m_sieve.mine.holds(row.item->balloon))
            return false;
        if (m_sieve.balloon && row.item->balloon != m_sieve.balloon)
            return false;
        if (m_sieve.kind && row.item->kind != *m_sieve.kind)
            return false;
        if (m_sieve.within && groupOf(row, m_sieve.grouping) != *m_sieve.within)
            return false;
        if (!says(row, m_words))
            return false;
        const auto reckoned = reckonedAs(row.state);
        const auto sort = static_cast<std::size_t>(reckoned);
        m_spread.bySort[sort] += m_times;
        if (m_sieve.reckoned && reckoned != *m_sieve.reckoned)
            return false;
        const auto places = horizonPlaces(row, m_on);
        (places.calendar ? m_spread.calendar[static_cast<std::size_t>(*places.calendar)]
                         : m_spread.offCalendar)[sort] += m_times;
        (places.use ? m_spread.use[static_cast<std::size_t>(*places.use)] : m_spread.offUse)[sort] += m_times;
        if (!m_sieve.bin || isIn(m_sieve.bin->byUse ? places.use : places.calendar) ||
            (m_upTo && comesUpTo(row, m_on, *m_upTo)))
            return true;
        m_spread.leftOut[sort] += m_times;
        return false;
    }

private:
    [[nodiscard]] bool isIn(std::optional<int> bin) const {
        return bin && *bin >= m_sieve.bin->bin && *bin <= std::max(m_sieve.bin->bin, m_sieve.lastBin);
    }

    const DueSieve& m_sieve;
    QStringList m_words;
    CivilDate m_on;
    std::optional<CivilDate> m_upTo;
    Spread& m_spread;
    int m_times;
};

}

std::optional<CivilDate> DueSieve::upTo(CivilDate on) const {
    if (!bin || bin->byUse || bin->bin > FirstWeekBin || lastBin <= bin->bin || lastBin < FirstWeekBin ||
        lastBin >= LaterBin)
        return std::nullopt;
    return addDays(on, std::int64_t{7} * (lastBin - FirstWeekBin + 1));
}

bool comesFirst(const DueRow& a, const DueRow& b, DueOrder order) {
    if (order == DueOrder::Soonest)
        if (const auto before = soonestKey(a), after = soonestKey(b); before != after)
            return before < after;
    return comesBefore(a, b);
}

Sifted sift(const FleetSheet& sheet, const DueSieve& sieve) {
    Sifted sifted;
    Sieve passing(sieve, sheet.on(), sifted.spread, 1);
    for (const auto& row : sheet.rows())
        if (passing.passes(row))
            sifted.rows.push_back(&row);
    if (sieve.order == DueOrder::Soonest)
        std::ranges::stable_sort(sifted.rows, {}, [](const DueRow* row) { return soonestKey(*row); });
    if (sieve.grouping != Grouping::None && !sieve.within)
        for (const auto& group : grouped(sheet, sifted.rows, sieve.grouping))
            sifted.groups.push_back(groupLine(group, sieve.grouping));
    return sifted;
}

DueRows siftItems(const FleetSheet& sheet, std::span<const ItemId> items, const DueSieve& sieve, Spread& spread,
                  int times) {
    DueRows rows;
    Sieve passing(sieve, sheet.on(), spread, times);
    for (const auto& item : items)
        for (const auto* row : sheet.rowsOf(item))
            if (passing.passes(*row))
                rows.push_back(row);
    return rows;
}

}
