// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/directives/book.h"

#include <algorithm>
#include <functional>
#include <map>

namespace crownring {

namespace {

Result<std::vector<ItemFacts>> inService(Books& books, CivilDate on) {
    auto facts = books.facts({}, on);
    if (facts)
        std::erase_if(*facts, [](const ItemFacts& item) { return item.out.has_value(); });
    return facts;
}

/// What is fitted to each balloon, out of service or not.
using OnBalloons = std::map<Registration, std::vector<const ItemFacts*>>;

OnBalloons onBalloons(const std::vector<ItemFacts>& items) {
    OnBalloons on;
    for (const auto& item : items)
        if (item.balloon)
            on[*item.balloon].push_back(&item);
    return on;
}

}

DirectiveShare shareOf(const DirectiveRow& row) {
    const auto applies = row.applicability.applies;
    if (applies == Truth::No)
        return DirectiveShare::NotBound;
    if (applies == Truth::Unknown && row.done.empty())
        return DirectiveShare::Unknown;
    const bool isHeld = row.life == DirectiveRow::Life::InForce;
    if (isHeld && row.state.standing <= Standing::Lapsed)
        return row.atOnce ? DirectiveShare::AtOnce : DirectiveShare::Overdue;
    if (isHeld && row.state.standing == Standing::Unproven)
        return DirectiveShare::Open; // what is not known is not answered
    return row.done.empty() ? DirectiveShare::Open : DirectiveShare::Answered;
}

int DirectiveLine::count(DirectiveShare share) const {
    return static_cast<int>(
        std::ranges::count_if(rows, [&](const DirectiveRow* row) { return shareOf(*row) == share; }));
}

int DirectiveLine::bound() const {
    return count(DirectiveShare::Overdue) + count(DirectiveShare::AtOnce) + count(DirectiveShare::Open) +
           count(DirectiveShare::Answered);
}

Result<std::shared_ptr<const DirectiveBook>> directiveBook(Books& books, CivilDate on) {
    auto book = std::make_shared<DirectiveBook>();
    auto issued = directivesIssued(books, on);
    if (!issued)
        return tl::unexpected(issued.error());
    if (issued->empty())
        return std::shared_ptr<const DirectiveBook>(book);
    auto items = inService(books, on);
    if (!items)
        return tl::unexpected(items.error());
    book->items = std::move(*items);
    auto rows = directiveRows(books, book->items, {on, {}, {}, true});
    if (!rows)
        return tl::unexpected(rows.error());
    book->rows = std::move(*rows);
    const auto lives = livesOn(*issued, on);
    for (std::size_t at = 0; at < issued->size(); ++at) {
        DirectiveLine line{(*issued)[at], lives[at], {}};
        for (const auto& row : book->rows)
            if (row.directive == line.issued.body)
                line.rows.push_back(&row);
        std::ranges::stable_sort(line.rows, {}, [](const DirectiveRow* row) { return shareOf(*row); });
        book->lines.push_back(std::move(line));
    }
    const auto place = [](DirectiveRow::Life life) {
        return life == DirectiveRow::Life::InForce ? 0 : life == DirectiveRow::Life::Upcoming ? 1 : 2;
    };
    std::ranges::stable_sort(book->lines, [&](const DirectiveLine& a, const DirectiveLine& b) {
        return place(a.life) != place(b.life) ? place(a.life) < place(b.life)
                                              : b.issued.body.effective < a.issued.body.effective;
    });
    return std::shared_ptr<const DirectiveBook>(book);
}

Result<std::vector<BoundItem>> wouldBind(Books& books, const AppliesTo& applies, CivilDate on) {
    const auto items = books.facts({}, on);
    if (!items)
        return tl::unexpected(items.error());
    auto parts = applies.fitted.empty() ? PartsKnown::withoutLists(books) : PartsKnown::read(books, on);
    if (!parts)
        return tl::unexpected(parts.error());
    const auto fitted = onBalloons(*items);
    std::vector<BoundItem> bound;
    for (const auto& item : *items) {
        if (item.out || std::ranges::find(applies.kinds, item.kind) == applies.kinds.end())
            continue;
        const std::vector<const ItemFacts*> alone{&item};
        const auto beside = item.balloon ? fitted.find(*item.balloon) : fitted.end();
        bound.push_back({item, appliesTo(applies, item, beside == fitted.end() ? alone : beside->second, *parts)});
    }
    std::ranges::stable_sort(bound, std::greater(), [](const BoundItem& each) { return each.applicability.applies; });
    return bound;
}

}
