// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The record as another thread asks it: each question is answered on the record's own thread, between those of the
/// screen, and what asks waits. A connection of its own would, by closing, look like another program that wrote.
///
/// What is written between two questions is in the second answer: who began to ask is told of it
/// (`RecordDesk::changed`).

#include "problem/faults/use_fault.h"
#include "screen/desk/record_desk.h"

#include <atomic>
#include <stop_token>
#include <utility>

namespace crownring::screen {

class AskedBooks final : public Books {
public:
    /// @param stop from then on nothing is asked, and each answer is a problem
    /// @param reading true while a question is under way
    /// @pre the desk lives longer
    AskedBooks(RecordDesk& desk, std::stop_token stop, std::atomic_bool& reading)
        : m_desk(desk), m_stop(std::move(stop)), m_reading(reading) {}

    Result<std::vector<ItemFacts>> facts(const Scope& scope, CivilDate on) override {
        return ask([&](Books& books) { return books.facts(scope, on); });
    }
    Result<std::vector<ItemId>> unknownParts(const std::vector<ItemId>& items, CivilDate on) override {
        return ask([&](Books& books) { return books.unknownParts(items, on); });
    }
    Result<std::optional<OutOfService>> apartSinceTakenOut(const ItemId& item, const Stamp& before) override {
        return ask([&](Books& books) { return books.apartSinceTakenOut(item, before); });
    }
    Result<std::vector<AdoptedProgramme>> adoptions(CivilDate on) override {
        return ask([&](Books& books) { return books.adoptions(on); });
    }
    Result<std::vector<DoneUnder>> doneUnder(const std::string& ref) override {
        return ask([&](Books& books) { return books.doneUnder(ref); });
    }
    Result<std::vector<BalloonCard>> balloons(CivilDate on) override {
        return ask([&](Books& books) { return books.balloons(on); });
    }
    Result<std::vector<Renaming>> renamings(CivilDate on) override {
        return ask([&](Books& books) { return books.renamings(on); });
    }
    Result<std::vector<LoggedFlight>> flights(const Registration& balloon, CivilDate first, CivilDate last) override {
        return ask([&](Books& books) { return books.flights(balloon, first, last); });
    }
    Result<std::vector<Question>> questions() override {
        return ask([](Books& books) { return books.questions(); });
    }
    Result<std::vector<Question>> unreadable() override {
        return ask([](Books& books) { return books.unreadable(); });
    }
    Result<std::vector<Entry>> enteredAgain() override {
        return ask([](Books& books) { return books.enteredAgain(); });
    }
    Result<std::vector<JournalLine>> told(const Told& asked) override {
        return ask([&](Books& books) { return books.told(asked); });
    }
    Result<std::vector<TakenOut>> takenOut(std::string_view kind) override {
        return ask([&](Books& books) { return books.takenOut(kind); });
    }
    Result<std::vector<Entry>> amendments(const EntryId& entry) override {
        return ask([&](Books& books) { return books.amendments(entry); });
    }
    Result<void> fabric(const std::vector<ItemId>& items, CivilDate on,
                        const std::function<void(const FabricHistory&)>& take) override {
        return ask([&](Books& books) { return books.fabric(items, on, take); });
    }
    Result<std::vector<std::optional<Figures>>> clocks(const std::vector<ItemDay>& asked) override {
        return ask([&](Books& books) { return books.clocks(asked); });
    }
    Result<UseLogs> useLogs(const std::vector<ItemId>& items, CivilDate first, CivilDate last) override {
        return ask([&](Books& books) { return books.useLogs(items, first, last); });
    }
    Result<std::string> programmeDocument(const ProgrammeId& programme) override {
        return ask([&](Books& books) { return books.programmeDocument(programme); });
    }
    Result<std::vector<JournalLine>> history(const std::optional<Registration>& balloon,
                                             const std::optional<ItemId>& item, CivilDate on, int limit) override {
        return ask([&](Books& books) { return books.history(balloon, item, on, limit); });
    }

private:
    /// The question may refer to what lives here: this thread waits.
    template <class Question>
    std::invoke_result_t<Question, Books&> ask(Question question) {
        if (m_stop.stop_requested())
            return problem(UseFault::OnlyTried);
        auto answer = m_desk.ask([question](Record& record) { return question(record); });
        m_reading = true;
        answer.waitForFinished();
        m_reading = false;
        if (answer.resultCount() == 0) // there is no record any more
            return problem(UseFault::NoRecordNamed);
        return answer.result();
    }

    RecordDesk& m_desk;
    std::stop_token m_stop;
    std::atomic_bool& m_reading;
};

}
