// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/components.h"

#include "acts/post.h"
#include "problem/faults/components/part_fault.h"
#include "problem/faults/entry_fault.h"
#include "problem/faults/use_fault.h"
#include "text/blank.h"

#include <algorithm>
#include <map>
#include <utility>

namespace crownring {

namespace {

class Writing {
public:
    Writing(Journal& journal, Books& books, std::string by) : m_journal(journal), m_books(books), m_by(std::move(by)) {}

    void say(CivilDate on, std::optional<TimeOfDay> time, Body body) {
        Entry entry;
        entry.on = on;
        entry.time = time;
        entry.by = m_by;
        entry.body = std::move(body);
        m_entries.push_back({std::move(entry), 0});
    }
    /// What is known of each on the day, in the order named; UnknownReference where the record lacks one.
    [[nodiscard]] Result<std::vector<ItemFacts>> factsOf(const std::vector<ItemId>& items, CivilDate on) {
        return items.empty() ? Result<std::vector<ItemFacts>>(std::vector<ItemFacts>())
                             : m_books.facts({std::nullopt, items}, on);
    }
    /// Takes it off what it is on; nothing where that is nothing.
    bool takeOff(const ItemFacts& item, CivilDate on, std::optional<TimeOfDay> time) {
        ItemRemoved removed;
        removed.item = item.id;
        if (item.carrier)
            removed.from = item.carrier;
        else if (item.balloon)
            removed.balloon = *item.balloon;
        else
            return false;
        say(on, time, std::move(removed));
        return true;
    }
    [[nodiscard]] Results<Receipt> post() { return postBehind(m_journal, m_books, std::move(m_entries)); }

private:
    Journal& m_journal;
    Books& m_books;
    std::string m_by;
    std::vector<NumberedEntry> m_entries;
};

tl::unexpected<std::vector<Problem>> refusedFor(Problem problem) {
    return tl::unexpected(std::vector{std::move(problem)});
}

/// The item of which an entry says where it is, or what for it is out of service; null for what says another thing.
const ItemId* whereIs(const Body& body) {
    if (const auto* state = std::get_if<ItemState>(&body))
        return &state->item;
    if (const auto* fitted = std::get_if<ItemFitted>(&body))
        return &fitted->item;
    const auto* removed = std::get_if<ItemRemoved>(&body);
    return removed ? &removed->item : nullptr;
}

/// When that was said last with a time on that day; nothing where it was not, nor of an item that comes in only now.
Result<std::optional<TimeOfDay>> latestOn(Books& books, const ItemId& item, CivilDate on) {
    constexpr int many = 50;
    const auto told = books.history(std::nullopt, item, on, many);
    std::optional<TimeOfDay> latest;
    if (!told)
        return told.error().code() == Code::UnknownReference ? Result<std::optional<TimeOfDay>>(latest)
                                                             : tl::unexpected(told.error());
    for (const auto& line : *told)
        if (const auto& now = nowOf(line);
            !line.voided && now.on == on && whereIs(now.body) && *whereIs(now.body) == item)
            latest = std::max(latest, now.time);
    return latest;
}

/// The first that is named a second time.
std::optional<Problem> namedTwice(std::vector<ItemId> items) {
    std::ranges::sort(items);
    const auto twice = std::ranges::adjacent_find(items);
    return twice == items.end() ? std::nullopt : std::optional(Problem{PartFault::NamedTwice, {*twice}});
}

/// What goes on is another piece of the same kind, and is on nothing.
Result<void> mayReplace(Writing& writing, const Replacing& replacing, const ItemFacts& off) {
    if (replacing.on == replacing.off)
        return problem(PartFault::ReplacesItself, {replacing.off});
    auto kind = replacing.enters ? std::optional(replacing.enters->kind) : std::nullopt;
    if (!replacing.enters) {
        const auto facts = writing.factsOf({replacing.on}, replacing.day);
        if (!facts)
            return tl::unexpected(facts.error());
        if (facts->empty())
            return problem(UseFault::ItemNotYetThere, {replacing.on, replacing.day});
        const auto& on = facts->front();
        kind = on.kind;
        if (on.carrier)
            return problem(PartFault::FittedElsewhere, {on.id, *on.carrier});
        if (on.balloon)
            return problem(PartFault::FittedElsewhere, {on.id, *on.balloon});
    }
    if (*kind != off.kind)
        return problem(PartFault::OtherKind, {replacing.on, termOf(*kind), replacing.off, termOf(off.kind)});
    return {};
}

}

Result<void> putBehind(Books& books, std::vector<NumberedEntry>& entries) {
    std::map<std::pair<CivilDate, TimeOfDay>, TimeOfDay> behind; ///< the moments of the batch, and when they come
    for (const auto& [entry, line] : entries) {
        const auto* item = entry.time ? whereIs(entry.body) : nullptr;
        if (!item)
            continue;
        const auto latest = latestOn(books, *item, entry.on);
        if (!latest)
            return tl::unexpected(latest.error());
        constexpr int lastMinute = 24 * 60 - 1;
        auto& when = behind.try_emplace({entry.on, *entry.time}, *entry.time).first->second;
        if (*latest && when <= **latest)
            when = TimeOfDay(0, std::min((*latest)->minutes() + 1, lastMinute));
    }
    for (auto& [entry, line] : entries)
        if (entry.time && whereIs(entry.body))
            entry.time = behind.at({entry.on, *entry.time});
    return {};
}

Results<Receipt> postBehind(Journal& journal, Books& books, std::vector<NumberedEntry> entries) {
    if (const auto put = putBehind(books, entries); !put)
        return refusedFor(put.error());
    return crownring::post(journal, books, std::move(entries), {});
}

Results<Receipt> replaceItem(Journal& journal, Books& books, const Replacing& replacing) {
    constexpr TimeOfDay afterFlights(23, 59);
    Writing writing(journal, books, replacing.by);
    const auto facts = writing.factsOf({replacing.off}, replacing.day);
    if (!facts)
        return refusedFor(facts.error());
    if (facts->empty())
        return refusedFor(Problem{PartFault::NotFitted, {replacing.off, replacing.day}});
    if (const auto may = mayReplace(writing, replacing, facts->front()); !may)
        return refusedFor(may.error());
    if (replacing.enters)
        writing.say(replacing.day, {}, *replacing.enters);
    const auto time = replacing.time.value_or(afterFlights);
    if (!writing.takeOff(facts->front(), replacing.day, time))
        return refusedFor(Problem{PartFault::NotFitted, {replacing.off, replacing.day}});
    const auto& off = facts->front();
    ItemFitted fitted;
    fitted.item = replacing.on;
    fitted.to = off.carrier;
    if (!off.carrier)
        fitted.balloon = *off.balloon;
    fitted.place = off.place;
    fitted.release = replacing.release;
    fitted.lot = replacing.lot;
    writing.say(replacing.day, time, std::move(fitted));
    if (replacing.unserviceable)
        writing.say(replacing.day, time, ItemState{replacing.off, ServiceState::Unserviceable, {}});
    return writing.post();
}

Results<Receipt> sendAway(Journal& journal, Books& books, const Sending& sending) {
    if (isBlank(sending.to))
        return refusedFor(Problem{EntryFault::Blank, {}, atKey("to")});
    if (auto twice = namedTwice(sending.items))
        return refusedFor(std::move(*twice));
    Writing writing(journal, books, sending.by);
    const auto facts = writing.factsOf(sending.items, sending.day);
    if (!facts)
        return refusedFor(facts.error());
    for (const auto& item : *facts) {
        writing.takeOff(item, sending.day, sending.time);
        writing.say(sending.day, sending.time, ItemState{item.id, ServiceState::Away, sending.to});
    }
    return writing.post();
}

Results<Receipt> takeBack(Journal& journal, Books& books, const Returning& returning) {
    Writing writing(journal, books, returning.by);
    if (returning.items.empty() && returning.condemned.empty())
        return refusedFor(Problem{PartFault::NothingReturned});
    auto all = returning.items;
    all.insert(all.end(), returning.condemned.begin(), returning.condemned.end());
    if (auto twice = namedTwice(std::move(all)))
        return refusedFor(std::move(*twice));
    if (returning.tested && returning.day < *returning.tested)
        return refusedFor(Problem{PartFault::TestedAfterBack, {*returning.tested, returning.day}, atKey("tested")});
    // With a time: what is sent and comes back on one day keeps that order.
    const auto time = returning.time.value_or(TimeOfDay(18, 0));
    const auto tested = returning.tested.value_or(returning.day);
    for (const auto* named : {&returning.items, &returning.condemned}) {
        const auto facts = writing.factsOf(*named, returning.day);
        if (!facts)
            return refusedFor(facts.error());
        for (const auto& item : *facts) {
            const bool wasHot = item.out && item.out->hottest;
            if (wasHot && named == &returning.items)
                return refusedFor(Problem{PartFault::Condemned, {item.id}});
            if (!wasHot && (!item.out || item.out->state != ServiceState::Away || item.out->part))
                return refusedFor(Problem{PartFault::NotAway, {item.id}});
            if (returning.tested && *returning.tested < item.out->since)
                return refusedFor(Problem{
                    PartFault::TestedBeforeSent, {item.id, *returning.tested, item.out->since}, atKey("tested")});
        }
    }
    for (const auto& item : returning.items) {
        const auto own = returning.each.find(item);
        const auto requirement = own == returning.each.end() ? returning.requirement : own->second;
        if (requirement) {
            RequirementDone done;
            done.item = item;
            done.requirement = *requirement;
            done.method = returning.method;
            done.ref = returning.ref;
            done.mark = returning.mark;
            done.signatory = returning.signatory;
            done.licence = returning.licence;
            writing.say(tested, tested == returning.day ? returning.time : std::nullopt, std::move(done));
        }
        writing.say(returning.day, time, ItemState{item, ServiceState::InService, {}, returning.release});
    }
    for (const auto& item : returning.condemned)
        writing.say(returning.day, time, ItemState{item, ServiceState::Condemned, {}});
    return writing.post();
}

}
