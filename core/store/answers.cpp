// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/use_fault.h"
#include "record/verdict_phrase.h"
#include "store/queries/balloon_reader.h"
#include "store/queries/clock_reader.h"
#include "store/queries/fabric_reader.h"
#include "store/queries/facts_reader.h"
#include "store/queries/question_reader.h"
#include "store/queries/service_reader.h"
#include "store/queries/told_reader.h"
#include "store/queries/use_reader.h"
#include "store/sql_record.h"
#include "trust/signatory_codes.h"

#include <algorithm>

namespace crownring {

namespace {

/// Where an entry stands that cannot be read, of what kind it is, and why.
Argument whyUnread(const JournalLine& line) {
    const auto& unread = *line.unread;
    if (unread.why.where.key.empty())
        return Phrase{VerdictPhrase::LineUnread, {line.number, unread.kind, messageOf(unread.why)}};
    return Phrase{VerdictPhrase::LineKeyUnread,
                  {line.number, unread.kind, unread.why.where.key, messageOf(unread.why)}};
}

void sayWhyUnread(std::vector<Question>& questions, JournalTable& journal) {
    for (auto& question : questions)
        if (question.kind == Question::Kind::Unreadable)
            if (const auto line = journal.line(question.stamp.id); line && line->unread)
                question.detail = whyUnread(*line);
}

}

std::int64_t SqlRecord::numberOf(const ItemId& item) {
    if (const auto number = m_names.look(item))
        return *number;
    throw StoreError(Problem{UseFault::NoItem, {item}});
}

std::int64_t SqlRecord::numberOf(const Registration& balloon) {
    if (const auto number = m_names.look(balloon))
        return *number;
    throw StoreError(Problem{UseFault::NoBalloon, {balloon}});
}

void SqlRecord::addParts(std::vector<std::int64_t>& items, CivilDate on) {
    Statement parts(*m_connection, "SELECT DISTINCT item_no FROM part WHERE carrier_no = ? AND direct = 0"
                                   " AND from_at < ? AND (until_at IS NULL OR until_at >= ?) ORDER BY item_no");
    const auto end = Moment::endOf(on).minutes();
    for (const auto carrier : std::vector(items)) {
        parts.run(carrier, end, end);
        while (parts.next())
            if (const auto part = parts.read<std::int64_t>(); std::ranges::find(items, part) == items.end())
                items.push_back(part);
    }
}

std::vector<std::int64_t> SqlRecord::itemsOf(const Scope& scope, CivilDate on) {
    std::vector<std::int64_t> fitted;
    if (scope.balloon) {
        BalloonReader reader(*m_connection, m_names);
        const auto number = numberOf(*scope.balloon);
        fitted = reader.fittedTo(number, on);
        check({reader.fittedAccount(number)});
    }
    std::vector<std::int64_t> named;
    for (const auto& id : scope.items)
        named.push_back(numberOf(id));
    if (scope.withParts)
        addParts(named, on);
    if (!scope.balloon)
        return named;
    if (!named.empty())
        std::erase_if(fitted, [&](auto item) { return std::ranges::find(named, item) == named.end(); });
    return fitted;
}

Result<std::vector<ItemFacts>> SqlRecord::facts(const Scope& scope, CivilDate on) {
    return answered([&] {
        if (!scope.balloon && scope.items.empty()) {
            FactsReader reader(*m_connection, m_names, m_projector.totals(), false);
            auto facts = reader.read(on, std::nullopt);
            check(reader.accounts());
            return withHurt(withReadings(std::move(facts)), reader, reader.carried(), on);
        }
        if (!m_factsReader)
            m_factsReader = std::make_unique<FactsReader>(*m_connection, m_names, m_projector.totals(), true);
        auto& reader = *m_factsReader;
        reader.startOver();
        std::vector<ItemFacts> facts;
        std::map<ItemId, std::vector<Carried>> carried;
        for (const auto item : itemsOf(scope, on)) {
            for (auto& each : reader.read(on, item))
                facts.push_back(std::move(each));
            carried.insert(reader.carried().begin(), reader.carried().end());
            check(reader.accounts());
        }
        return withHurt(withReadings(std::move(facts)), reader, carried, on);
    });
}

void SqlRecord::letGoOfReaders() {
    m_factsReader.reset();
    m_adoptionReader.reset();
    m_tallies.reset();
}

void SqlRecord::check(const std::vector<Account>& accounts) {
    if (m_otherVersion)
        throw StoreError(m_readOnlyReason.value());
    for (const auto& account : accounts)
        tallies().check(account);
}

/// Few defects are of a reading alone, so each is looked up by itself.
std::vector<ItemFacts> SqlRecord::withReadings(std::vector<ItemFacts> facts) {
    for (auto& item : facts)
        for (auto& mark : item.defects) {
            if (!mark.failed || !mark.what.empty())
                continue;
            const auto line = m_journal.line(*mark.failed);
            const auto failed = line ? std::optional(nowOf(*line)) : std::nullopt;
            if (failed)
                if (const auto* reading = std::get_if<ReadingTaken>(&failed->body))
                    mark.reading = *reading;
        }
    return facts;
}

Result<std::vector<ItemId>> SqlRecord::unknownParts(const std::vector<ItemId>& items, CivilDate on) {
    return answered([&] {
        std::vector<std::int64_t> numbers;
        for (const auto& id : items)
            numbers.push_back(numberOf(id));
        addParts(numbers, on);
        Statement entered(*m_connection, "SELECT 1 FROM item_entered WHERE item_no = ? AND stands = 1 AND day <= ?");
        std::vector<ItemId> unknown;
        for (auto at = items.size(); at < numbers.size(); ++at) {
            entered.run(numbers[at], on.dayNumber());
            if (!entered.next())
                unknown.emplace_back(m_names.text(numbers[at]));
            entered.finish();
        }
        std::ranges::sort(unknown);
        return unknown;
    });
}

Result<std::vector<AdoptedProgramme>> SqlRecord::adoptions(CivilDate on) {
    return answered([&] {
        if (!m_adoptionReader)
            m_adoptionReader = std::make_unique<AdoptionReader>(*m_connection);
        auto adoptions = m_adoptionReader->read(on, m_documents);
        check({m_adoptionReader->account()});
        return adoptions;
    });
}

Result<std::string> SqlRecord::programmeDocument(const ProgrammeId& programme) {
    return answered([&] { return AdoptionReader(*m_connection).latestDocument(programme); });
}

Result<std::vector<DoneUnder>> SqlRecord::doneUnder(const std::string& ref) {
    return answered([&] {
        Statement rows(*m_connection,
                       "SELECT d.entry_id, i.text, r.text FROM done d"
                       " JOIN name i ON i.name_no = d.item_no JOIN name r ON r.name_no = d.requirement_no"
                       " WHERE d.ref = ? ORDER BY d.at, d.entry_id");
        rows.run(ref);
        std::vector<DoneUnder> done;
        while (rows.next()) {
            DoneUnder each;
            each.entry = rows.read<EntryId>();
            each.item = rows.read<ItemId>();
            each.requirement = rows.read<RequirementId>();
            done.push_back(std::move(each));
        }
        return done;
    });
}

Result<std::vector<BalloonCard>> SqlRecord::balloons(CivilDate on) {
    return answered([&] {
        auto cards = BalloonReader(*m_connection, m_names).cards(on);
        BalloonFacts facts(*m_connection, m_names, m_projector.totals(), false);
        check({{Part::Balloon, Account::all, facts.readAll()}});
        return cards;
    });
}

Result<std::vector<Renaming>> SqlRecord::renamings(CivilDate on) {
    return answered([&] {
        ServiceReader reader(*m_connection);
        auto renamings = reader.renamings(Moment::endOf(on));
        check({reader.account()});
        return renamings;
    });
}

Result<std::vector<LoggedFlight>> SqlRecord::flights(const Registration& balloon, CivilDate first, CivilDate last) {
    return answered(
        [&] { return BalloonReader(*m_connection, m_names).flights(balloon, numberOf(balloon), first, last); });
}

Result<std::vector<Question>> SqlRecord::unreadable() {
    return guarded([&] {
        auto questions = QuestionReader(*m_connection).unreadable();
        sayWhyUnread(questions, m_journal);
        return questions;
    });
}

Result<std::vector<Entry>> SqlRecord::enteredAgain() {
    return answered([&] {
        std::vector<Entry> again;
        for (const auto& question : QuestionReader(*m_connection).enteredAgain())
            if (const auto line = m_journal.line(question.stamp.id); line && !line->unread && !line->voided)
                again.push_back(nowOf(*line));
        return again;
    });
}

Result<std::vector<Question>> SqlRecord::questions() {
    auto codes = told({Subject::Person, {}, {kindName<SignatoryCode>()}, CivilDate::last()});
    if (!codes)
        return tl::unexpected(codes.error());
    return guarded([&] {
        auto questions = QuestionReader(*m_connection).all();
        sayWhyUnread(questions, m_journal);
        for (const auto& each : setByOthers(codesFrom(*codes)))
            questions.push_back({Question::Kind::CodeByAnother, each.said.signatory.text(), each.stamp, each.by});
        return questions;
    });
}

Result<std::vector<TakenOut>> SqlRecord::takenOut(std::string_view kind) {
    return answered([&] {
        std::vector<TakenOut> all;
        for (const auto& [entry, by] : ToldReader(*m_connection).voided(kind)) {
            const auto line = m_journal.line(entry);
            const auto taken = m_journal.line(by);
            if (line && taken && !line->unread && line->voided && !taken->voided)
                all.push_back({line->entry, taken->entry});
        }
        return all;
    });
}

Result<std::vector<Entry>> SqlRecord::amendments(const EntryId& entry) {
    return answered([&] {
        const auto amended = m_journal.amendedBy(entry);
        std::vector<Entry> all{amended.tree.original()};
        for (const auto& id : amended.tree.ids())
            if (id != entry)
                if (const auto& now = amended.tree.now(id))
                    all.push_back(*now);
        return all;
    });
}

Result<void> SqlRecord::fabric(const std::vector<ItemId>& items, CivilDate on,
                               const std::function<void(const FabricHistory&)>& take) {
    return answered([&] {
        FabricReader reader(*m_connection, m_names);
        if (items.empty())
            return check({reader.readAll(on, take)});
        for (const auto& item : items)
            if (const auto number = m_names.find(item))
                check({reader.readOne(*number, on, take)});
    });
}

Result<std::vector<std::optional<Figures>>> SqlRecord::clocks(const std::vector<ItemDay>& asked) {
    return answered([&] {
        std::vector<ClockReader::Asked> numbered;
        numbered.reserve(asked.size());
        for (const auto& [item, day] : asked)
            numbered.push_back({numberOf(item), day});
        return ClockReader(*m_connection, m_projector.totals()).read(numbered);
    });
}

Result<UseLogs> SqlRecord::useLogs(const std::vector<ItemId>& items, CivilDate first, CivilDate last) {
    return answered([&] {
        UseReader reader(*m_connection, m_names, first, last);
        if (items.empty())
            return reader.readAll();
        std::vector<std::int64_t> numbers;
        for (const auto& item : items)
            numbers.push_back(numberOf(item));
        return reader.read(numbers);
    });
}

}
