// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the record can be asked. All answers are plain values; "today" is always an argument. `store` implements it.

#include "problem/problem.h"
#include "record/journal.h"
#include "registry/fabric_history.h"
#include "registry/item_facts.h"
#include "registry/question.h"
#include "registry/use_log.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace crownring {

/// Which items are asked for; everything when neither is given.
struct Scope {
    std::optional<Registration> balloon; ///< what is fitted to it at the end of the day
    std::vector<ItemId> items;
    bool withParts = false; ///< of `items`: what is a part of them at the end of the day, too, of any depth
};

struct AdoptedProgramme {
    Stamp stamp;
    Bound bound;
    ProgrammeId programme;
    std::string digest;
    std::shared_ptr<const std::string> document; ///< canonical JSON
};

struct BalloonCard {
    Registration balloon;
    std::string title;
    std::vector<std::string> operations;
    CivilDate entered;
    std::int64_t items = 0; ///< fitted at the end of the day
    Usage flown;            ///< by flights logged for it up to the end of the day, whatever flew
    std::int64_t flights = 0;
    std::optional<CivilDate> lastFlight;
    std::optional<OutOfService> out;   ///< absent: in service
    std::optional<Renaming> before{};  ///< what it was called before
    std::optional<Renaming> renamed{}; ///< the registration was given up for another

    /// Does it stand in lists where nobody asks for more? What is still fitted to a registration that was given up
    /// must not go unseen.
    [[nodiscard]] bool inService() const { return !out && !(renamed && items == 0); }
};

/// A flight as the record has it now, for lists and for recognising one that is logged already.
struct LoggedFlight {
    Stamp stamp;
    Registration balloon;
    bool timed = false; ///< a time was stated
    Usage use;
};

/// Entries asked for by what they are about.
struct Told {
    Subject subject = Subject::Inspection;
    std::optional<std::string> name;     ///< absent: about any
    std::vector<std::string_view> kinds; ///< "inspection.opened" …; empty: any
    CivilDate on;                        ///< dated up to this day
};

/// An item at the end of a day.
struct ItemDay {
    ItemId item;
    CivilDate day;
};

/// What was written down as accomplished, item and requirement, by the inspection or paper that it names.
struct DoneUnder {
    EntryId entry;
    ItemId item;
    RequirementId requirement;
};

class Books {
public:
    virtual ~Books() = default;

    /// UnknownReference when a balloon or item of the scope is not in the record. Items entered after `on` are left
    /// out.
    virtual Result<std::vector<ItemFacts>> facts(const Scope& scope, CivilDate on) = 0;
    /// Parts of these items at the end of the day, of any depth, that are in no entry of that day or before: by id.
    virtual Result<std::vector<ItemId>> unknownParts(const std::vector<ItemId>& items, CivilDate on) = 0;
    /// As what an item was kept apart before that stamp since it was taken out of something that was
    /// (`registry/apart/kept_apart`).
    virtual Result<std::optional<OutOfService>> apartSinceTakenOut(const ItemId& item, const Stamp& before) = 0;
    /// Live adoptions dated on or before `on`, in the order of their stamps.
    virtual Result<std::vector<AdoptedProgramme>> adoptions(CivilDate on) = 0;
    /// What names this reference, by stamp; whatever became of an inspection of that name.
    virtual Result<std::vector<DoneUnder>> doneUnder(const std::string& ref) = 0;
    /// Balloons entered on or before `on`, by registration.
    virtual Result<std::vector<BalloonCard>> balloons(CivilDate on) = 0;
    /// Renamings dated on or before `on`, in the order of their stamps.
    virtual Result<std::vector<Renaming>> renamings(CivilDate on) = 0;
    /// Live flights of a balloon from `first` to `last`, both inclusive, in order.
    virtual Result<std::vector<LoggedFlight>> flights(const Registration& balloon, CivilDate first, CivilDate last) = 0;
    /// All open questions, by stamp.
    virtual Result<std::vector<Question>> questions() = 0;
    /// Those of them about entries that cannot be read. While there is one, nobody can say that nothing stands against
    /// a flight or a signature.
    virtual Result<std::vector<Question>> unreadable() = 0;
    /// Entries of items that were entered before, as they say now, by stamp: the earlier ones stand.
    virtual Result<std::vector<Entry>> enteredAgain() = 0;
    /// Live entries of the bench, by stamp; what they say now is in `current` where corrections changed it.
    virtual Result<std::vector<JournalLine>> told(const Told& asked) = 0;
    /// Entries of a kind that do not stand, since they were voided and that was not voided in turn; in the order in
    /// which they were voided.
    virtual Result<std::vector<TakenOut>> takenOut(std::string_view kind) = 0;
    /// An entry as it was written, and behind it what amends it and stands, in the order of arrival.
    virtual Result<std::vector<Entry>> amendments(const EntryId& entry) = 0;
    /// What is held about the fabric of items up to `on`: one item after the other is given to `take`, which keeps no
    /// reference to it. All items when none is named; what nothing is held about is left out.
    virtual Result<void> fabric(const std::vector<ItemId>& items, CivilDate on,
                                const std::function<void(const FabricHistory&)>& take) = 0;
    /// Clocks of items at the ends of days, in the order asked; nothing before the item was entered. UnknownReference
    /// for an item that is not in the record.
    virtual Result<std::vector<std::optional<Figures>>> clocks(const std::vector<ItemDay>& asked) = 0;
    /// What items went through from `first` to `last`, day by day, of all items when none is named; what was entered
    /// after `last` is left out. UnknownReference for an item that is not in the
    /// record.
    virtual Result<UseLogs> useLogs(const std::vector<ItemId>& items, CivilDate first, CivilDate last) = 0;
    /// The document of a programme that the record holds, latest adoption first; empty when none.
    virtual Result<std::string> programmeDocument(const ProgrammeId& programme) = 0;
    /// Entries about an item (also flights that it flew) or a balloon up to `on`, latest first.
    virtual Result<std::vector<JournalLine>> history(const std::optional<Registration>& balloon,
                                                     const std::optional<ItemId>& item, CivilDate on, int limit) = 0;
};

}
