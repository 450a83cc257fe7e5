// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/desk/fleet.h"

#include "answers/due.h"
#include "screen/desk/day.h"
#include "screen/desk/house.h"
#include "screen/desk/record_desk.h"
#include "words/sentence.h"
#include "words/words.h"

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

const DueRow* firstThatCounts(const FleetSheet& sheet, const RowNumbers& numbers) {
    for (const auto number : numbers)
        if (isRequired(sheet.due.rows[number].state))
            return &sheet.due.rows[number];
    return nullptr;
}

template <class Key, class Value>
const Value* found(const std::unordered_map<Key, Value>& map, const Key& key) {
    const auto at = map.find(key);
    return at == map.end() ? nullptr : &at->second;
}

}

const DueRow* FleetSheet::worstOf(const ItemId& item) const {
    const auto* rows = found(rowsOfItem, item);
    return rows ? firstThatCounts(*this, *rows) : nullptr;
}

const Headline& FleetSheet::headlineOf(const Registration& balloon) const {
    static const Headline none;
    const auto* headline = found(headlines, balloon);
    return headline ? *headline : none;
}

const BalloonCard* FleetSheet::card(const Registration& balloon) const {
    const auto at = std::find_if(balloons.begin(), balloons.end(),
                                 [&](const BalloonCard& each) { return each.balloon == balloon; });
    return at == balloons.end() ? nullptr : &*at;
}

const ItemFacts* FleetSheet::item(const ItemId& item) const {
    const auto* facts = found(items, item);
    return facts ? *facts : nullptr;
}

Result<Sheet> fleetSheet(Books& books, CivilDate on) {
    auto list = due(books, {}, on);
    if (!list)
        return tl::unexpected(list.error());
    auto cards = books.balloons(on);
    if (!cards)
        return tl::unexpected(cards.error());

    auto sheet = std::make_shared<FleetSheet>();
    sheet->on = on;
    sheet->due = std::move(*list);
    sheet->balloons = std::move(*cards);
    for (std::uint32_t number = 0; number < sheet->due.rows.size(); ++number) {
        const auto& item = *sheet->due.rows[number].item;
        sheet->rowsOfItem[item.id].push_back(number);
        if (item.balloon)
            sheet->rowsOfBalloon[*item.balloon].push_back(number);
    }
    auto titles = std::make_shared<words::Titles>();
    for (const auto& adoption : sheet->due.obligations->adoptions())
        for (const auto& requirement : adoption.programme->requirements)
            (*titles)[requirement.id] = words::said(requirement.title).toStdString();
    sheet->titles = std::move(titles);
    for (const auto& item : sheet->due.items) {
        sheet->items.emplace(item.id, &item);
        if (item.balloon)
            sheet->itemsOfBalloon[*item.balloon].push_back(&item);
    }
    for (auto& [balloon, items] : sheet->itemsOfBalloon)
        std::sort(items.begin(), items.end(), [](const ItemFacts* a, const ItemFacts* b) {
            return std::tie(a->kind, a->place, a->id) < std::tie(b->kind, b->place, b->id);
        });
    auto governing = headlines(books, sheet->due, true);
    if (!governing)
        return tl::unexpected(governing.error());
    sheet->headlines = std::move(*governing);
    return Sheet(std::move(sheet));
}

Fleet::Fleet(const Day& day, RecordDesk& desk) : m_day(day), m_desk(desk) {
    connect(&m_day, &Day::changed, this, &Fleet::askAgain);
    connect(&m_desk, &RecordDesk::changed, this, &Fleet::askAgain);
}

Fleet* Fleet::create(QQmlEngine* engine, QJSEngine*) { return lent(House::of(*engine).fleet); }

std::shared_ptr<const words::Titles> Fleet::titles() const {
    return m_sheet ? m_sheet->titles : std::make_shared<const words::Titles>();
}

bool Fleet::empty() const { return m_sheet && m_sheet->balloons.empty() && m_sheet->due.items.empty(); }

void Fleet::askAgain() {
    if (!m_desk.isOpen())
        return;
    const auto turn = ++m_turn;
    setAsking(true);
    const auto on = m_day.date();
    hear(m_desk.ask([on](Record& record) { return fleetSheet(record, on); }), this,
         [this, turn](const Result<Sheet>& answer) {
             if (turn != m_turn)
                 return;
             m_problem = answer ? QString() : Words::problem(answer.error());
             if (answer)
                 m_sheet = *answer;
             emit changed();
             setAsking(false);
         });
}

void Fleet::setAsking(bool asking) {
    if (m_asking == asking)
        return;
    m_asking = asking;
    emit askingChanged();
}

}
