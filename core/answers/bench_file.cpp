// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/bench_file.h"

#include "answers/type_book.h"

#include <algorithm>
#include <map>

namespace crownring {

namespace {

Result<void> readTypes(Books& books, BenchFile& file) {
    auto book = typeBook(books, file.on);
    if (!book)
        return tl::unexpected(book.error());
    file.types = std::move(book->types);
    file.limits = std::move(book->limits);
    return {};
}

Result<void> readCalibrations(Books& books, BenchFile& file) {
    const auto told = books.told({Subject::Tester, {}, {}, file.on});
    if (!told)
        return tl::unexpected(told.error());
    for (const auto& line : *told)
        if (const auto* calibrated = std::get_if<TesterCalibrated>(&nowOf(line).body))
            file.calibrations.push_back({calibrated->tester, calibrated->what, nowOf(line).on, calibrated->until});
    return {};
}

Result<void> readItems(Books& books, BenchFile& file) {
    const auto& opened = file.inspection.opened.body;
    auto facts = books.facts({std::nullopt, opened.items}, file.on);
    if (!facts)
        return tl::unexpected(facts.error());
    file.items = std::move(*facts);
    if (file.inspection.closed)
        for (const auto& each : file.inspection.closed->body.clocks)
            if (const auto item = std::ranges::find(file.items, each.item, &ItemFacts::id); item != file.items.end())
                item->clock = each.clock;
    if (!opened.balloon)
        return {};
    const auto cards = books.balloons(file.on);
    if (!cards)
        return tl::unexpected(cards.error());
    if (const auto card = std::ranges::find(*cards, *opened.balloon, &BalloonCard::balloon); card != cards->end()) {
        file.balloonTitle = card->title;
        file.operations = card->operations;
    }
    return {};
}

}

Result<std::vector<Entitlement>> entitlementsOn(Books& books, CivilDate on) {
    const auto told = books.told({Subject::Person, {}, {}, on});
    if (!told)
        return tl::unexpected(told.error());
    std::vector<Entitlement> entitlements;
    for (const auto& line : *told)
        if (const auto* said = std::get_if<PersonEntitled>(&nowOf(line).body))
            if (auto entitlement = entitlementFrom(*said, nowOf(line).on))
                entitlements.push_back(std::move(*entitlement));
    return entitlements;
}

Result<BenchFile> benchFile(Books& books, const InspectionId& id, CivilDate on) {
    const auto told = books.told({Subject::Inspection, id.text(), {}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    auto inspection = inspectionFrom(id, *told);
    if (!inspection)
        return tl::unexpected(inspection.error());
    BenchFile file;
    file.inspection = std::move(*inspection);
    // What was signed is read as of the day of the signature, whenever it is asked for.
    const auto& closed = file.inspection.closed;
    file.on = closed ? std::min(on, closed->stamp.at.on()) : on;
    auto entitlements = entitlementsOn(books, file.on);
    if (!entitlements)
        return tl::unexpected(entitlements.error());
    file.entitlements = std::move(*entitlements);
    return readItems(books, file)
        .and_then([&] { return readCalibrations(books, file); })
        .and_then([&] { return readTypes(books, file); })
        .map([&] { return std::move(file); });
}

Result<std::vector<InspectionCard>> inspectionsOn(Books& books, CivilDate on) {
    const auto told =
        books.told({Subject::Inspection, {}, {kindName<InspectionOpened>(), kindName<InspectionClosed>()}, on});
    if (!told)
        return tl::unexpected(told.error());
    std::vector<InspectionCard> cards;
    std::map<InspectionId, std::size_t> places;
    for (const auto& line : *told) {
        const auto& now = nowOf(line);
        if (const auto* opened = std::get_if<InspectionOpened>(&now.body)) {
            if (places.emplace(opened->inspection, cards.size()).second)
                cards.push_back(
                    {opened->inspection, opened->visit, opened->balloon, opened->items, now.on, now.by, {}, {}, {}});
        } else if (const auto* closed = std::get_if<InspectionClosed>(&now.body)) {
            const auto place = places.find(closed->inspection);
            if (place == places.end() || cards[place->second].outcome)
                continue;
            auto& card = cards[place->second];
            card.outcome = closed->outcome;
            card.closed = now.on;
            card.signatory = closed->signatory;
        }
    }
    std::ranges::stable_sort(cards, [](const InspectionCard& a, const InspectionCard& b) {
        if (a.outcome.has_value() != b.outcome.has_value())
            return !a.outcome.has_value();
        return (a.closed ? *a.closed : a.opened) > (b.closed ? *b.closed : b.opened);
    });
    return cards;
}

}
