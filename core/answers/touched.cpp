// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/touched.h"

#include "registry/apart/overheated.h"

#include <algorithm>
#include <set>

namespace crownring {

namespace {

constexpr int entriesOfADay = 64;
constexpr int page = 8; // mostly one entry has come in

/// The latest lines of the journal, read as far back as they are asked for.
class Lately {
public:
    explicit Lately(Journal& journal) : m_journal(journal) {}

    /// All after that number, latest first, and perhaps some before; false where they are more than `mostTold`.
    Result<bool> reach(std::int64_t after) {
        while (!m_atBegin && (m_lines.empty() || m_lines.back().number > after)) {
            if (m_lines.size() >= mostTold)
                return false;
            const auto before = m_lines.empty() ? std::nullopt : std::optional(m_lines.back().number);
            auto more = m_journal.lines({.text = {}, .kind = {}, .before = before, .limit = page});
            if (!more)
                return tl::unexpected(more.error());
            m_atBegin = more->size() < page;
            std::ranges::move(*more, std::back_inserter(m_lines));
        }
        return true;
    }
    [[nodiscard]] const std::vector<JournalLine>& lines() const { return m_lines; }

private:
    Journal& m_journal;
    std::vector<JournalLine> m_lines;
    bool m_atBegin = false;
};

class Toucher {
public:
    Toucher(Journal& journal, Books& books) : m_journal(journal), m_books(books), m_lately(journal) {}

    Result<void> takeAllAfter(std::int64_t after) {
        const auto reached = m_lately.reach(after);
        if (!reached)
            return tl::unexpected(reached.error());
        touched.everything = !*reached;
        touched.upTo = m_lately.lines().empty() ? after : std::max(after, m_lately.lines().front().number);
        std::vector<Entry> entries;
        for (const auto& line : m_lately.lines()) {
            touched.everything |= line.number > after && line.unread;
            if (line.number > after)
                entries.push_back(line.entry);
        }
        for (auto entry = entries.begin(); entry != entries.end() && !touched.everything; ++entry)
            if (const auto taken = take(*entry); !taken)
                return taken;
        std::set<CivilDate> days{CivilDate::last()};
        for (const auto& entry : entries)
            days.insert(entry.on);
        return touched.everything || touched.items.empty() ? Result<void>{} : onTheirLists(days);
    }
    Touched touched;

private:
    Result<void> take(const Entry& entry) {
        return std::visit([&](const auto& body) { return touch(entry, body); }, entry.body);
    }
    /// A kind that nothing is said of here.
    template <class Body>
    Result<void> touch(const Entry&, const Body&) {
        return everything();
    }
    Result<void> touch(const Entry& entry, const FlightLogged& flight) {
        touched.balloons.insert(flight.balloon);
        if (!flight.kit)
            return aboard(flight.balloon, entry.on);
        return withParts(*flight.kit, entry.on);
    }
    Result<void> touch(const Entry& entry, const EventReported& event) {
        if (event.hottest && *event.hottest >= overheatedFrom({})) // what is put into it later shares it, too
            return everything();
        if (const auto* balloon = balloonOf(event))
            return aboard(*balloon, entry.on);
        return withParts({*itemOf(event)}, entry.on);
    }
    /// No row changes, but what is told beside them.
    Result<void> touch(const Entry& entry, const EventNotified& told) {
        return std::visit(
            [&](const auto& subject) {
                return touch(entry, EventReported{subject, {}, {}, {}});
            },
            told.subject);
    }
    /// After a fire it is an end for what is taken out of it.
    Result<void> touch(const Entry&, const RequirementDone& done) {
        const auto facts = m_books.facts({std::nullopt, {done.item}}, CivilDate::last());
        if (!facts)
            return tl::unexpected(facts.error());
        const bool burnt = std::ranges::any_of(*facts, [](const ItemFacts& each) {
            return std::ranges::count(each.events, "fire", &Occurrence::event) > 0;
        });
        return burnt ? everything() : item(done.item);
    }
    Result<void> touch(const Entry&, const ReadingTaken& reading) { return item(reading.item); }
    Result<void> touch(const Entry&, const DefectFound& found) { return item(found.item); }
    Result<void> touch(const Entry&, const DefectDeferred& deferred) { return item(deferred.item); }
    Result<void> touch(const Entry&, const DefectCleared& cleared) { return item(cleared.item); }
    Result<void> touch(const Entry&, const RepairMade& repair) { return item(repair.item); }
    Result<void> touch(const Entry&, const DirectiveAnswered& answer) {
        return answer.item ? item(*answer.item) : everything();
    }
    Result<void> touch(const Entry&, const LineSettled&) { return {}; }
    Result<void> touch(const Entry&, const SignatoryCode&) { return {}; }
    // What is planned has no clock and no standing; who shows it asks for it with each word of the record.
    Result<void> touch(const Entry&, const UsePlanned&) { return {}; }
    Result<void> touch(const Entry&, const FlightPlanned&) { return {}; }
    Result<void> touch(const Entry&, const VisitPlanned&) { return {}; }
    Result<void> touch(const Entry&, const EntryCorrected& corrected) {
        const auto line = m_journal.root(corrected.replaces);
        if (!line)
            return tl::unexpected(line.error());
        const bool isPlan = *line && !(*line)->unread &&
                            (std::holds_alternative<UsePlanned>((*line)->entry.body) ||
                             std::holds_alternative<FlightPlanned>((*line)->entry.body) ||
                             std::holds_alternative<VisitPlanned>((*line)->entry.body));
        return isPlan ? Result<void>{} : everything();
    }
    Result<void> touch(const Entry&, const EntryVoided& voided) {
        const auto line = m_journal.root(voided.voids);
        if (!line)
            return tl::unexpected(line.error());
        if (!*line || (*line)->unread)
            return everything();
        const auto reached = m_lately.reach((*line)->number);
        if (!reached)
            return tl::unexpected(reached.error());
        // What corrections made of it in between nobody tells any more.
        const bool corrected = std::ranges::any_of(m_lately.lines(), [](const JournalLine& each) {
            return std::holds_alternative<EntryCorrected>(each.entry.body);
        });
        return !*reached || corrected ? everything() : take((*line)->entry);
    }

    Result<void> everything() {
        touched.everything = true;
        return {};
    }
    Result<void> item(const ItemId& id) {
        touched.items.insert(id);
        return {};
    }

    /// What was a part of them at either end of the day shares it; what came or went on it is told with its fitting.
    Result<void> withParts(const std::vector<ItemId>& items, CivilDate on) {
        touched.items.insert(items.begin(), items.end());
        for (const auto day : {addDays(on, -1), on}) {
            const auto parts = m_books.facts({std::nullopt, items, true}, day);
            if (!parts)
                return tl::unexpected(parts.error());
            for (const auto& each : *parts)
                touched.items.insert(each.id);
        }
        return {};
    }

    /// What is on one list of discrepancies with them: each row of it tells how much of it still stands.
    Result<void> onTheirLists(const std::set<CivilDate>& days) {
        const std::vector<ItemId> items(touched.items.begin(), touched.items.end());
        std::set<InspectionId> lists;
        for (const auto day : days) {
            const auto facts = m_books.facts({std::nullopt, items}, day);
            if (!facts)
                return tl::unexpected(facts.error());
            for (const auto& item : *facts)
                for (const auto& list : item.lists)
                    lists.insert(list.inspection);
        }
        for (const auto& list : lists) {
            const auto told =
                m_books.told({Subject::Inspection, list.text(), {kindName<InspectionOpened>()}, CivilDate::last()});
            if (!told)
                return tl::unexpected(told.error());
            for (const auto& line : *told)
                if (const auto* opened = std::get_if<InspectionOpened>(&nowOf(line).body))
                    touched.items.insert(opened->items.begin(), opened->items.end());
        }
        return {};
    }

    /// What may have been aboard on that day: what was fitted at its ends, what was fitted or removed on it, and what
    /// flew as its kit.
    Result<void> aboard(const Registration& balloon, CivilDate on) {
        for (const auto day : {addDays(on, -1), on}) {
            const auto fitted = m_books.facts({balloon, {}}, day);
            if (!fitted)
                return tl::unexpected(fitted.error());
            for (const auto& each : *fitted)
                touched.items.insert(each.id);
        }
        const auto told = m_books.history(balloon, {}, on, entriesOfADay);
        if (!told)
            return tl::unexpected(told.error());
        for (const auto& line : *told) {
            const auto& entry = nowOf(line);
            if (entry.on < on)
                return {};
            if (const auto* fitted = std::get_if<ItemFitted>(&entry.body))
                touched.items.insert(fitted->item);
            if (const auto* removed = std::get_if<ItemRemoved>(&entry.body))
                touched.items.insert(removed->item);
            if (const auto* flight = std::get_if<FlightLogged>(&entry.body); flight && flight->kit)
                touched.items.insert(flight->kit->begin(), flight->kit->end());
        }
        return told->size() < entriesOfADay ? Result<void>{} : everything();
    }

    Journal& m_journal;
    Books& m_books;
    Lately m_lately;
};

}

Result<std::int64_t> latestNumber(Journal& journal) {
    return journal.lines({.text = {}, .kind = {}, .before = {}, .limit = 1}).map([](const auto& lines) {
        return lines.empty() ? std::int64_t{0} : lines.front().number;
    });
}

Result<Touched> touchedSince(Journal& journal, Books& books, std::int64_t after) {
    Toucher toucher(journal, books);
    return toucher.takeAllAfter(after).map([&] { return std::move(toucher.touched); });
}

}
