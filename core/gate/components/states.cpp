// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/components/part_fault.h"
#include "record/kinds/service.h"

#include <algorithm>

namespace crownring {

namespace {

/// What was said before: whether it is kept apart without a release since, or condemned.
struct Before {
    bool apart = false;
    bool condemned = false;
};

Result<Before> before(Books& books, const ItemId& item, const Stamp& stamp) {
    const auto told = books.told({Subject::Item, item.text(), {kindName<ItemState>()}, stamp.at.on()});
    if (!told)
        return tl::unexpected(told.error());
    std::vector<Entry> states;
    for (const auto& line : *told)
        if (stampOf(nowOf(line)) < stamp)
            states.push_back(nowOf(line));
    std::ranges::sort(states, {}, stampOf);
    Before answer;
    for (const auto& entry : states) {
        const auto state = std::get<ItemState>(entry.body).state;
        answer.condemned |= state == ServiceState::Condemned;
        answer.apart = isKeptApart(state) || (answer.apart && state != ServiceState::InService);
    }
    return answer;
}

/// Of a visit of the record: that it was opened for the item, and ended with a release by that day.
Result<bool> didRelease(Books& books, const std::string& visit, const ItemId& item, CivilDate on) {
    const auto told =
        books.told({Subject::Inspection, visit, {kindName<InspectionOpened>(), kindName<InspectionClosed>()}, on});
    if (!told)
        return tl::unexpected(told.error());
    bool opened = false;
    bool released = false;
    for (const auto& line : *told) {
        const auto& body = nowOf(line).body;
        if (const auto* opening = std::get_if<InspectionOpened>(&body))
            opened |= std::ranges::count(opening->items, item) > 0;
        else if (const auto* closing = std::get_if<InspectionClosed>(&body))
            released |= closing->outcome == Outcome::Released;
    }
    return opened && released;
}

Result<std::optional<Problem>> wrongBack(Books& books, const ItemState& state, const Entry& entry) {
    const auto said = before(books, state.item, stampOf(entry));
    if (!said)
        return tl::unexpected(said.error());
    if (said->condemned)
        return Problem{PartFault::Condemned, {state.item}, atKey("state")};
    const auto& release = state.release;
    if (release && release->form == ReleaseForm::Inspection) {
        const auto released = didRelease(books, release->number, state.item, entry.on);
        if (!released)
            return tl::unexpected(released.error());
        if (!*released)
            return Problem{PartFault::NotReleasedBy, {state.item, release->number}, atKey("release")};
        return std::nullopt;
    }
    const bool brings = release && (release->form == ReleaseForm::EasaForm1 || release->form == ReleaseForm::Faa81303);
    return said->apart && !brings ? std::optional(Problem{PartFault::NotReleased, {state.item}, atKey("release")})
                                  : std::nullopt;
}

/// What is kept apart is on nothing at the end of that day.
Result<std::optional<Problem>> stillFitted(Books& books, const ItemId& item, CivilDate on) {
    const auto facts = books.facts({std::nullopt, {item}}, on);
    if (!facts)
        return tl::unexpected(facts.error());
    if (facts->empty() || (!facts->front().balloon && !facts->front().carrier))
        return std::nullopt;
    const auto& fitted = facts->front();
    return Problem{PartFault::StillFitted,
                   {item, fitted.carrier ? Argument(*fitted.carrier) : Argument(*fitted.balloon)},
                   atKey("item")};
}

}

Findings askItemStates(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<ItemState>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        if (!*now)
            continue;
        const auto& state = std::get<ItemState>((*now)->body);
        Result<std::optional<Problem>> wrong = std::optional<Problem>();
        if (state.state == ServiceState::InService)
            wrong = wrongBack(batch.books, state, **now);
        else if (isKeptApart(state.state))
            wrong = stillFitted(batch.books, state.item, (*now)->on);
        if (!wrong)
            return tl::unexpected(atLine(wrong.error(), line));
        if (*wrong)
            problems.push_back(asAmended(atLine(**wrong, line), entry));
    }
    return problems;
}

}
