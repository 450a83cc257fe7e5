// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/components/pool_desk.h"

#include "screen/components/component_words.h"
#include "screen/desk/house.h"
#include "words/border.h"
#include "words/words.h"

#include <algorithm>
#include <set>

namespace crownring::screen {

using namespace words;

namespace {

QString noDay() { return QStringLiteral("?"); }

QString quarterOf(const PoolItem& item) {
    if (item.condemned)
        return {}; // nothing is due of it any more
    const auto quarter = inward(item.quarter());
    return quarter.isEmpty() && (item.airworthy.standing || item.transport.standing) ? noDay() : quarter;
}

bool isAway(const PoolItem& item) {
    return item.facts.out && item.facts.out->state == ServiceState::Away && !item.facts.out->part;
}

PoolLine lineOf(const PoolItem& item, bool isTicked) {
    const auto& facts = item.facts;
    return {inward(facts.id.text()),
            ComponentWords::where(facts),
            ComponentWords::about(facts, item.component),
            ComponentWords::dates(item),
            quarterOf(item),
            ComponentWords::state(item),
            item.airworthy.standing ? static_cast<int>(*item.airworthy.standing)
                                    : -1, // what blocks filling never heads it
            isTicked};
}

}

void PoolDesk::movedIn() {
    std::vector<Choice> kinds{{{}, tr("all kinds"), {}, -1, -1, false}};
    for (int at = 0; at < itemKindCount; ++at)
        kinds.push_back({inward(itemKindName(static_cast<ItemKind>(at))),
                         Words::kinds(static_cast<ItemKind>(at)),
                         {},
                         -1,
                         -1,
                         false});
    m_kinds.show(std::move(kinds));
    connect(&house().fleet, &Fleet::changed, this, &PoolDesk::follow);
    connect(&house().fleet, &Fleet::askingChanged, this, &PoolDesk::changed);
    connect(&house().desk, &RecordDesk::opening, this, [this] {
        m_ticked.clear();
        m_lot.clear();
        m_quarter.clear();
    });
}

void PoolDesk::setShown(bool shown) {
    if (shown == m_shown)
        return;
    m_shown = shown;
    emit shownChanged();
    follow();
}

void PoolDesk::follow() {
    if (m_shown && m_sheet != house().fleet.sheet())
        ask();
}

void PoolDesk::ask() {
    m_sheet = house().fleet.sheet();
    if (!m_sheet)
        return;
    m_asking = true;
    using Answer = Result<std::vector<PoolItem>>;
    hear(house().desk.ask([asked = PoolAsked{itemKindFrom(outward(m_kind)), outward(m_lot)},
                           on = m_sheet->on()](Record& record) -> Answer { return pool(record, asked, on); }),
         this, [this, turn = ++m_turn](const Answer& items) {
             if (turn != m_turn)
                 return;
             m_ready = true;
             m_asking = false;
             m_problem = items ? QString() : Words::problem(items.error());
             m_pool = items.value_or(std::vector<PoolItem>());
             look();
         });
}

void PoolDesk::look() {
    // What went out or came back meanwhile is ticked no more.
    std::erase_if(m_ticked, [this](const auto& tick) {
        const auto at = std::ranges::find(m_pool, tick.first, [](const PoolItem& item) { return item.facts.id; });
        return at == m_pool.end() || at->facts.out != tick.second;
    });
    std::map<QString, int> quarters;
    std::map<QString, int> lots;
    std::vector<PoolLine> lines;
    for (const auto& item : m_pool) {
        if (const auto quarter = quarterOf(item); !quarter.isEmpty())
            ++quarters[quarter];
        if (!item.component.lot.empty())
            ++lots[inward(item.component.lot)];
        auto line = lineOf(item, m_ticked.contains(item.facts.id));
        if (fits(item, line))
            lines.push_back(std::move(line));
    }
    std::vector<Choice> choices{{{}, tr("due in any quarter"), {}, -1, -1, false}};
    for (const auto& [quarter, count] : quarters)
        choices.push_back(
            {quarter,
             quarter == noDay() ? tr("no day known: %1").arg(count) : tr("due in %1: %2").arg(quarter).arg(count),
             {},
             count,
             -1,
             false});
    m_quarters.show(std::move(choices));
    if (m_lot.isEmpty()) {
        std::vector<Choice> known{{{}, tr("any lot"), {}, -1, -1, false}};
        for (const auto& [lot, count] : lots)
            known.push_back({lot, tr("lot %1: %2").arg(lot).arg(count), {}, count, -1, false});
        m_lots.show(std::move(known));
    }
    m_items.show(std::move(lines));
    emit changed();
}

bool PoolDesk::fits(const PoolItem& item, const PoolLine& line) const {
    if ((!m_quarter.isEmpty() && line.quarter != m_quarter) || (m_awayOnly && !isAway(item)))
        return false;
    const auto text = QStringList{line.item, line.where, line.about, line.state}.join(u' ');
    return std::ranges::all_of(m_words, [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
}

void PoolDesk::setKind(const QString& kind) {
    if (kind == m_kind)
        return;
    m_kind = kind;
    m_lot.clear();
    m_quarter.clear();
    m_ticked.clear();
    ask();
}

void PoolDesk::setLot(const QString& lot) {
    if (lot == m_lot)
        return;
    m_lot = lot;
    ask();
}

void PoolDesk::setQuarter(const QString& quarter) {
    if (quarter == m_quarter)
        return;
    m_quarter = quarter;
    look();
}

void PoolDesk::setAwayOnly(bool awayOnly) {
    if (awayOnly == m_awayOnly)
        return;
    m_awayOnly = awayOnly;
    m_quarter.clear();
    look();
}

void PoolDesk::setWords(const QString& words) {
    auto next = words.split(u' ', Qt::SkipEmptyParts);
    if (next == m_words)
        return;
    m_words = std::move(next);
    look();
}

void PoolDesk::toggle(const QString& item) {
    const auto at =
        std::ranges::find(m_pool, ItemId(outward(item)), [](const PoolItem& each) { return each.facts.id; });
    if (at == m_pool.end())
        return;
    if (m_ticked.erase(at->facts.id) == 0)
        m_ticked.emplace(at->facts.id, at->facts.out);
    look();
}

void PoolDesk::tickShown() {
    std::set<QString> shown;
    for (const auto& line : m_items.lines())
        shown.insert(line.item);
    for (const auto& item : m_pool)
        if (shown.contains(inward(item.facts.id.text())))
            m_ticked.emplace(item.facts.id, item.facts.out);
    look();
}

void PoolDesk::tickNone() {
    m_ticked.clear();
    look();
}

QString PoolDesk::summary() const {
    const auto count = static_cast<int>(m_pool.size());
    std::set<QString> shown;
    for (const auto& line : m_items.lines())
        shown.insert(line.item);
    const auto counted = [&](auto isSo) {
        return std::ranges::count_if(
            m_pool, [&](const PoolItem& item) { return isSo(item) && shown.contains(inward(item.facts.id.text())); });
    };
    const auto fillable = counted([](const PoolItem& item) { return item.fillable; });
    const auto condemned = counted([](const PoolItem& item) { return item.condemned; });
    return joined({m_items.count() == count ? tr("%n items", nullptr, count)
                                            : tr("%1 of %n items", nullptr, count).arg(m_items.count()),
                   m_kind == QStringLiteral("cylinder") ? tr("may be filled: %1").arg(fillable) : QString(),
                   condemned > 0 ? tr("condemned: %1").arg(condemned) : QString(),
                   renewing() ? tr("the list is being renewed …") : QString()},
                  QStringLiteral(" · "));
}

bool PoolDesk::renewing() const { return m_ready && (m_asking || house().fleet.asking()); }

int PoolDesk::away() const { return static_cast<int>(std::ranges::count_if(m_pool, isAway)); }

std::vector<const PoolItem*> PoolDesk::tickedItems() const {
    std::vector<const PoolItem*> items;
    for (const auto& item : m_pool)
        if (m_ticked.contains(item.facts.id))
            items.push_back(&item);
    return items;
}

QStringList PoolDesk::ticked() const {
    QStringList names;
    for (const auto* item : tickedItems())
        names += inward(item->facts.id.text());
    return names;
}

template <class IsSo>
bool PoolDesk::all(IsSo isSo) const {
    const auto items = tickedItems();
    return !renewing() && !items.empty() &&
           std::ranges::all_of(items, [&](const PoolItem* item) { return isSo(*item); });
}

bool PoolDesk::maySend() const {
    return all([](const PoolItem& item) { return !item.facts.out; });
}
bool PoolDesk::mayReturn() const { return all(isAway); }
bool PoolDesk::mayFill() const {
    return all([](const PoolItem& item) { return item.fillable; });
}

}
