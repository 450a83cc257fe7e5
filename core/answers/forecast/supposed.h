// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// "If I fly four hours on Saturday": the record as it would be asked once flights were flown that are only supposed or
/// planned. Clocks of what flies stand so much higher from that day on; nothing is written, and nothing else that a
/// flight says changes.

#include "registry/books.h"

#include <unordered_map>
#include <utility>
#include <vector>

namespace crownring {

struct SupposedFlight {
    Registration balloon;
    Usage use{Minutes{0}, Landings{1}, Inflations{1}};
    CivilDate on;
    std::optional<std::vector<ItemId>> kit{}; ///< absent: what is fitted at the end of that day
};

class SupposingBooks final : public Books {
public:
    explicit SupposingBooks(Books& books) : m_books(books) {}

    /// What flies has flown from now on, its parts too. UnknownReference for what is not in the record.
    [[nodiscard]] Result<void> suppose(const SupposedFlight& flight);
    /// Something is supposed of it by that day.
    [[nodiscard]] bool isSupposed(const ItemId& item, CivilDate on) const { return supposedOf(item, on).has_value(); }

    Result<std::vector<ItemFacts>> facts(const Scope& scope, CivilDate on) override;
    Result<std::vector<std::optional<Figures>>> clocks(const std::vector<ItemDay>& asked) override;

    Result<std::vector<ItemId>> unknownParts(const std::vector<ItemId>& items, CivilDate on) override {
        return m_books.unknownParts(items, on);
    }
    Result<std::optional<OutOfService>> apartSinceTakenOut(const ItemId& item, const Stamp& before) override {
        return m_books.apartSinceTakenOut(item, before);
    }
    Result<std::vector<AdoptedProgramme>> adoptions(CivilDate on) override { return m_books.adoptions(on); }
    Result<std::vector<DoneUnder>> doneUnder(const std::string& ref) override { return m_books.doneUnder(ref); }
    Result<std::vector<BalloonCard>> balloons(CivilDate on) override { return m_books.balloons(on); }
    Result<std::vector<Renaming>> renamings(CivilDate on) override { return m_books.renamings(on); }
    Result<std::vector<LoggedFlight>> flights(const Registration& balloon, CivilDate first, CivilDate last) override {
        return m_books.flights(balloon, first, last);
    }
    Result<std::vector<Question>> questions() override { return m_books.questions(); }
    Result<std::vector<Question>> unreadable() override { return m_books.unreadable(); }
    Result<std::vector<Entry>> enteredAgain() override { return m_books.enteredAgain(); }
    Result<std::vector<JournalLine>> told(const Told& asked) override { return m_books.told(asked); }
    Result<std::vector<TakenOut>> takenOut(std::string_view kind) override { return m_books.takenOut(kind); }
    Result<std::vector<Entry>> amendments(const EntryId& entry) override { return m_books.amendments(entry); }
    Result<void> fabric(const std::vector<ItemId>& items, CivilDate on,
                        const std::function<void(const FabricHistory&)>& take) override {
        return m_books.fabric(items, on, take);
    }
    Result<UseLogs> useLogs(const std::vector<ItemId>& items, CivilDate first, CivilDate last) override {
        return m_books.useLogs(items, first, last);
    }
    Result<std::string> programmeDocument(const ProgrammeId& programme) override {
        return m_books.programmeDocument(programme);
    }
    Result<std::vector<JournalLine>> history(const std::optional<Registration>& balloon,
                                             const std::optional<ItemId>& item, CivilDate on, int limit) override {
        return m_books.history(balloon, item, on, limit);
    }

private:
    [[nodiscard]] std::optional<Usage> supposedOf(const ItemId& item, CivilDate on) const;

    Books& m_books;
    std::unordered_map<ItemId, std::vector<std::pair<CivilDate, Usage>>> m_flown;
};

}
