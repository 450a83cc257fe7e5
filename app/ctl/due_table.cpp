// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/due_table.h"

#include "ctl/call.h"
#include "measure/duration_text.h"
#include "rules/due/reckoned.h"
#include "text/utf8.h"
#include "words/sentence.h"
#include "words/words.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>

namespace crownring::ctl {

namespace {

constexpr std::size_t columnCount = 7;
using Cells = std::array<std::string, columnCount>; ///< columns count characters, not bytes

std::string reckonedSaid(Reckoned reckoned) {
    return reckoned == Reckoned::NotRequired ? "not required" : std::string(reckonedText(reckoned));
}

std::string standingCell(const DueRow& row) {
    const auto reckoned = reckonedAs(row.state);
    auto text = reckonedSaid(reckoned);
    if (reckoned == Reckoned::NotRequired)
        return text;
    if (row.state.because == Because::Deferred && reckoned != Reckoned::Deferred)
        text += " (deferred)";
    if (row.state.because == Because::Triggered)
        text += " (" + words::Words::event(row.state.trigger->event).toStdString() + ")";
    if (row.state.because == Because::Exempt)
        text += " (exempt)";
    if (row.state.unsupported)
        text += " (unsupported)";
    if (row.requirement->force == Force::Recommended)
        text += ", advised";
    else if (row.requirement->blocks == Blocks::Filling)
        text += ", filling";
    return text;
}

std::string leftCell(const LimitState& limit) {
    return limit.isProven() ? plainly(words::Words::left(limit)) : "unknown";
}

void printRow(std::ostream& out, const Cells& cells, const std::array<std::size_t, columnCount>& widths) {
    std::string line;
    for (std::size_t i = 0; i < columnCount; ++i) {
        line += cells[i];
        if (i + 1 < columnCount)
            line += std::string(widths[i] - characters(cells[i]) + 2, ' ');
    }
    out << line << "\n";
}

}

std::string leftText(const LimitState& limit) {
    const auto* onDay = limit.calendar();
    const auto* byUse = limit.usage();
    const bool isSomeLeft = onDay ? onDay->left > Days(0) : byUse && byUse->left > ClockCount(0);
    return plainly(words::Words::left(limit)) + (isSomeLeft ? " left" : "");
}

std::string dueText(const DueRow& row) {
    const auto* limit = governingLimit(row.state);
    if (const auto* reach = limit ? limit->calendar() : nullptr)
        return reach->due.iso();
    const auto* reach = limit ? limit->usage() : nullptr;
    if (!reach)
        return "";
    if (limit->clock == ClockName::Inspections)
        return reach->left == ClockCount(1) ? "at the next inspection" : "at a later inspection";
    return limit->clock == ClockName::Minutes ? "at " + hoursAndMinutes(Minutes(reach->due.value())) + " h"
                                              : "at " + std::to_string(reach->due.value());
}

/// An item of which nothing is asked is not one of which nothing is due.
void printLeftOut(std::ostream& out, const DueList& list) {
    constexpr std::size_t named = 5;
    std::set<const ItemFacts*> asked;
    for (const auto& row : list.rows)
        asked.insert(row.item);
    std::size_t left = 0;
    for (const auto& item : list.items)
        if (item.out && !asked.contains(&item) && left++ < named)
            out << item.id.text() << " is out of service: " << words::said(reasonOf(*item.out)).toStdString() << "\n";
    if (left > named)
        out << "… and " << left - named << " more items\n";
    if (left > 0)
        out << "Nothing is asked of what is out of service; --out-of-service shows what would be.\n";
}

void printTable(std::ostream& out, const DueList& list, std::size_t most) {
    std::vector<Cells> rows{{"standing", "left", "due", "balloon", "item", "kind", "requirement"}};
    std::map<Reckoned, std::size_t> counts;
    for (const auto& row : list.rows) {
        ++counts[reckonedAs(row.state)];
        if (rows.size() > most)
            continue;
        const auto* limit = governingLimit(row.state);
        rows.push_back({standingCell(row), limit ? leftCell(*limit) : "", dueText(row),
                        row.item->balloon ? row.item->balloon->text() : "-", row.item->id.text(),
                        std::string(itemKindName(row.item->kind)), words::said(row.requirement->title).toStdString()});
    }
    std::array<std::size_t, columnCount> widths{};
    for (const auto& row : rows)
        for (std::size_t i = 0; i < columnCount; ++i)
            widths[i] = std::max(widths[i], characters(row[i]));
    for (const auto& row : rows)
        printRow(out, row, widths);
    if (list.rows.size() + 1 > rows.size())
        out << "… and " << list.rows.size() + 1 - rows.size() << " more rows (--most 0 shows all)\n";
    out << "\n" << list.rows.size() << " rows on " << list.on.iso() << ":";
    for (const auto& [reckoned, number] : counts)
        out << " " << number << " " << reckonedSaid(reckoned) << ",";
    out << " worst first.\n";
    printLeftOut(out, list);
    out << "From the record and the adopted rules only; whether a balloon is airworthy is for licensed people to "
           "decide.\n";
}

}
