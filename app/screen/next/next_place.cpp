// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/next_place.h"

#include "screen/desk/house.h"
#include "words/border.h"
#include "words/words.h"

#include <QtConcurrent>

#include <algorithm>
#include <array>
#include <set>

namespace crownring::screen {

using namespace words;

namespace {
/// As they are remembered.
const std::array<QString, groupingCount> groupingNames{QStringLiteral("none"), QStringLiteral("balloon"),
                                                       QStringLiteral("visit"), QStringLiteral("requirement")};
}

void NextPlace::movedIn() {
    const auto kept = std::ranges::find(groupingNames, house().habits.grouping());
    if (kept != groupingNames.end())
        m_sieve.grouping = static_cast<Grouping>(kept - groupingNames.begin());
    m_sieve.mine = house().habits.looked();
    connect(&house().fleet, &Fleet::listed, this, &NextPlace::look);
    connect(&house().habits, &Habits::mineChanged, this, [this] {
        if (m_sieve.mine == house().habits.looked())
            return;
        m_sieve.mine = house().habits.looked();
        changeFilter();
    });
    look();
}

void NextPlace::setGrouping(int grouping) {
    if (grouping < 0 || grouping >= groupingCount || (grouping == this->grouping() && !m_sieve.within))
        return;
    m_sieve.grouping = static_cast<Grouping>(grouping);
    m_sieve.within.reset();
    m_groups.show({}); // groups of one sort never stand under the name of another
    house().habits.setGrouping(groupingNames[static_cast<std::size_t>(grouping)]);
    changeFilter();
}

void NextPlace::openGroup(int row) {
    if (!isGrouped() || row < 0 || row >= m_groups.count())
        return;
    const auto& line = m_groups.lines()[static_cast<std::size_t>(row)];
    m_within = m_sieve.grouping == Grouping::Visit ? tr("%1 · %2").arg(line.title, line.governs) : line.title;
    m_sieve.within = line.key;
    changeFilter();
}

void NextPlace::leaveGroup() {
    m_sieve.within.reset();
    changeFilter();
}

void NextPlace::setWords(const QString& words) {
    if (words == m_sieve.words)
        return;
    m_sieve.words = words;
    changeFilter();
}

QString NextPlace::balloon() const { return m_sieve.balloon ? inward(m_sieve.balloon->text()) : QString(); }

void NextPlace::setBalloon(const QString& balloon) {
    if (balloon == this->balloon())
        return;
    m_sieve.balloon = balloon.isEmpty() ? std::nullopt : std::optional(Registration(outward(balloon)));
    changeFilter();
}

QString NextPlace::kind() const { return m_sieve.kind ? inward(itemKindName(*m_sieve.kind)) : QString(); }

void NextPlace::setKind(const QString& kind) {
    if (kind == this->kind())
        return;
    m_sieve.kind = itemKindFrom(outward(kind));
    changeFilter();
}

void NextPlace::setStanding(int standing) {
    const auto wanted =
        standing < 0 || standing >= reckonedCount ? std::nullopt : std::optional(static_cast<Reckoned>(standing));
    if (wanted == m_sieve.reckoned)
        return;
    m_sieve.reckoned = wanted;
    changeFilter();
}

void NextPlace::setSoonestFirst(bool soonest) {
    if (soonest == soonestFirst())
        return;
    m_sieve.order = soonest ? DueOrder::Soonest : DueOrder::Worst;
    changeFilter();
}

bool NextPlace::filtered() const {
    return m_sieve.within || m_sieve.balloon || m_sieve.kind || m_sieve.reckoned || m_sieve.bin ||
           !m_sieve.words.isEmpty();
}

void NextPlace::chooseCalendarBin(int bin) { chooseBin({false, bin}); }
void NextPlace::chooseUseBin(int bin) { chooseBin({true, bin}); }

void NextPlace::chooseBin(Place place) {
    const bool again = m_sieve.bin && m_sieve.bin->byUse == place.byUse && m_sieve.bin->bin == place.bin &&
                       m_sieve.lastBin <= place.bin;
    m_sieve.lastBin = -1;
    m_sieve.bin = again || place.bin < 0 ? std::nullopt : std::optional(place);
    changeFilter();
}

void NextPlace::stretchTo(int calendarBin) {
    const int from = this->calendarBin();
    if (from < 0 || calendarBin < 0)
        return chooseCalendarBin(calendarBin);
    m_sieve.bin = Place{false, std::min(from, calendarBin)};
    m_sieve.lastBin = std::max(from, calendarBin);
    changeFilter();
}

int NextPlace::weeks() const { return calendarBin() == UnprovenBin ? std::max(0, m_sieve.lastBin - OverdueBin) : 0; }

bool NextPlace::holds(const QString& item, const QString& requirement) const {
    if (!m_shown)
        return false;
    Spread spread;
    const RequirementId wanted(outward(requirement));
    const std::array items{ItemId(outward(item))};
    return std::ranges::any_of(siftItems(*m_shown, items, m_sieve, spread, 1),
                               [&](const DueRow* row) { return row->requirement->id == wanted; });
}

void NextPlace::chooseWeeks(int weeks) {
    const int last = OverdueBin + std::clamp(weeks, 1, weeksShown);
    const bool again = this->weeks() == weeks;
    m_sieve.bin = again ? std::nullopt : std::optional(Place{false, UnprovenBin});
    m_sieve.lastBin = again ? -1 : last;
    changeFilter();
}

void NextPlace::clearFilters() {
    DueSieve all;
    all.order = m_sieve.order;
    all.grouping = m_sieve.grouping;
    all.mine = m_sieve.mine;
    m_sieve = std::move(all);
    changeFilter();
}

void NextPlace::changeFilter() {
    emit filterChanged();
    siftAgain();
}

void NextPlace::look() {
    const auto& sheet = house().fleet.list();
    if (!sheet)
        return;
    if (m_sifting || !m_shown)
        siftAgain();
    else if (sheet->mends(m_shown) && !isGrouped())
        mend(sheet);
    else if (sheet->hasRowsOf(m_shown) && !isGrouped())
        showChoices(*(m_shown = sheet));
    else
        siftAgain();
}

void NextPlace::siftAgain() {
    const auto sheet = house().fleet.list();
    if (!sheet)
        return;
    const auto turn = ++m_turn;
    m_sifting = true;
    hear(QtConcurrent::run([sheet, sieve = m_sieve] { return sift(*sheet, sieve); }), this,
         [this, turn, sheet](const Sifted& sifted) {
             if (turn == m_turn)
                 take(sheet, sifted);
         });
}

void NextPlace::take(const Sheet& sheet, Sifted sifted) {
    m_sifting = false;
    m_shown = sheet;
    m_spread = sifted.spread;
    m_list.show(sheet, sifted.rows);
    m_groups.show(std::move(sifted.groups));
    showChoices(*sheet);
    showSpread(*sheet);
    if (sheet != house().fleet.list())
        look();
}

void NextPlace::mend(const Sheet& sheet) {
    const auto& items = sheet->mend().items;
    const auto gone = siftItems(*m_shown, items, m_sieve, m_spread, -1);
    const auto come = siftItems(*sheet, items, m_sieve, m_spread, 1);
    m_list.mend(sheet, gone, come,
                [order = m_sieve.order](const DueRow& a, const DueRow& b) { return comesFirst(a, b, order); });
    m_shown = sheet;
    showSpread(*sheet);
}

void NextPlace::showSpread(const FleetSheet& sheet) {
    m_calendar.showCalendar(sheet.on(), m_spread.calendar, m_spread.offCalendar);
    m_use.showUse(m_spread.use, m_spread.offUse);
    std::vector<Choice> standings;
    for (int at = 0; at < reckonedCount; ++at)
        standings.push_back({QString::number(at),
                             Words::standing(static_cast<Reckoned>(at)),
                             {},
                             m_spread.bySort[static_cast<std::size_t>(at)],
                             at,
                             standing() == at});
    m_standings.show(std::move(standings));
    const auto all = sheet.rowCount();
    const auto shown = static_cast<std::size_t>(m_list.count());
    m_summary = shown == all ? tr("%1 requirements").arg(all) : tr("%1 of %2 requirements").arg(shown).arg(all);
    m_range = m_sieve.bin ? tr("%1 · left out: %2").arg(binText(sheet.on()), HorizonModel::told(m_spread.leftOut))
                          : QString();
    m_ready = true;
    emit listed();
}

QString NextPlace::binText(CivilDate on) const {
    if (const auto last = m_sieve.upTo(on))
        return tr("overdue, unproven, near by hours, or due up to %1").arg(inward(last->iso()));
    const auto& lane = m_sieve.bin->byUse ? m_use : m_calendar;
    const auto first = lane.label(m_sieve.bin->bin);
    return m_sieve.lastBin <= m_sieve.bin->bin ? first : tr("%1 to %2").arg(first, lane.label(m_sieve.lastBin));
}

void NextPlace::showChoices(const FleetSheet& sheet) {
    std::vector<Choice> balloons{{{}, tr("every balloon"), {}, -1, -1, !m_sieve.balloon}};
    for (const auto& card : sheet.balloons())
        if (card.inService() && m_sieve.mine.holds(card.balloon))
            balloons.push_back({inward(card.balloon.text()), inward(card.balloon.text()), inward(card.title), -1, -1,
                                m_sieve.balloon == card.balloon});
    m_balloons.show(std::move(balloons));

    std::set<ItemKind> present;
    for (const auto& item : sheet.items())
        present.insert(item.kind);
    std::vector<Choice> kinds{{{}, tr("every kind"), {}, -1, -1, !m_sieve.kind}};
    for (const auto each : present)
        kinds.push_back({inward(itemKindName(each)), Words::kinds(each), {}, -1, -1, m_sieve.kind == each});
    m_kinds.show(std::move(kinds));
}

}
