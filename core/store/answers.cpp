// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/use_fault.h"
#include "record/verdict_phrase.h"
#include "store/queries/facts_reader.h"
#include "store/sql_record.h"

#include <algorithm>

namespace crownring {

Result<std::vector<ItemFacts>> SqlRecord::facts(const Scope& scope, CivilDate on) {
    return guarded([&]() -> Result<std::vector<ItemFacts>> {
               auto& totals = m_projector.totals();
               if (!scope.balloon && scope.items.empty())
                   return withReadings(FactsReader(*m_connection, m_names, totals, false).read(on, std::nullopt));
               std::vector<std::int64_t> items;
               if (scope.balloon) {
                   const auto balloon = m_names.find(*scope.balloon);
                   if (!balloon)
                       return problem(UseFault::NoBalloon, {*scope.balloon});
                   Statement fitted(*m_connection, "SELECT item_no FROM stay WHERE balloon_no = ? AND from_at < ?"
                                                   " AND (until_at IS NULL OR until_at >= ?) ORDER BY item_no");
                   fitted.run(*balloon, Moment::endOf(on).minutes(), Moment::endOf(on).minutes());
                   while (fitted.next())
                       items.push_back(fitted.read<std::int64_t>());
               }
               std::vector<std::int64_t> named;
               for (const auto& id : scope.items) {
                   const auto item = m_names.find(id);
                   if (!item)
                       return problem(UseFault::NoItem, {id});
                   named.push_back(*item);
               }
               if (!scope.balloon)
                   items = named;
               else if (!named.empty())
                   std::erase_if(items,
                                 [&](auto item) { return std::find(named.begin(), named.end(), item) == named.end(); });
               FactsReader reader(*m_connection, m_names, totals, true);
               std::vector<ItemFacts> facts;
               for (const auto item : items)
                   for (auto& each : reader.read(on, item))
                       facts.push_back(std::move(each));
               return withReadings(std::move(facts));
           })
        .and_then([](auto&& answer) { return std::forward<decltype(answer)>(answer); });
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

Result<std::vector<AdoptedProgramme>> SqlRecord::adoptions(CivilDate on) {
    return guarded([&] {
        Statement rows(*m_connection, "SELECT at, entry_id, programme, digest, bound FROM adoption WHERE at < ?"
                                      " ORDER BY at, entry_id");
        Statement document(*m_connection, "SELECT document FROM adoption WHERE at = ? AND entry_id = ?");
        std::vector<AdoptedProgramme> adoptions;
        rows.run(Moment::endOf(on).minutes());
        while (rows.next()) {
            AdoptedProgramme each;
            each.stamp.at = rows.read<Moment>();
            each.stamp.id = rows.read<EntryId>();
            each.programme = rows.read<ProgrammeId>();
            each.digest = rows.read<std::string>();
            const auto entry = entryFrom(rows.read<std::string>());
            const auto* adopted = entry ? std::get_if<ProgrammeAdopted>(&entry->body) : nullptr;
            if (!adopted) // without it requirements would be missing, and nobody would know
                throw rows.unread();
            each.bound = adopted->bound;
            auto& kept = m_documents[each.digest];
            if (!kept) {
                document.run(each.stamp.at.minutes(), each.stamp.id);
                document.next();
                kept = std::make_shared<const std::string>(document.read<std::string>());
                document.finish();
            }
            each.document = kept;
            adoptions.push_back(std::move(each));
        }
        return adoptions;
    });
}

Result<std::string> SqlRecord::programmeDocument(const ProgrammeId& programme) {
    return guarded([&] {
        Statement row(*m_connection, "SELECT document FROM adoption WHERE programme = ? ORDER BY at DESC, entry_id DESC"
                                     " LIMIT 1");
        row.run(programme);
        return row.next() ? row.read<std::string>() : std::string();
    });
}

Result<std::vector<BalloonCard>> SqlRecord::balloons(CivilDate on) {
    return guarded([&] {
        const auto end = Moment::endOf(on).minutes();
        std::vector<BalloonCard> cards;
        std::unordered_map<std::int64_t, std::size_t> places;
        Statement balloons(*m_connection,
                           "SELECT b.balloon_no, n.text, b.day, b.title, b.operations FROM balloon_entered b"
                           " JOIN name n ON n.name_no = b.balloon_no WHERE b.stands = 1 AND b.day <= ?"
                           " ORDER BY n.text");
        balloons.run(on.dayNumber());
        while (balloons.next()) {
            BalloonCard card;
            places.emplace(balloons.read<std::int64_t>(), cards.size());
            card.balloon = balloons.read<Registration>();
            card.entered = balloons.read<CivilDate>();
            card.title = balloons.read<std::string>();
            card.operations = balloons.read<std::vector<std::string>>();
            cards.push_back(std::move(card));
        }
        const auto cardOf = [&](std::int64_t balloon) -> BalloonCard* {
            const auto place = places.find(balloon);
            return place == places.end() ? nullptr : &cards[place->second];
        };
        Statement fitted(*m_connection, "SELECT balloon_no, COUNT(*) FROM stay WHERE from_at < ?"
                                        " AND (until_at IS NULL OR until_at >= ?) GROUP BY balloon_no");
        fitted.run(end, end);
        while (fitted.next())
            if (auto* card = cardOf(fitted.read<std::int64_t>()))
                card->items = fitted.read<std::int64_t>();
        Statement flown(*m_connection, "SELECT balloon_no, COUNT(*), CAST(SUM(minutes) AS BIGINT),"
                                       " CAST(SUM(landings) AS BIGINT), CAST(SUM(inflations) AS BIGINT), MAX(at)"
                                       " FROM flight WHERE at < ? GROUP BY balloon_no");
        flown.run(end);
        while (flown.next())
            if (auto* card = cardOf(flown.read<std::int64_t>())) {
                card->flights = flown.read<std::int64_t>();
                card->flown.minutes = flown.read<Minutes>();
                card->flown.landings = flown.read<Landings>();
                card->flown.inflations = flown.read<Inflations>();
                card->lastFlight = flown.read<Moment>().on();
            }
        return cards;
    });
}

Result<std::vector<LoggedFlight>> SqlRecord::flights(const Registration& balloon, CivilDate first, CivilDate last) {
    return guarded([&]() -> Result<std::vector<LoggedFlight>> {
               const auto number = m_names.find(balloon);
               if (!number)
                   return problem(UseFault::NoBalloon, {balloon});
               Statement rows(*m_connection, "SELECT at, entry_id, timed, minutes, landings, inflations FROM flight"
                                             " WHERE balloon_no = ? AND at >= ? AND at < ? ORDER BY at, entry_id");
               rows.run(*number, Moment::startOf(first).minutes(), Moment::endOf(last).minutes());
               std::vector<LoggedFlight> flights;
               while (rows.next()) {
                   LoggedFlight flight;
                   flight.balloon = balloon;
                   flight.stamp.at = rows.read<Moment>();
                   flight.stamp.id = rows.read<EntryId>();
                   flight.timed = rows.read<bool>();
                   flight.use.minutes = rows.read<Minutes>();
                   flight.use.landings = rows.read<Landings>();
                   flight.use.inflations = rows.read<Inflations>();
                   flights.push_back(std::move(flight));
               }
               return flights;
           })
        .and_then([](auto&& answer) { return std::forward<decltype(answer)>(answer); });
}

namespace {

std::vector<Question> questionsFrom(Statement& rows) {
    std::vector<Question> questions;
    while (rows.next()) {
        Question question;
        question.stamp.at = rows.read<Moment>();
        question.stamp.id = rows.read<EntryId>();
        question.kind = rows.read<Question::Kind>();
        question.detail = rows.read<std::string>();
        question.subject = rows.read<std::string>();
        questions.push_back(std::move(question));
    }
    return questions;
}

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

Result<std::vector<Question>> SqlRecord::unreadable() {
    return guarded([&] {
        Statement rows(*m_connection, "SELECT q.at, q.entry_id, q.kind, q.detail, n.text FROM question q"
                                      " JOIN name n ON n.name_no = q.subject_no WHERE q.sort = ?"
                                      " ORDER BY q.at, q.entry_id");
        auto questions = questionsFrom(rows.run(static_cast<int>(Subject::Entry)));
        sayWhyUnread(questions, m_journal);
        return questions;
    });
}

Result<std::vector<Question>> SqlRecord::questions() {
    return guarded([&] {
        Statement rows(*m_connection,
                       "SELECT q.at, q.entry_id, q.kind, q.detail, n.text FROM question q"
                       " JOIN name n ON n.name_no = q.subject_no ORDER BY q.at, q.entry_id, n.text, q.kind");
        auto questions = questionsFrom(rows.run());
        sayWhyUnread(questions, m_journal);
        Statement idle(*m_connection, "SELECT at, entry_id, root_id FROM idle_correction ORDER BY at, entry_id");
        idle.run();
        while (idle.next()) {
            Question question{Question::Kind::CorrectionIdle, {}, {}, {}};
            question.stamp.at = idle.read<Moment>();
            question.stamp.id = idle.read<EntryId>();
            question.subject = idle.read<std::string>();
            question.detail = question.stamp.id.text();
            questions.push_back(std::move(question));
        }
        return questions;
    });
}

Result<std::vector<JournalLine>> SqlRecord::lines(const JournalQuery& query) {
    return guarded([&] { return m_journal.lines(query); });
}

Result<std::optional<JournalLine>> SqlRecord::line(const EntryId& id) {
    return guarded([&] { return m_journal.line(id); });
}

Result<std::optional<JournalLine>> SqlRecord::root(const EntryId& id) {
    return guarded([&] { return m_journal.root(id); });
}

}
