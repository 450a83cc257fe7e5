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

}

Sifted sift(const FleetSheet& sheet, const DueSieve& sieve) {
    Sifted sifted;
    const auto words = sieve.words.split(u' ', Qt::SkipEmptyParts);
    for (std::uint32_t number = 0; number < sheet.due.rows.size(); ++number) {
        const auto& row = sheet.due.rows[number];
        if (sieve.balloon && row.item->balloon != sieve.balloon)
            continue;
        if (sieve.kind && row.item->kind != *sieve.kind)
            continue;
        if (!says(row, words))
            continue;
        const auto standing = static_cast<std::size_t>(row.state.standing);
        ++sifted.byStanding[standing];
        if (sieve.standing && row.state.standing != *sieve.standing)
            continue;
        const auto place = horizonPlace(row, sheet.on);
        if (place)
            ++(place->byUse ? sifted.use[static_cast<std::size_t>(place->bin)]
                            : sifted.calendar[static_cast<std::size_t>(place->bin)])[standing];
        if (sieve.bin && !(place && place->byUse == sieve.bin->byUse && place->bin == sieve.bin->bin))
            continue;
        sifted.rows.push_back(number);
    }
    if (sieve.order == DueOrder::Soonest)
        std::stable_sort(sifted.rows.begin(), sifted.rows.end(), [&](std::uint32_t a, std::uint32_t b) {
            return soonestKey(sheet.due.rows[a]) < soonestKey(sheet.due.rows[b]);
        });
    return sifted;
}

}
