// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A record in memory with only what importing flights asks of one.

#include "problem/faults/use_fault.h"
#include "record/journal.h"
#include "registry/books.h"

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

namespace crownring {

class SmallRecord : public Journal, public Books {
public:
    explicit SmallRecord(std::vector<std::pair<std::string, CivilDate>> balloons) {
        for (const auto& [name, entered] : balloons) {
            BalloonCard card;
            card.balloon = Registration(name);
            card.entered = entered;
            m_cards.push_back(card);
        }
    }

    [[nodiscard]] const std::vector<Entry>& entries() const { return m_entries; }

    Results<Receipt> append(std::vector<NumberedEntry> entries, const std::string&, const Judge& judge) override {
        Receipt receipt;
        const auto before = m_entries;
        for (auto& [entry, line] : entries) {
            entry.id = EntryId("e" + std::to_string(m_entries.size()));
            receipt.ids.push_back(entry.id);
            m_entries.push_back(entry);
        }
        if (auto problems = judge ? judge(entries) : std::vector<Problem>(); !problems.empty()) {
            m_entries = before;
            return tl::unexpected(std::move(problems));
        }
        return receipt;
    }

    Result<std::vector<BalloonCard>> balloons(CivilDate on) override {
        auto cards = m_cards;
        std::erase_if(cards, [&](const BalloonCard& card) { return card.entered > on; });
        return cards;
    }

    Result<std::vector<LoggedFlight>> flights(const Registration& balloon, CivilDate first, CivilDate last) override {
        const auto known = [&](const BalloonCard& card) { return card.balloon == balloon; };
        if (std::none_of(m_cards.begin(), m_cards.end(), known))
            return problem(UseFault::NoBalloon, {balloon});
        std::vector<LoggedFlight> flights;
        for (const auto& entry : m_entries) {
            const auto* flight = std::get_if<FlightLogged>(&entry.body);
            if (flight && flight->balloon == balloon && entry.on >= first && entry.on <= last)
                flights.push_back({stampOf(entry), balloon, entry.time.has_value(), flight->use});
        }
        return flights;
    }

    Result<std::vector<Question>> unreadable() override { return std::vector<Question>{}; }
    Result<std::vector<Entry>> enteredAgain() override { return std::vector<Entry>{}; }
    Result<std::vector<JournalLine>> lines(const JournalQuery&) override { return std::vector<JournalLine>{}; }
    Result<std::optional<JournalLine>> line(const EntryId&) override { return std::optional<JournalLine>{}; }
    Result<std::optional<JournalLine>> root(const EntryId&) override { return std::optional<JournalLine>{}; }
    Result<std::optional<Entry>> before(const EntryId&) override { return std::optional<Entry>{}; }
    Result<std::string> keepPicture(const Picture&) override { return std::string(); }
    Result<std::optional<Picture>> picture(const std::string&) override { return std::optional<Picture>{}; }
    Result<std::vector<ItemId>> unknownParts(const std::vector<ItemId>&, CivilDate) override {
        return std::vector<ItemId>{};
    }
    Result<std::optional<OutOfService>> apartSinceTakenOut(const ItemId&, const Stamp&) override {
        return std::optional<OutOfService>{};
    }
    Result<std::vector<JournalLine>> told(const Told&) override { return std::vector<JournalLine>{}; }
    Result<std::vector<TakenOut>> takenOut(std::string_view) override { return std::vector<TakenOut>{}; }
    Result<std::vector<Entry>> amendments(const EntryId&) override { return std::vector<Entry>{}; }
    Result<void> fabric(const std::vector<ItemId>&, CivilDate,
                        const std::function<void(const FabricHistory&)>&) override {
        return {};
    }
    Result<std::vector<std::optional<Figures>>> clocks(const std::vector<ItemDay>& asked) override {
        return std::vector<std::optional<Figures>>(asked.size());
    }
    Result<UseLogs> useLogs(const std::vector<ItemId>&, CivilDate, CivilDate) override { return UseLogs{}; }
    Result<Verdict> verify(const std::function<bool(double)>&) override { return Verdict{}; }
    Result<std::vector<ItemFacts>> facts(const Scope&, CivilDate) override { return std::vector<ItemFacts>{}; }
    Result<std::vector<DoneUnder>> doneUnder(const std::string&) override { return std::vector<DoneUnder>{}; }
    Result<std::vector<AdoptedProgramme>> adoptions(CivilDate) override { return std::vector<AdoptedProgramme>{}; }
    Result<std::vector<Renaming>> renamings(CivilDate) override { return std::vector<Renaming>{}; }
    Result<std::vector<Question>> questions() override { return std::vector<Question>{}; }
    Result<std::string> programmeDocument(const ProgrammeId&) override { return std::string(); }
    Result<std::vector<JournalLine>> history(const std::optional<Registration>&, const std::optional<ItemId>&,
                                             CivilDate, int) override {
        return std::vector<JournalLine>{};
    }

private:
    std::vector<BalloonCard> m_cards;
    std::vector<Entry> m_entries;
};

}
