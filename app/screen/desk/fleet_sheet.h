// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The whole fleet on the day asked. A sheet never changes, so that any thread may read it. What entries touched is
/// asked again alone: a mended sheet stands on the same large one, and has other rows for the items that it mends.

#include "answers/balloon_lines.h"
#include "answers/touched.h"
#include "registry/books.h"
#include "rules/due/due_list.h"
#include "store/record_file.h"
#include "words/sentences.h"

#include <memory>
#include <mutex>
#include <unordered_map>
#include <vector>

namespace crownring::screen {

/// Things that lie elsewhere, one after the other.
template <class Thing>
class Row {
public:
    class Walk {
    public:
        explicit Walk(const Thing* const* at) : m_at(at) {}
        const Thing& operator*() const { return **m_at; }
        Walk& operator++() {
            ++m_at;
            return *this;
        }
        bool operator==(const Walk&) const = default;

    private:
        const Thing* const* m_at;
    };
    Row() = default;
    explicit Row(std::vector<const Thing*> things) : m_things(std::move(things)) {}
    [[nodiscard]] Walk begin() const { return Walk(m_things.data()); }
    [[nodiscard]] Walk end() const { return Walk(m_things.data() + m_things.size()); }
    [[nodiscard]] std::size_t size() const { return m_things.size(); }
    [[nodiscard]] bool empty() const { return m_things.empty(); }
    [[nodiscard]] const Thing& operator[](std::size_t at) const { return *m_things[at]; }
    [[nodiscard]] const std::vector<const Thing*>& pointers() const { return m_things; }

private:
    std::vector<const Thing*> m_things;
};

using DueRows = std::vector<const DueRow*>;

class FleetSheet;
using Sheet = std::shared_ptr<const FleetSheet>;

/// The due list of everything, with the ways into it.
struct ListedFleet {
    DueList due;
    std::int64_t upTo = 0; ///< the latest entry that it knows of
    std::shared_ptr<const words::Titles> titles;

    std::unordered_map<ItemId, std::uint32_t> places; ///< in due.items
    std::vector<std::uint32_t> firstRow;              ///< by place in due.items: where its rows begin in `rowsOfItems`
    std::vector<std::uint32_t> rowsOfItems;           ///< into due.rows, item by item, each worst first
    std::unordered_map<Registration, std::vector<std::uint32_t>> itemsOfBalloon; ///< places, by kind, place, id
};

/// What is said of each balloon as a whole.
struct GovernedFleet {
    std::vector<BalloonCard> balloons;                 ///< by registration
    Headlines headlines;                               ///< into the due list
    std::unordered_map<ItemId, const DueRow*> items{}; ///< what governs each, into the due list
};

class FleetSheet {
public:
    FleetSheet(const FleetSheet&) = delete;
    FleetSheet& operator=(const FleetSheet&) = delete;
    ~FleetSheet() = default;
    /// Of a due list and, where that is known, of what governs balloons.
    explicit FleetSheet(DueList due, GovernedFleet governed = {}, std::int64_t upTo = 0);

    /// These run on the storage thread.
    /// The due list of everything; nothing is said of balloons yet.
    [[nodiscard]] static Result<Sheet> listed(Record& record, CivilDate on);
    /// The same rows, and what is said of balloons.
    [[nodiscard]] static Result<Sheet> governed(const Sheet& listed, Record& record);
    /// `sheet` with what was written since then, where little was touched. The same where nothing was written; null
    /// where everything is to be asked for anew.
    [[nodiscard]] static Result<Sheet> mended(const Sheet& sheet, Record& record);

    [[nodiscard]] CivilDate on() const { return m_listed->due.on; }
    /// Worst first.
    [[nodiscard]] const Row<DueRow>& rows() const;
    [[nodiscard]] const Row<ItemFacts>& items() const;
    [[nodiscard]] std::size_t rowCount() const { return m_rowCount; }
    [[nodiscard]] bool isEmpty() const { return m_governed->balloons.empty() && m_listed->due.items.empty(); }
    /// By registration.
    [[nodiscard]] const Row<BalloonCard>& balloons() const;
    /// Up to the day asked.
    [[nodiscard]] const std::vector<Adoption>& adoptions() const;
    /// Of every requirement in force anywhere.
    [[nodiscard]] const std::shared_ptr<const words::Titles>& titles() const { return m_listed->titles; }

    [[nodiscard]] const ItemFacts* item(const ItemId& item) const;
    /// Worst first.
    [[nodiscard]] DueRows rowsOf(const ItemId& item) const;
    /// Of what is fitted to it, worst first.
    [[nodiscard]] DueRows rowsOf(const Registration& balloon) const;
    /// What is fitted to it, by kind, place and id.
    [[nodiscard]] std::vector<const ItemFacts*> itemsOf(const Registration& balloon) const;
    [[nodiscard]] const BalloonCard* card(const Registration& balloon) const;
    /// What governs an item: among its mandatory rows that block flight the worst, among equal ones that comes first.
    /// Null when there is none: nothing binds it where it is.
    [[nodiscard]] const DueRow* worstOf(const ItemId& item) const;
    /// What governs a balloon; its row is null where nothing does.
    [[nodiscard]] const Headline& headlineOf(const Registration& balloon) const;

    /// Whose rows are other ones than in the sheet before.
    struct Mend {
        std::weak_ptr<const FleetSheet> of; ///< the sheet before; none where everything was asked for
        std::vector<ItemId> items;
        std::vector<Registration> balloons;
    };
    [[nodiscard]] const Mend& mend() const { return m_mend; }
    /// Does this one differ from `before` by its mend alone?
    [[nodiscard]] bool mends(const Sheet& before) const { return before && m_mend.of.lock() == before; }
    /// Are the rows those of `other`, whatever is said of balloons?
    [[nodiscard]] bool hasRowsOf(const Sheet& other) const {
        return other && m_listed == other->m_listed && m_upTo == other->m_upTo;
    }

private:
    struct Again {
        std::shared_ptr<const DueList> due; ///< asked again; keeps the rest alive
        const ItemFacts* item = nullptr;
        DueRows rows;
        const DueRow* governs = nullptr;
    };
    FleetSheet(std::shared_ptr<const ListedFleet> listed, std::shared_ptr<const GovernedFleet> governed,
               std::int64_t upTo)
        : m_listed(std::move(listed)), m_governed(std::move(governed)), m_upTo(upTo),
          m_rowCount(m_listed->due.rows.size()) {}
    [[nodiscard]] Mend mendFor(const Touched& touched) const;
    Result<void> ask(Books& books, const std::vector<ItemId>& items);
    Result<void> askCard(Books& books, const BalloonCard& before);
    void gather() const;

    std::shared_ptr<const ListedFleet> m_listed;
    std::shared_ptr<const GovernedFleet> m_governed;
    std::unordered_map<ItemId, Again> m_again;
    std::unordered_map<Registration, std::shared_ptr<const BalloonCard>> m_cards;
    Headlines m_headlines;
    std::int64_t m_upTo = 0;
    std::size_t m_rowCount = 0;
    Mend m_mend;

    mutable std::once_flag m_gathered;
    mutable Row<DueRow> m_rows;
    mutable Row<ItemFacts> m_items;
    mutable Row<BalloonCard> m_balloons;
};

}
