// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The record over Qt SQL: journal, projections and answers, one connection.

#include "registry/apart/hurt_parts.h"
#include "store/connection/ears.h"
#include "store/journal/journal_table.h"
#include "store/projection/projector.h"
#include "store/proof/proven.h"
#include "store/queries/adoption_reader.h"
#include "store/queries/facts_reader.h"
#include "store/record_file.h"
#include "store/tally/tallies.h"

namespace crownring {

/// Runs `act`, which may throw `StoreError`, and gives what it returns or the problem.
template <class Act>
auto guarded(Act act) -> Result<decltype(act())> {
    try {
        if constexpr (std::is_void_v<decltype(act())>) {
            act();
            return {};
        } else {
            return act();
        }
    } catch (const StoreError& error) {
        return tl::unexpected(error.problem());
    }
}

class SqlRecord final : public Record {
public:
    SqlRecord(std::unique_ptr<Connection> connection, WriterId writer, std::optional<Problem> readOnlyReason);
    ~SqlRecord() override;
    /// To be told of what was made just now, and holds nothing.
    void keepProven();

    Results<Receipt> append(std::vector<NumberedEntry> entries, const std::string& file, const Judge& judge) override;
    Result<std::vector<JournalLine>> lines(const JournalQuery& query) override;
    Result<std::optional<JournalLine>> line(const EntryId& id) override;
    Result<std::optional<JournalLine>> root(const EntryId& id) override;
    Result<std::optional<Entry>> before(const EntryId& amendment) override;
    Result<Verdict> verify(const std::function<bool(double)>& progress) override;

    Result<std::vector<ItemFacts>> facts(const Scope& scope, CivilDate on) override;
    Result<std::optional<OutOfService>> apartSinceTakenOut(const ItemId& item, const Stamp& before) override;
    Result<std::vector<ItemId>> unknownParts(const std::vector<ItemId>& items, CivilDate on) override;
    Result<std::vector<AdoptedProgramme>> adoptions(CivilDate on) override;
    Result<std::vector<DoneUnder>> doneUnder(const std::string& ref) override;
    Result<std::vector<BalloonCard>> balloons(CivilDate on) override;
    Result<std::vector<Renaming>> renamings(CivilDate on) override;
    Result<std::vector<LoggedFlight>> flights(const Registration& balloon, CivilDate first, CivilDate last) override;
    Result<std::vector<Question>> questions() override;
    Result<std::vector<Question>> unreadable() override;
    Result<std::vector<Entry>> enteredAgain() override;
    Result<std::string> programmeDocument(const ProgrammeId& programme) override;
    Result<std::vector<JournalLine>> history(const std::optional<Registration>& balloon,
                                             const std::optional<ItemId>& item, CivilDate on, int limit) override;

    Result<std::vector<JournalLine>> told(const Told& asked) override;
    Result<std::vector<TakenOut>> takenOut(std::string_view kind) override;
    Result<std::vector<Entry>> amendments(const EntryId& entry) override;
    Result<void> fabric(const std::vector<ItemId>& items, CivilDate on,
                        const std::function<void(const FabricHistory&)>& take) override;
    Result<std::vector<std::optional<Figures>>> clocks(const std::vector<ItemDay>& asked) override;
    Result<UseLogs> useLogs(const std::vector<ItemId>& items, CivilDate first, CivilDate last) override;
    Result<std::string> keepPicture(const Picture& picture) override;
    Result<std::optional<Picture>> picture(const std::string& digest) override;

    Result<std::unique_ptr<Snapshot>> snapshot() override;
    Result<std::vector<Acknowledged>> ends() override;
    Result<std::vector<Acknowledged>> missing(const std::vector<Acknowledged>& expected) override;
    [[nodiscard]] std::optional<Acknowledged> lastAcknowledged() const override { return m_acknowledged; }
    Result<bool> othersWrote() override;
    Result<bool> isProven() override;
    void heed(const Verdict& verdict) override;
    Result<void> rebuild() override;
    Result<void> backUpTo(const std::string& file, Replace replace) override;
    [[nodiscard]] std::optional<Problem> readOnlyReason() const override { return m_flaw ? m_flaw : m_readOnlyReason; }

private:
    /// @throws StoreError where the record holds no such item or balloon
    [[nodiscard]] std::int64_t numberOf(const ItemId& item);
    [[nodiscard]] std::int64_t numberOf(const Registration& balloon);
    void addParts(std::vector<std::int64_t>& items, CivilDate on);
    [[nodiscard]] std::vector<std::int64_t> itemsOf(const Scope& scope, CivilDate on);
    [[nodiscard]] std::vector<JournalLine> readableLines(const std::vector<EntryId>& ids);
    /// With what failed where a defect says no more than that a reading did.
    [[nodiscard]] std::vector<ItemFacts> withReadings(std::vector<ItemFacts> facts);
    /// With the cylinders that were overheated as what is condemned, and what was taken out of them, or out of what a
    /// fire was on, as what is kept apart.
    [[nodiscard]] std::vector<ItemFacts> withHurt(std::vector<ItemFacts> facts, FactsReader& reader,
                                                  const std::map<ItemId, std::vector<Carried>>& carried, CivilDate on);
    /// Those of the carriers that anything befell by the end of that day.
    [[nodiscard]] std::map<ItemId, HurtCarrier> hurtCarriers(const std::vector<ItemFacts>& known, FactsReader& reader,
                                                             const std::vector<Carried>& carried, CivilDate on);
    /// Nothing where nobody states it, or two state different ones.
    [[nodiscard]] std::optional<VesselMaterial> materialOf(const ItemId& item);
    class Held;
    /// For answers of several questions: null inside a write transaction, which is one state by itself.
    [[nodiscard]] std::unique_ptr<Snapshot> oneState();
    /// Runs `act` on one state of the record. What is found not intact may only be read from then on.
    template <class Act>
    auto answered(Act act) -> Result<decltype(act())>;
    [[nodiscard]] Tallies& tallies();
    /// What is written now sorts after what this writer wrote last, though the machine's clock was set back meanwhile.
    static void heedClock(JournalTable& journal, const WriterId& writer);
    /// What was left in the middle would hold its state of the record.
    void letGoOfReaders();
    void check(const std::vector<Account>& accounts);
    class Interrupted;
    class Writing;
    /// Runs `act`; once more where the server was lost and is there again. Nothing of the first time was written then.
    template <class Act>
    auto withServer(Act act) -> decltype(act());
    [[nodiscard]] Result<void> connectAgain();
    Results<Receipt> appendOnce(std::vector<NumberedEntry>& entries, const std::string& file, const Judge& judge);
    /// After the answer to a commit was lost: all of a batch is in the record or nothing is.
    [[nodiscard]] Results<Receipt> lookedUp(Receipt receipt, Problem unknown);
    void forgetWhatOthersWrote();
    void forget();
    /// Of what the entry brings into the record, so that a batch may speak of it before.
    void makeNames(const Body& body);
    void write(Entry& entry);
    void writeAmendment(const Entry& amendment, const EntryId& target);

    /// A file is written to once more when it is closed.
    struct Closing {
        std::string file;
        std::optional<Proven> proven; ///< where it was when it began to be closed
        ~Closing();
    };
    [[nodiscard]] bool isFile() const { return m_connection->dialect() == Dialect::Sqlite; }
    [[nodiscard]] bool isProvenNow() const;

    Closing m_closing; ///< goes after the connection
    std::unique_ptr<Connection> m_connection;
    WriterId m_writer;
    std::optional<Problem> m_readOnlyReason;
    std::optional<Problem> m_flaw; ///< what a verification found
    Proven m_proven;
    bool m_otherVersion = false; ///< a later one, which may keep account of what answers rest on in another way
    Names m_names;
    JournalTable m_journal;
    Projector m_projector;
    // Once they were needed: what many answers ask is prepared once.
    std::unique_ptr<Tallies> m_tallies;
    std::unique_ptr<FactsReader> m_factsReader; ///< of single items
    std::unique_ptr<AdoptionReader> m_adoptionReader;
    std::optional<Acknowledged> m_acknowledged;
    bool m_inTransaction = false;             ///< a write transaction is open
    std::optional<ReadTransaction> m_reading; ///< while a snapshot is held
    int m_snapshots = 0;
    Documents m_documents;
    Ears m_ears;                            ///< of a server
    std::optional<std::int64_t> m_lastSeen; ///< of a file: its version when it was last asked whether others wrote
    std::optional<std::int64_t> m_writtenByOthers; ///< as it was when anything was last remembered for writing
};

/// What was asked before and what is asked after are of two states.
class SqlRecord::Interrupted {
public:
    explicit Interrupted(SqlRecord& record);
    ~Interrupted();
    Interrupted(const Interrupted&) = delete;
    Interrupted& operator=(const Interrupted&) = delete;

private:
    SqlRecord& m_record;
};

template <class Act>
auto SqlRecord::answered(Act act) -> Result<decltype(act())> {
    if (m_flaw)
        return tl::unexpected(*m_flaw);
    auto answer = guarded([&] {
        const auto state = oneState();
        return act();
    });
    if (!answer) {
        letGoOfReaders();
        if (isDamage(answer.error().fault) && !m_readOnlyReason)
            m_readOnlyReason = answer.error();
    }
    return answer;
}

/// A write transaction of the record: what is remembered is what the record says when it begins, and is forgotten when
/// it is not committed.
class SqlRecord::Writing {
public:
    explicit Writing(SqlRecord& record);
    ~Writing();
    Writing(const Writing&) = delete;
    Writing& operator=(const Writing&) = delete;
    void commit();

private:
    SqlRecord& m_record;
    Interrupted m_interrupted;
    Transaction m_transaction;
    bool m_wasProven = false;
    bool m_committed = false;
};

template <class Answer>
bool isLost(const Answer& answer) {
    if (answer)
        return false;
    if constexpr (std::is_same_v<typename Answer::error_type, Problem>)
        return answer.error().fault == Fault(StoreFault::Lost);
    else
        return answer.error().size() == 1 && answer.error().front().fault == Fault(StoreFault::Lost);
}

template <class Act>
auto SqlRecord::withServer(Act act) -> decltype(act()) {
    auto answer = act();
    return isLost(answer) && connectAgain() ? act() : std::move(answer);
}

}
