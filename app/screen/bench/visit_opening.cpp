// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/bench/visit_opening.h"

#include "rules/due/directive_rows.h"
#include "screen/desk/day.h"
#include "screen/desk/due_model.h"
#include "screen/desk/fleet.h"
#include "screen/desk/habits.h"
#include "screen/desk/house.h"
#include "screen/desk/record_desk.h"
#include "words/bench_words.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <algorithm>
#include <utility>

namespace crownring::screen {

using namespace words;

void VisitOpening::movedIn() {
    connect(&house().fleet, &Fleet::changed, this, &VisitOpening::look);
    connect(&house().habits, &Habits::changed, this, &VisitOpening::changed);
    showVisits();
    look();
}

void VisitOpening::look() {
    const auto before = std::exchange(m_sheet, house().fleet.sheet());
    if (!m_sheet || !m_sheet->mends(before)) {
        showChoices();
        if (isEventUnknown())
            askOffer();
        return;
    }
    for (const auto& item : m_sheet->mend().items)
        m_items.change(choiceOf(*m_sheet->item(item)));
    if (isEventUnknown())
        askOffer(); // it may have been reported meanwhile
}

void VisitOpening::begin(const QString& balloon) {
    m_visitChosen = false;
    m_wanted.reset();
    m_visit.clear();
    m_words.clear();
    m_order.clear();
    setBalloon(balloon);
}

void VisitOpening::beginRectification(const QString& balloon, const QString& item, const QString& requirement) {
    begin(balloon);
    m_wanted = Work{ItemId(outward(item)), RequirementId(outward(requirement))};
}

void VisitOpening::setBalloon(const QString& balloon) {
    m_balloon = balloon;
    m_chosen.clear();
    if (const auto sheet = house().fleet.sheet())
        for (const auto* item : sheet->itemsOf(Registration(outward(balloon))))
            m_chosen.insert(item->id);
    showChoices();
    askOffer();
}

void VisitOpening::setVisit(const QString& visit) {
    m_visit = visit;
    m_visitChosen = true;
    dropFitted();
    showVisits();
    showChoices();
    askOffer();
}

/// What is fitted is no component by itself.
void VisitOpening::dropFitted() {
    const auto visit = visitFrom(outward(m_visit));
    if (visit && isOfComponents(*visit) && m_sheet)
        std::erase_if(m_chosen, [&](const ItemId& id) {
            const auto* item = m_sheet->item(id);
            return item && item->balloon;
        });
}

void VisitOpening::setWords(const QString& words) {
    m_words = words;
    showChoices();
}

QString VisitOpening::inspector() const { return house().habits.inspector(); }

void VisitOpening::setInspector(const QString& inspector) { house().habits.setInspector(inspector); }

int VisitOpening::chosenWork() const { return static_cast<int>(m_work.size()); }

void VisitOpening::toggleItem(const QString& item) {
    const ItemId id(outward(item));
    if (m_chosen.erase(id) == 0)
        m_chosen.insert(id);
    showChoices();
    askOffer();
}

void VisitOpening::toggleWork(const QString& value) {
    const auto number = static_cast<std::size_t>(value.toULongLong());
    if (m_work.erase(number) == 0)
        m_work.insert(number);
    showProposals();
    emit changed();
}

Choice VisitOpening::choiceOf(const ItemFacts& item) const {
    const auto* worst = m_sheet->worstOf(item.id);
    return {inward(item.id.text()),
            inward(item.id.text()),
            joined({Words::kind(item.kind), inward(item.type.value_or("")),
                    item.balloon ? inward(item.balloon->text()) : tr("in the pool")},
                   QStringLiteral(" · ")),
            -1,
            worst ? static_cast<int>(reckonedAs(worst->state)) : -1,
            m_chosen.contains(item.id)};
}

void VisitOpening::showChoices() {
    if (!m_sheet)
        return;
    std::vector<Choice> balloons{{QString(), tr("loose items"), {}, -1, -1, m_balloon.isEmpty()}};
    for (const auto& card : m_sheet->balloons()) {
        const auto name = inward(card.balloon.text());
        balloons.push_back({name,
                            card.title.empty() ? name : tr("%1, %2").arg(name, inward(card.title)),
                            {},
                            -1,
                            -1,
                            m_balloon == name});
    }
    m_balloons.show(std::move(balloons));
    const auto words = m_words.split(u' ', Qt::SkipEmptyParts);
    const auto balloon = m_balloon.isEmpty() ? std::nullopt : std::optional(Registration(outward(m_balloon)));
    const auto visit = m_visitChosen ? visitFrom(outward(m_visit)) : std::nullopt;
    const bool looseOnly = visit && isOfComponents(*visit);
    std::vector<Choice> items;
    for (const auto& item : m_sheet->items()) {
        if (looseOnly && item.balloon)
            continue;
        const bool here = item.balloon == balloon && (balloon || words.isEmpty());
        if (!here && words.isEmpty() && !m_chosen.contains(item.id))
            continue;
        auto choice = choiceOf(item);
        const auto text = choice.label + u' ' + choice.detail;
        const bool wanted = !words.isEmpty() && std::all_of(words.begin(), words.end(), [&](const QString& word) {
            return text.contains(word, Qt::CaseInsensitive);
        });
        if (choice.chosen || here || wanted)
            items.push_back(std::move(choice));
    }
    std::stable_sort(items.begin(), items.end(), [](const Choice& a, const Choice& b) { return a.chosen > b.chosen; });
    m_items.show(std::move(items));
    emit changed();
}

/// Whose rules bind what comes in, where that is one; what no rule binds yet may come under either.
std::optional<Regime> VisitOpening::onlyRegime() const {
    std::optional<Regime> only;
    if (!m_offer)
        return only;
    for (const auto& row : m_offer->due.rows)
        for (const auto visit : allVisits) {
            if (!accomplishes(visit, row.requirement->id))
                continue;
            if (only && *only != regimeOf(visit))
                return std::nullopt;
            only = regimeOf(visit);
        }
    return only;
}

void VisitOpening::showVisits() {
    std::vector<Choice> visits;
    const auto regime = onlyRegime();
    for (const auto visit : allVisits) {
        if ((regime && regimeOf(visit) != *regime) || (isOfComponents(visit) && !m_balloon.isEmpty()))
            continue;
        const auto value = inward(visitName(visit));
        visits.push_back({value, words::said(termOf(visit)), {}, -1, -1, value == m_visit});
    }
    m_visits.show(std::move(visits));
}

void VisitOpening::askOffer() {
    const auto turn = ++m_turn;
    m_offer.reset();
    m_work.clear();
    m_problem.clear();
    m_proposals.show({});
    m_directives.show({});
    m_asking = !m_chosen.empty();
    emit changed();
    if (m_chosen.empty())
        return;
    using Answer = Result<std::shared_ptr<const Offer>>;
    const std::vector<ItemId> items(m_chosen.begin(), m_chosen.end());
    const auto visit = m_visitChosen ? visitFrom(outward(m_visit)) : std::nullopt;
    hear(house().desk.ask([items, on = house().day.date(), visit](Record& record) -> Answer {
        auto offer = offerInspection(record, std::nullopt, items, on, visit);
        if (!offer)
            return tl::unexpected(offer.error());
        return std::make_shared<const Offer>(std::move(*offer));
    }),
         this, [this, turn](const Answer& answer) {
             if (turn != m_turn)
                 return;
             m_asking = false;
             m_problem = answer ? QString() : Words::problem(answer.error());
             if (answer)
                 takeOffer(*answer);
             emit changed();
         });
}

void VisitOpening::takeOffer(const std::shared_ptr<const Offer>& offer) {
    m_offer = offer;
    if (m_wanted && !m_visitChosen) // by now it is known whose rules bind the balloon
        return setVisit(inward(
            visitName(regimeOf(offer->visit) == Regime::PartMl ? Visit::PartMlRectification : Visit::UsRectification)));
    for (std::size_t i = 0; i < m_offer->proposals.size(); ++i) {
        const auto& each = m_offer->proposals[i];
        if (each.due ||
            (m_wanted && m_wanted->item == each.row->item->id && m_wanted->requirement == each.row->requirement->id))
            m_work.insert(i);
    }
    if (!m_visitChosen)
        m_visit = inward(visitName(m_offer->visit));
    showVisits();
    showProposals();
    showDirectives();
}

void VisitOpening::showDirectives() {
    std::vector<Choice> rows;
    for (const auto& row : m_offer->due.rows)
        if (const auto directive = directiveOf(row.requirement->id);
            directive && row.requirement->force == Force::Mandatory && row.state.standing < Standing::Clear)
            rows.push_back({inward(directive->text()), words::said(row.requirement->title),
                            joined({inward(row.item->id.text()), Words::standing(row.state), DueTexts::left(row),
                                    Words::because(row)},
                                   QStringLiteral(" · ")),
                            -1, static_cast<int>(reckonedAs(row.state)), false});
    m_directives.show(std::move(rows));
}

void VisitOpening::showProposals() {
    std::vector<Choice> rows;
    for (std::size_t i = 0; m_offer && i < m_offer->proposals.size(); ++i) {
        const auto& row = *m_offer->proposals[i].row;
        const auto force = row.requirement->force == Force::Recommended ? tr("recommended") : QString();
        rows.push_back({QString::number(i), words::said(row.requirement->title),
                        joined({inward(row.item->id.text()), force, Words::standing(row.state), DueTexts::left(row),
                                Words::because(row)},
                               QStringLiteral(" · ")),
                        row.requirement->force == Force::Recommended ? 1 : 0, static_cast<int>(reckonedAs(row.state)),
                        m_work.contains(i)});
    }
    std::ranges::stable_sort(rows, {}, &Choice::number);
    m_proposals.show(std::move(rows));
}

void VisitOpening::openIt() {
    if (!canOpen())
        return;
    Opening opening;
    opening.visit = visitFrom(outward(m_visit)).value_or(Visit::PartMlInspection);
    if (!m_balloon.isEmpty())
        opening.balloon = Registration(outward(m_balloon));
    if (const auto sheet = house().fleet.sheet()) {
        for (const auto& id : m_chosen)
            opening.items.push_back(id);
        std::ranges::sort(opening.items, {}, [&](const ItemId& id) {
            const auto* item = sheet->item(id);
            return std::tuple(item ? item->kind : ItemKind::Other, id);
        });
    }
    for (const auto number : m_work) {
        const auto& row = *m_offer->proposals[number].row;
        opening.work.push_back({row.item->id, row.requirement->id});
    }
    opening.on = house().day.date();
    opening.by = outward(inspector().trimmed());
    opening.order = outward(m_order.trimmed());
    m_asking = true;
    emit changed();
    using Answer = Results<InspectionId>;
    hear(house().desk.ask([opening](Record& record) -> Answer { return openInspection(record, record, opening); }),
         this, [this](const Answer& answer) {
             m_asking = false;
             m_problem = answer ? QString() : Words::problems(answer.error());
             emit changed();
             if (!answer)
                 return;
             house().desk.written();
             emit opened(inward(answer->text()));
         });
}

}
