// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// An independent reading of the rules of the record, in the plainest way: sort all live entries, walk through them
/// once, add flight by flight. Slow, and nothing of the program's folds is used.

#include "plain_matters.h"
#include "queries/plain_apart.h"
#include "record/entry_json.h"
#include "registry/fabric_history.h"
#include "registry/item_facts.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <map>
#include <set>
#include <vector>

namespace crownring::testing {

/// The entries that are live, as corrected. @param arrived in the order of arrival
inline std::vector<Entry> liveEntries(const std::vector<Entry>& arrived) {
    std::map<EntryId, bool> live;
    std::map<EntryId, Entry> now;
    // Whatever points at an entry arrived after it: going back, every pointer is settled first.
    for (auto entry = arrived.rbegin(); entry != arrived.rend(); ++entry) {
        bool voided = false;
        std::vector<Entry> corrections;
        for (const auto& other : arrived) {
            if (amends(other) != entry->id || !live[other.id])
                continue;
            if (std::holds_alternative<EntryVoided>(other.body))
                voided = true;
            else
                corrections.push_back(now.at(other.id));
        }
        live[entry->id] = !voided;
        std::sort(corrections.begin(), corrections.end(), [](const Entry& a, const Entry& b) {
            return std::pair(momentOf(a), a.id) < std::pair(momentOf(b), b.id);
        });
        auto object = toJson(*entry);
        for (const auto& correction : corrections) {
            auto attempt = object;
            const auto with = nlohmann::json::parse(std::get<EntryCorrected>(correction.body).with);
            for (const auto& [key, value] : with.items())
                value.is_null() ? void(attempt.erase(key)) : void(attempt[key] = value);
            if (entryFrom(attempt))
                object = attempt;
        }
        now.insert_or_assign(entry->id, entryFrom(object).value());
    }
    std::vector<Entry> result;
    for (const auto& [id, entry] : now)
        if (live[id] && !amends(entry))
            result.push_back(entry);
    std::sort(result.begin(), result.end(), [](const Entry& a, const Entry& b) {
        return std::pair(momentOf(a), a.id) < std::pair(momentOf(b), b.id);
    });
    return result;
}

/// What the live entries up to a day say of fabric, by item. @param arrived in the order of arrival
inline std::vector<FabricHistory> plainFabric(const std::vector<Entry>& arrived, CivilDate on) {
    std::map<ItemId, FabricHistory> histories;
    for (const auto& entry : liveEntries(arrived)) {
        if (on < entry.on)
            continue;
        const Stamp stamp{momentOf(entry), entry.id};
        if (const auto* reading = std::get_if<ReadingTaken>(&entry.body))
            histories[reading->item].readings.push_back({stamp, *reading});
        else if (const auto* repair = std::get_if<RepairMade>(&entry.body))
            histories[repair->item].repairs.push_back({stamp, *repair});
        else if (const auto* stated = std::get_if<FabricStated>(&entry.body))
            histories[stated->item].stated.push_back({stamp, *stated});
    }
    std::vector<FabricHistory> result;
    for (auto& [item, history] : histories) {
        history.item = item;
        result.push_back(std::move(history));
    }
    return result;
}

class PlainReplay {
public:
    PlainReplay(const std::vector<Entry>& arrived, CivilDate on) : PlainReplay(liveEntries(arrived), on, Live()) {}

    [[nodiscard]] std::vector<ItemFacts> facts() const {
        std::vector<ItemFacts> result;
        for (const auto& [id, item] : m_items)
            result.push_back(item.facts);
        return result;
    }

private:
    struct Live {};
    struct Replayed {
        ItemFacts facts;
    };
    struct Happened {
        Occurrence occurrence;
        std::optional<Registration> balloon;
        std::set<ItemId> items; ///< those that it falls on
    };
    /// What was fitted when a balloon flew.
    struct Flown {
        const Entry* entry;
        const FlightLogged* flight;
        ItemId item;
    };

    PlainReplay(const std::vector<Entry>& live, CivilDate on, Live) : m_live(&live), m_matters(live), m_on(on) {
        for (const auto& entry : live)
            if (const auto* body = std::get_if<ItemEntered>(&entry.body); body && entry.on <= on)
                if (!m_items.contains(body->item))
                    begin(entry, *body);
        for (const auto& entry : live)
            if (entry.on <= on)
                take(entry);
        for (auto& [occurrence, balloon, items] : m_happened) {
            for (const auto& [flown, flight, item] : m_flown)
                if (flight->balloon == balloon && wasAloft(*flown, *flight, occurrence.stamp.at.on()))
                    items.insert(item);
            for (const auto& item : items)
                happen(item, occurrence);
        }
        for (auto& [id, item] : m_items) {
            item.facts.lists = m_matters.listsOn(id, on);
            item.facts.incomplete = m_matters.incompleteOn(id, on);
        }
    }

    void begin(const Entry& entry, const ItemEntered& body) {
        Replayed item;
        item.facts.id = body.item;
        item.facts.kind = body.kind;
        item.facts.entered = entry.on;
        item.facts.broughtForward = body.broughtForward;
        item.facts.clock = body.broughtForward;
        m_items.emplace(body.item, item);
    }

    void count(const ItemId& id, const Entry& entry, const Usage& use) {
        const auto found = m_items.find(id);
        if (found == m_items.end() || entry.on < found->second.facts.entered)
            return;
        found->second.facts.clock = found->second.facts.clock + use;
    }

    void noteTakenOut(const std::map<ItemId, std::set<ItemId>>& before, const Entry& entry) {
        for (const auto& [id, carriers] : before) {
            const auto now = upFrom(id);
            for (const auto& carrier : carriers)
                if (!now.contains(carrier))
                    m_apart.takeOut(id, carrier, {momentOf(entry), entry.id});
        }
    }

    void take(const Entry& entry) {
        std::map<ItemId, std::set<ItemId>> before;
        for (const auto& each : m_items)
            before.emplace(each.first, upFrom(each.first));
        goOn(entry);
        noteTakenOut(before, entry);
        for (auto& [id, item] : m_items)
            if (!item.facts.out || item.facts.out->with)
                if (const auto out = m_apart.takenOut(id))
                    item.facts.out = out;
    }

    void goOn(const Entry& entry) {
        if (const auto* fitted = std::get_if<ItemFitted>(&entry.body)) {
            m_where.erase(fitted->item);
            m_partOf.erase(fitted->item);
            if (fitted->to)
                m_partOf[fitted->item] = *fitted->to;
            else
                m_where[fitted->item] = fitted->balloon;
        } else if (const auto* removed = std::get_if<ItemRemoved>(&entry.body)) {
            if (m_where.contains(removed->item) && m_where[removed->item] == removed->balloon)
                m_where.erase(removed->item);
            if (removed->from && m_partOf.contains(removed->item) && m_partOf[removed->item] == *removed->from)
                m_partOf.erase(removed->item);
        } else if (const auto* renamed = std::get_if<BalloonRenamed>(&entry.body)) {
            for (auto& [id, balloon] : m_where)
                if (balloon == renamed->balloon)
                    balloon = renamed->to;
        } else if (const auto* state = std::get_if<ItemState>(&entry.body)) {
            goInto(m_itemStates, state->item, entry, {state->state, entry.on, state->to, {}});
            m_apart.say({momentOf(entry), entry.id}, {state->state, entry.on, state->to, {}}, state->item);
            if (state->state == ServiceState::InService)
                for (const auto& each : m_items)
                    if (upFrom(each.first).contains(state->item))
                        m_apart.bringBack(each.first, state->item, {momentOf(entry), entry.id});
        } else if (const auto* kept = std::get_if<BalloonState>(&entry.body)) {
            goInto(m_balloonStates, kept->balloon, entry, {kept->state, entry.on, kept->to, kept->balloon});
        } else if (const auto* flight = std::get_if<FlightLogged>(&entry.body)) {
            for (const auto& [id, item] : m_items)
                if (flight->kit ? isOfKit(id, *flight->kit) : balloonOfItem(id) == flight->balloon)
                    count(id, entry, flight->use);
            if (!flight->kit)
                for (const auto& [id, item] : m_items)
                    if (balloonOfItem(id) == flight->balloon)
                        m_flown.push_back({&entry, flight, id});
        } else if (const auto* done = std::get_if<RequirementDone>(&entry.body)) {
            accomplish(entry, *done);
        } else if (const auto* review = std::get_if<ReviewSigned>(&entry.body)) {
            if (review->act != ReviewAct::Recommendation)
                accomplish(entry,
                           {review->item,
                            RequirementId(review->act == ReviewAct::Review ? "ml.arc-review" : "ml.arc-extension"),
                            {},
                            {},
                            {},
                            {},
                            {},
                            review->expires},
                           Evidence::Signed);
        } else if (const auto* event = std::get_if<EventReported>(&entry.body)) {
            const Occurrence occurrence{event->event, {momentOf(entry), entry.id}, event->hottest, event->lasted};
            std::set<ItemId> subjects;
            if (const auto* id = std::get_if<ItemId>(&event->subject))
                subjects = {*id};
            else
                subjects = concerned(std::get<Registration>(event->subject), entry.on);
            auto items = subjects;
            for (const auto& each : m_items) {
                const auto up = upFrom(each.first);
                if (std::ranges::any_of(subjects, [&](const ItemId& of) { return up.contains(of); }))
                    items.insert(each.first);
            }
            const auto* balloon = std::get_if<Registration>(&event->subject);
            m_happened.push_back({occurrence, balloon ? std::optional(*balloon) : std::nullopt, std::move(items)});
        }
        for (auto& [id, item] : m_items) {
            const auto place = balloonOfItem(id);
            item.facts.balloon = place;
            item.facts.carrier = m_partOf.contains(id) ? std::optional(m_partOf[id]) : std::nullopt;
            item.facts.out.reset();
            if (place && isOut(m_balloonStates, *place))
                item.facts.out = m_balloonStates[*place];
            for (const auto& carrier : upFrom(id))
                if (isOut(m_itemStates, carrier) && !(item.facts.out && item.facts.out->part)) {
                    item.facts.out = m_itemStates[carrier];
                    item.facts.out->part = carrier;
                }
            if (isOut(m_itemStates, id))
                item.facts.out = m_itemStates[id];
        }
    }

    /// Of two words of one moment what is further from service holds.
    template <class Name>
    void goInto(std::map<Name, OutOfService>& states, const Name& name, const Entry& entry, OutOfService state) {
        const auto at = momentOf(entry);
        if (const auto now = states.find(name); now != states.end() && now->second.state == ServiceState::Condemned)
            return;
        const auto before = m_since.find(name.text());
        if (before != m_since.end() && before->second == at && state.state < states[name].state)
            return;
        m_since[name.text()] = at;
        states[name] = std::move(state);
    }

    template <class Name>
    static bool isOut(const std::map<Name, OutOfService>& states, const Name& name) {
        const auto found = states.find(name);
        return found != states.end() && found->second.state != ServiceState::InService;
    }

    /// What carries it now, of any depth; what would carry itself is on nothing.
    [[nodiscard]] std::set<ItemId> upFrom(const ItemId& id) const {
        std::set<ItemId> carriers;
        for (auto at = m_partOf.find(id); at != m_partOf.end(); at = m_partOf.find(at->second))
            if (at->second == id || !carriers.insert(at->second).second)
                break;
        return carriers;
    }
    [[nodiscard]] std::optional<Registration> balloonOfItem(const ItemId& id) const {
        auto at = id;
        std::set<ItemId> seen;
        while (seen.insert(at).second) {
            if (const auto balloon = m_where.find(at); balloon != m_where.end())
                return balloon->second;
            const auto carrier = m_partOf.find(at);
            if (carrier == m_partOf.end())
                return std::nullopt;
            at = carrier->second;
        }
        return std::nullopt;
    }
    [[nodiscard]] bool isOfKit(const ItemId& id, const std::vector<ItemId>& kit) const {
        const auto up = upFrom(id);
        return std::ranges::any_of(kit, [&](const ItemId& each) { return each == id || up.contains(each); });
    }

    /// What is fitted to a balloon now, and the kits that flew as it on a day.
    [[nodiscard]] std::set<ItemId> concerned(const Registration& balloon, CivilDate on) const {
        std::set<ItemId> items;
        for (const auto& [id, item] : m_items)
            if (balloonOfItem(id) == balloon)
                items.insert(id);
        for (const auto& [id, fittedTo] : m_where)
            if (fittedTo == balloon)
                items.insert(id);
        for (const auto& entry : *m_live)
            if (const auto* flight = std::get_if<FlightLogged>(&entry.body);
                flight && flight->kit && flight->balloon == balloon && wasAloft(entry, *flight, on))
                items.insert(flight->kit->begin(), flight->kit->end());
        return items;
    }

    /// Also of one that took off the day before.
    [[nodiscard]] static bool wasAloft(const Entry& entry, const FlightLogged& flight, CivilDate on) {
        const Moment landed(momentOf(entry).minutes() + flight.use.minutes.value());
        return entry.on <= on && on <= landed.on();
    }

    void happen(const ItemId& id, const Occurrence& occurrence) {
        if (const auto found = m_items.find(id); found != m_items.end())
            found->second.facts.events.push_back(occurrence);
    }

    void accomplish(const Entry& entry, const RequirementDone& done, std::optional<Evidence> evidence = {}) {
        const auto found = m_items.find(done.item);
        if (found == m_items.end())
            return;
        if (!evidence)
            evidence = m_matters.evidenceOf(done, m_on);
        if (!evidence)
            return;
        auto& facts = found->second.facts;
        const bool paper = entry.on < facts.entered;
        Accomplishment each{
            done.requirement, {momentOf(entry), entry.id}, done.clock, done.clock, done.method, *evidence,
            done.expires};
        const auto settle = [&](auto& stated, auto& running) {
            if (!stated && !paper)
                stated = running;
            else if (stated && !running && !paper)
                running = stated; // an unknown clock is known from the first paper that states it
        };
        settle(each.clock.minutes, facts.clock.minutes);
        settle(each.clock.landings, facts.clock.landings);
        settle(each.clock.inflations, facts.clock.inflations);
        facts.done.push_back(each);
    }

    std::vector<Happened> m_happened;
    PlainApart m_apart;
    std::vector<Flown> m_flown;
    const std::vector<Entry>* m_live;      ///< while it is made
    std::map<std::string, Moment> m_since; ///< by item or balloon, which are called differently here
    PlainMatters m_matters;
    CivilDate m_on;
    std::map<ItemId, Replayed> m_items;
    std::map<ItemId, Registration> m_where;
    std::map<ItemId, ItemId> m_partOf;
    std::map<ItemId, OutOfService> m_itemStates;
    std::map<Registration, OutOfService> m_balloonStates;
};

}
