// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/defects/deciding.h"
#include "gate/refusing.h"
#include "problem/faults/components/part_fault.h"
#include "record/kinds/service.h"

#include <algorithm>
#include <iterator>

namespace crownring {

namespace {

/// What was said before: whether it is kept apart without a release since, or condemned.
struct Before {
    bool apart = false;
    bool condemned = false;
};

/// All that is said of the state of an item up to a day, by stamp.
Result<std::vector<Entry>> statesOf(Books& books, const ItemId& item, CivilDate until) {
    const auto told = books.told({Subject::Item, item.text(), {kindName<ItemState>()}, until});
    if (!told)
        return tl::unexpected(told.error());
    std::vector<Entry> states;
    for (const auto& line : *told)
        states.push_back(nowOf(line));
    std::ranges::sort(states, {}, stampOf);
    return states;
}

Result<Before> before(Books& books, const ItemId& item, const Stamp& stamp) {
    const auto states = statesOf(books, item, stamp.at.on());
    if (!states)
        return tl::unexpected(states.error());
    Before answer;
    for (const auto& entry : *states) {
        if (!(stampOf(entry) < stamp))
            break;
        const auto state = std::get<ItemState>(entry.body).state;
        answer.condemned |= state == ServiceState::Condemned;
        answer.apart = isKeptApart(state) || (answer.apart && state != ServiceState::InService);
    }
    return answer;
}

Result<bool> wasOverheated(Books& books, const ItemId& item, CivilDate on) {
    const auto facts = books.facts({std::nullopt, {item}}, on);
    if (!facts)
        return tl::unexpected(facts.error());
    return !facts->empty() && facts->front().out && facts->front().out->hottest;
}

/// With the release of a component, or of a visit of which the entry itself is asked.
bool bringsBack(const ItemState& state) {
    return state.state == ServiceState::InService && state.release &&
           (state.release->form == ReleaseForm::EasaForm1 || state.release->form == ReleaseForm::Faa81303 ||
            state.release->form == ReleaseForm::Inspection);
}

/// The next word by which it is in service again; nothing where it is kept apart anew before that, or until today.
Result<std::optional<Entry>> backAfter(Books& books, const ItemId& item, const Stamp& stamp) {
    const auto states = statesOf(books, item, CivilDate::last());
    if (!states)
        return tl::unexpected(states.error());
    for (const auto& entry : *states) {
        const auto state = std::get<ItemState>(entry.body).state;
        if (!(stamp < stampOf(entry)))
            continue;
        if (isKeptApart(state))
            return std::nullopt;
        if (state == ServiceState::InService)
            return entry;
    }
    return std::nullopt;
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
    const auto hot = wasOverheated(books, state.item, entry.on);
    if (!hot)
        return tl::unexpected(hot.error());
    if (said->condemned || *hot)
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
    const auto taken = books.apartSinceTakenOut(state.item, stampOf(entry));
    if (!taken)
        return tl::unexpected(taken.error());
    return (said->apart || taken->has_value()) && !bringsBack(state)
               ? std::optional(Problem{PartFault::NotReleased, {state.item}, atKey("release")})
               : std::nullopt;
}

/// Its paper came late: what was said of a later day asked no release, since nothing was kept apart then. What is
/// condemned stays so whatever is said later.
Result<std::optional<Problem>> backUnreleased(Books& books, const ItemState& apart, const Entry& entry) {
    if (apart.state == ServiceState::Condemned)
        return std::nullopt;
    const auto back = backAfter(books, apart.item, stampOf(entry));
    if (!back)
        return tl::unexpected(back.error());
    if (!*back || bringsBack(std::get<ItemState>((*back)->body)))
        return std::nullopt;
    return Problem{PartFault::BackSince, {apart.item, (*back)->on}, atKey("on")};
}

/// What an amendment leaves of a word that kept an item apart.
struct WordTakenBack {
    JournalLine root;
    ItemState was;
    Stamp stamp;
};

/// Nothing where it is none, or it is kept apart by it as before.
Result<std::optional<WordTakenBack>> takenBackBy(const Batch& batch, const Entry& entry) {
    const auto root = amendedRoot(batch.journal, entry);
    if (!root)
        return tl::unexpected(root.error());
    if (!*root || !std::holds_alternative<ItemState>((*root)->entry.body))
        return std::nullopt;
    const auto was = batch.journal.before(entry.id);
    if (!was)
        return tl::unexpected(was.error());
    const auto* apart = *was ? std::get_if<ItemState>(&(*was)->body) : nullptr;
    if (!apart || !isKeptApart(apart->state))
        return std::nullopt;
    const auto* now = (*root)->voided || (*root)->unread ? nullptr : std::get_if<ItemState>(&nowOf(**root).body);
    const bool staysSo = now && (apart->state == ServiceState::Condemned ? now->state == ServiceState::Condemned
                                                                         : isKeptApart(now->state));
    if (staysSo && now->item == apart->item && momentOf(nowOf(**root)) <= momentOf(**was))
        return std::nullopt;
    return WordTakenBack{**root, *apart, stampOf(**was)};
}

/// An amendment after which it is kept apart no more, or from a later moment on. Who wrote it takes back his own slip
/// at once; what came back with its release since is history.
Result<std::optional<Problem>> takenBack(const Batch& batch, const Entry& entry, const WordTakenBack& amended) {
    const auto own = takesBackOwnWord(batch, entry, amended.root, {});
    if (!own)
        return tl::unexpected(own.error());
    const auto back = backAfter(batch.books, amended.was.item, amended.stamp);
    if (!back)
        return tl::unexpected(back.error());
    if (*own || (*back && bringsBack(std::get<ItemState>((*back)->body))))
        return std::nullopt;
    return Problem{PartFault::TakenBack, {amended.was.item}, atKey("state")};
}

/// Nothing releases what is condemned. That another one was meant is said by whom the rules let decide of a defect.
Findings condemnedTakenBack(const Batch& batch, const Entry& entry, const WordTakenBack& amended, int line) {
    const auto& item = amended.was.item;
    return askWhoTakesBack(batch, entry, {amended.root, {}, item, ReleaseFault::GroundUnsaid, Argument(item)}, line);
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
        const auto ask = [&, at = line, &said = entry](const Result<std::optional<Problem>>& wrong) {
            if (wrong && *wrong)
                problems.push_back(asAmended(atLine(**wrong, at), said));
            return wrong.has_value();
        };
        const auto amended = takenBackBy(batch, entry);
        if (!amended)
            return tl::unexpected(atLine(amended.error(), line));
        if (*amended && (*amended)->was.state == ServiceState::Condemned) {
            auto found = condemnedTakenBack(batch, entry, **amended, line);
            if (!found)
                return tl::unexpected(atLine(found.error(), line));
            std::ranges::move(*found, std::back_inserter(problems));
        } else if (*amended) {
            const auto taken = takenBack(batch, entry, **amended);
            if (!ask(taken))
                return tl::unexpected(atLine(taken.error(), line));
        }
        const auto now = standingAs<ItemState>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        if (!*now)
            continue;
        const auto& state = std::get<ItemState>((*now)->body);
        if (state.state == ServiceState::InService) {
            const auto wrong = wrongBack(batch.books, state, **now);
            if (!ask(wrong))
                return tl::unexpected(atLine(wrong.error(), line));
        } else if (isKeptApart(state.state)) {
            const auto fitted = stillFitted(batch.books, state.item, (*now)->on);
            if (!ask(fitted))
                return tl::unexpected(atLine(fitted.error(), line));
            const auto back = backUnreleased(batch.books, state, **now);
            if (!ask(back))
                return tl::unexpected(atLine(back.error(), line));
        }
    }
    return problems;
}

}
