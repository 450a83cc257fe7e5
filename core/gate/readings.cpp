// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/type_book.h"
#include "bench/reading/doubt.h"
#include "bench/reading/series.h"
#include "gate/checks.h"
#include "gate/defects/read_again.h"
#include "gate/refusing.h"
#include "problem/faults/reading_fault.h"

#include <algorithm>

namespace crownring {

namespace {

/// More than any envelope has of which nobody described the type: a slip of the pen. Common practice, no source.
constexpr int mostGores = 64, mostPanelRows = 60;

/// A figure that no test gives would stand as the last that was read there.
std::optional<Problem> askFigure(const ReadingTaken& reading) {
    const auto measured = measuredFrom(reading);
    if (!measured) // a quantity of the shop's own is kept as it is
        return measured.error().fault == Fault(ReadingFault::NoQuantity) ? std::nullopt
                                                                         : std::optional(measured.error());
    const auto* quantity = quantityNamed(reading.quantity);
    const auto* unit = quantity ? unitNamed(reading.unit, quantity->dimension) : nullptr;
    const auto question = unit && !reading.confirmed ? doubt(*measured, *unit) : std::nullopt;
    if (!question)
        return std::nullopt;
    return Problem{ReadingFault::Unconfirmed, {question->question}, atKey(reading.held ? "held_at" : "value")};
}

/// Most manuals say nothing of how long a load is to be held; then no reading needs be held against them.
Result<bool> isAnyHoldStated(Books& books) {
    const auto told = books.told({Subject::Type, {}, {kindName<LimitStated>()}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    return std::ranges::any_of(*told, [](const JournalLine& line) {
        const auto* limit = std::get_if<LimitStated>(&nowOf(line).body);
        return limit && limit->seconds;
    });
}

/// A load that was let go at once, or sooner than the manual has it held.
/// @param stated whether any manual says how long; asked once of a batch
Result<std::optional<Problem>> askHold(Books& books, const ReadingTaken& reading, CivilDate on,
                                       std::optional<bool>& stated) {
    if (reading.circumstances.seconds == 0.0)
        return Problem{ReadingFault::HeldForNothing, {}, atKey("hold_s")};
    const auto measured = measuredFrom(reading);
    if (!reading.held || reading.confirmed || !measured)
        return std::nullopt;
    if (!stated) {
        const auto asked = isAnyHoldStated(books);
        if (!asked)
            return tl::unexpected(asked.error());
        stated = *asked;
    }
    if (!*stated)
        return std::nullopt;
    const auto limits = limitsOn(books, reading.item, on);
    if (!limits)
        return tl::unexpected(limits.error());
    if (auto question = heldTooShort(reading, *measured, *limits))
        return Problem{ReadingFault::Unconfirmed, {std::move(*question)}, atKey("hold_s")};
    return std::nullopt;
}

Argument kindsOf(const Quantity& quantity) {
    Listed kinds{{}, Listed::Joined::Or};
    for (const auto kind : quantity.kinds)
        kinds.list.emplace_back(termOf(kind));
    return kinds;
}

/// A runner is worn on a basket; on an envelope the figure would stand for something else.
Result<std::optional<Problem>> askItem(Books& books, const ReadingTaken& reading) {
    const auto* quantity = quantityNamed(reading.quantity);
    if (!quantity || quantity->kinds.empty())
        return std::nullopt;
    const auto facts = books.facts({std::nullopt, {reading.item}}, CivilDate::last());
    if (!facts)
        return tl::unexpected(facts.error());
    if (facts->empty() || quantity->isReadOf(facts->front().kind))
        return std::nullopt;
    return Problem{ReadingFault::OtherItem,
                   {termOf(*quantity), termOf(facts->front().kind), kindsOf(*quantity)},
                   atKey("quantity")};
}

std::optional<Problem> beyondAny(const PanelPlace& place) {
    if (place.gore && *place.gore > mostGores)
        return Problem{ReadingFault::NoSuchGore, {*place.gore, mostGores}, atKey("gore")};
    if (place.row && *place.row > mostPanelRows)
        return Problem{ReadingFault::NoSuchRow, {*place.row, mostPanelRows}, atKey("row")};
    return std::nullopt;
}

Result<bool> isDescribed(Books& books, const ItemId& id) {
    const auto facts = books.facts({std::nullopt, {id}}, CivilDate::last());
    const auto book = typeBook(books, CivilDate::last());
    if (!facts || !book)
        return tl::unexpected(facts ? book.error() : facts.error());
    return !facts->empty() && facts->front().type && std::ranges::any_of(book->types, [&](const TypeDescribed& type) {
        return type.type.text() == *facts->front().type && type.gores && type.rows;
    });
}

}

Findings askReadings(const Batch& batch) {
    std::vector<Problem> problems;
    std::optional<bool> holdStated;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<ReadingTaken>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        const auto* reading = *now ? std::get_if<ReadingTaken>(&(*now)->body) : nullptr;
        if (!reading)
            continue;
        if (auto wrong = askFigure(*reading))
            problems.push_back(asAmended(atLine(std::move(*wrong), line), entry));
        auto hold = askHold(batch.books, *reading, (*now)->on, holdStated);
        if (!hold)
            return tl::unexpected(atLine(hold.error(), line));
        if (*hold)
            problems.push_back(asAmended(atLine(std::move(**hold), line), entry));
        auto other = askItem(batch.books, *reading);
        if (!other)
            return tl::unexpected(atLine(other.error(), line));
        if (*other)
            problems.push_back(asAmended(atLine(std::move(**other), line), entry));
        auto beyond = beyondAny(reading->place);
        if (!beyond)
            continue;
        const auto described = isDescribed(batch.books, reading->item);
        if (!described)
            return tl::unexpected(atLine(described.error(), line));
        if (!*described) // else the release asks whether the type has it
            problems.push_back(asAmended(atLine(std::move(*beyond), line), entry));
    }
    return problems;
}

}
