// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/programme_fault.h"
#include "problem/faults/store_fault.h"
#include "record/amendment.h"
#include "record/new_id.h"
#include "store/sql_record.h"
#include "store/verify/replay.h"

#include <QtCore/QDateTime>

#include <algorithm>
#include <unordered_set>
#include <utility>

namespace crownring {

namespace {

StoreFault notEntered(Subject subject) {
    switch (subject) {
    case Subject::Item:
        return StoreFault::ItemNotEntered;
    case Subject::Balloon:
        return StoreFault::BalloonNotEntered;
    case Subject::Inspection:
        return StoreFault::InspectionNotOpened;
    case Subject::Defect:
        return StoreFault::DefectNotFound;
    case Subject::Person:
        return StoreFault::PersonNotEntitled;
    default:
        return StoreFault::NothingNamedSo;
    }
}

/// The first thing that `body` speaks of and the record does not hold.
std::optional<Problem> unknownReference(const Body& body, Names& names) {
    for (const auto& [named, key] : mentions(body))
        if (!names.look(named.subject, named.name))
            return Problem{notEntered(named.subject), {named.name}, atKey(std::string(key))};
    return std::nullopt;
}

Problem placed(Problem problem, const std::string& file, int line) {
    problem.where.file = file;
    problem.where.line = line;
    return problem;
}

/// A problem of one entry while writing: leaves the transaction, which then rolls back.
struct Refused {
    Problem problem;
};

std::string readable(const Entry& entry) {
    auto text = readableText(entry);
    if (!text)
        throw Refused{std::move(text.error())};
    return std::move(*text);
}

std::string utcNow() { return QDateTime::currentDateTimeUtc().toString(Qt::ISODate).toStdString(); }

}

SqlRecord::Writing::Writing(SqlRecord& record)
    : m_record(record), m_interrupted(record), m_transaction(*record.m_connection) {
    record.forgetWhatOthersWrote();
    m_wasProven = record.isFile() && record.isProvenNow(); // nobody else can write from here on
    record.m_inTransaction = true; // not before the lock is had: where that fails nobody would take it back
}

SqlRecord::Writing::~Writing() {
    m_record.m_inTransaction = false;
    m_record.m_journal.forget();
    if (!m_committed)
        m_record.forget();
}

void SqlRecord::Writing::commit() {
    if (m_record.m_connection->dialect() == Dialect::Postgres)
        Ears::tell(*m_record.m_connection);
    m_transaction.commit();
    m_committed = true;
    if (m_wasProven)
        m_record.keepProven();
}

Result<bool> SqlRecord::othersWrote() {
    return guarded([&] {
        if (m_connection->dialect() == Dialect::Postgres)
            return m_ears.heard(*m_connection);
        const auto version = m_connection->writtenByOthers();
        return std::exchange(m_lastSeen, version).value_or(version) != version;
    });
}

void SqlRecord::forgetWhatOthersWrote() {
    if (m_connection->dialect() == Dialect::Postgres) {
        m_connection->run(QStringLiteral("LOCK TABLE writer IN SHARE ROW EXCLUSIVE MODE"));
        m_projector.forget();
    } else if (const auto version = m_connection->writtenByOthers(); version != m_writtenByOthers) {
        forget();
        m_writtenByOthers = version;
    }
}

void SqlRecord::forget() {
    m_names.forget();
    m_projector.forget();
    m_documents.clear();
}

void SqlRecord::writeAmendment(const Entry& amendment, const EntryId& target) {
    const auto around = m_journal.around(target);
    if (!around)
        throw Refused{Problem{StoreFault::NoEntry,
                              {target},
                              atKey(std::holds_alternative<EntryVoided>(amendment.body) ? "voids" : "replaces")}};
    if (const auto* correction = std::get_if<EntryCorrected>(&amendment.body)) {
        if (around->unread && around->tree.original().id == target)
            throw Refused{Problem{StoreFault::CannotBeCorrected, {target}, atKey("replaces")}};
        auto result = patched(around->tree.said(target), correction->with);
        if (!result)
            if (const auto& now = around->tree.now(target))
                if (auto onTop = patched(*now, correction->with))
                    result = std::move(onTop);
        auto wrong = result ? unknownReference(result->body, m_names) : std::optional(result.error());
        if (!wrong)
            if (const auto text = readableText(*result); !text)
                wrong = text.error();
        if (wrong) {
            wrong->where.key = "with/" + wrong->where.key;
            throw Refused{std::move(*wrong)};
        }
    }
    const auto before = around->tree.amended();
    m_journal.amend(amendment, readable(amendment), around);
    const auto after = around->tree.amended();
    if (around->unread)
        return m_projector.noteUnread(around->tree.original(), !after.entry);
    if (before.entry != after.entry) {
        if (before.entry)
            m_projector.withdraw(*before.entry);
        if (after.entry)
            m_projector.project(*after.entry, around->tree.original());
    }
    if (before.notApplicable != after.notApplicable)
        m_projector.noteIdle(around->tree);
}

void SqlRecord::write(Entry& entry) {
    if (const auto target = amends(entry)) {
        writeAmendment(entry, *target);
    } else {
        m_journal.write(entry, readable(entry));
        m_projector.project(entry);
    }
}

void SqlRecord::makeNames(const Body& body) {
    if (const auto brought = broughtBy(body))
        m_names.findOrMake(brought->subject, brought->name);
}

Results<Receipt> SqlRecord::append(std::vector<NumberedEntry> entries, const std::string& file, const Judge& judge) {
    if (const auto why = readOnlyReason())
        return tl::unexpected(std::vector{placed(*why, file, 0)});
    // Ids are fixed the first time, so that doing it again can double nothing.
    auto receipt = withServer([&] { return appendOnce(entries, file, judge); });
    if (receipt && receipt->end)
        m_acknowledged = receipt->end;
    return receipt;
}

Results<Receipt> SqlRecord::appendOnce(std::vector<NumberedEntry>& entries, const std::string& file,
                                       const Judge& judge) {
    using Problems = std::vector<Problem>;
    Receipt receipt;
    const EntryId* writing = nullptr;
    int line = 0;
    try {
        Writing transaction(*this);
        for (const auto& [entry, at] : entries)
            makeNames(entry.body);
        Problems problems;
        std::unordered_set<std::string_view> ids;
        ids.reserve(entries.size());
        for (auto& [entry, at] : entries) {
            if (entry.id.empty())
                entry.id = newEntryId();
            if (!ids.insert(entry.id.text()).second)
                problems.push_back(Problem{StoreFault::IdTwice, {entry.id}, {file, at, "id"}});
            if (auto wrong = unknownReference(entry.body, m_names))
                problems.push_back(placed(std::move(*wrong), file, at));
            if (const auto* adopted = std::get_if<ProgrammeAdopted>(&entry.body); adopted && adopted->document.empty())
                problems.push_back(Problem{ProgrammeFault::NoText, {}, {file, at, "programme"}});
        }
        if (!problems.empty())
            return tl::unexpected(std::move(problems));
        m_journal.beginWriting(m_writer, utcNow());
        receipt.ids.reserve(entries.size());
        for (auto& [entry, at] : entries) {
            writing = &entry.id;
            line = at;
            write(entry);
            receipt.ids.push_back(entry.id);
        }
        writing = nullptr;
        line = 0;
        const auto touched = m_projector.settle();
        tallies().settle(touched, m_projector.takeTold());
        if (const auto end = m_journal.finishWriting(); !entries.empty())
            receipt.end = end;
        if (judge)
            if (auto barred = judge(entries); !barred.empty())
                return tl::unexpected(std::move(barred));
        transaction.commit();
        return receipt;
    } catch (const Refused& refused) {
        return tl::unexpected(Problems{placed(refused.problem, file, line)});
    } catch (const StoreError& error) {
        letGoOfReaders();
        if (error.is(StoreFault::DiskFull))
            m_connection->letGoOfLog();
        if (error.is(StoreFault::CommitUnknown))
            return lookedUp(std::move(receipt), placed(error.problem(), file, 0));
        if (writing && error.is(StoreFault::Refused) &&
            guarded([&] { return m_journal.has(*writing); }).value_or(false))
            return tl::unexpected(Problems{Problem{StoreFault::IdKnown, {*writing}, {file, line, "id"}}});
        if (isDamage(error.problem().fault))
            m_readOnlyReason = error.problem();
        return tl::unexpected(Problems{placed(error.problem(), file, line)});
    }
}

Result<void> SqlRecord::connectAgain() {
    return guarded([&] {
        if (m_connection->dialect() == Dialect::Sqlite)
            throw StoreError(StoreFault::NotOpened, {m_connection->location()});
        m_reading.reset();
        m_connection->reopen();
        m_journal.forget();
        forget();
    });
}

Results<Receipt> SqlRecord::lookedUp(Receipt receipt, Problem unknown) {
    unknown.arguments.emplace_back(receipt.ids.empty() ? EntryId() : receipt.ids.back());
    if (receipt.ids.empty() || !connectAgain())
        return tl::unexpected(std::vector{std::move(unknown)});
    const auto written = guarded([&] {
        const Writing alone(*this); // else what is still being written would not be seen yet
        return m_journal.has(receipt.ids.back());
    });
    if (!written)
        return tl::unexpected(std::vector{std::move(unknown)});
    if (*written)
        return receipt;
    return tl::unexpected(std::vector{Problem{StoreFault::Lost, {unknown.arguments.front()}, unknown.where}});
}

Result<void> SqlRecord::rebuild() {
    if (m_readOnlyReason && !isDamage(m_readOnlyReason->fault))
        return tl::unexpected(*m_readOnlyReason);
    return withServer([&] {
        return guarded([&] {
            Writing transaction(*this);
            // What was altered in the journal itself must not become what answers rest on.
            if (const auto verdict = m_journal.verify({}); !verdict.intact)
                throw StoreError(Problem{StoreFault::JournalAltered, {verdict.reason.value_or(Phrase())}});
            remake(m_journal, m_projector, tallies());
            transaction.commit();
            m_readOnlyReason.reset();
            m_flaw.reset();
        });
    });
}

}
