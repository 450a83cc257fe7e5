// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/components.h"

#include "acts/post.h"
#include "problem/faults/components/part_fault.h"

#include <algorithm>

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
    [[nodiscard]] Results<Receipt> post() { return crownring::post(m_journal, m_books, std::move(m_entries), {}); }

private:
    Journal& m_journal;
    Books& m_books;
    std::string m_by;
    std::vector<NumberedEntry> m_entries;
};

tl::unexpected<std::vector<Problem>> refusedFor(Problem problem) {
    return tl::unexpected(std::vector{std::move(problem)});
}

}

Results<Receipt> replaceItem(Journal& journal, Books& books, const Replacing& replacing) {
    constexpr TimeOfDay afterFlights(23, 59);
    Writing writing(journal, books, replacing.by);
    const auto facts = writing.factsOf({replacing.off}, replacing.day);
    if (!facts)
        return refusedFor(facts.error());
    if (replacing.enters)
        writing.say(replacing.day, {}, *replacing.enters);
    const auto time = replacing.time.value_or(afterFlights);
    if (facts->empty() || !writing.takeOff(facts->front(), replacing.day, time))
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
    if (returning.tested && returning.day < *returning.tested)
        return refusedFor(Problem{PartFault::TestedAfterBack, {*returning.tested, returning.day}, atKey("tested")});
    // With a time: what is sent and comes back on one day keeps that order.
    const auto time = returning.time.value_or(TimeOfDay(18, 0));
    const auto tested = returning.tested.value_or(returning.day);
    for (const auto* named : {&returning.items, &returning.condemned}) {
        const auto facts = writing.factsOf(*named, returning.day);
        if (!facts)
            return refusedFor(facts.error());
        for (const auto& item : *facts)
            if (!item.out || item.out->state != ServiceState::Away || item.out->part)
                return refusedFor(Problem{PartFault::NotAway, {item.id}});
            else if (returning.tested && *returning.tested < item.out->since)
                return refusedFor(Problem{
                    PartFault::TestedBeforeSent, {item.id, *returning.tested, item.out->since}, atKey("tested")});
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
