// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/service_reader.h"

#include "registry/service_phrase.h"

#include <algorithm>
#include <tuple>

namespace crownring {

namespace {

const auto never = Moment::endOf(CivilDate::last());

struct Mark {
    Moment at;
    OutOfService out;
};

Mark markFrom(Statement& row) {
    Mark mark;
    mark.at = row.read<Moment>();
    mark.out.since = mark.at.on();
    mark.out.state = row.read<ServiceState>();
    mark.out.to = row.read<std::string>();
    return mark;
}

bool isOut(const OutOfService& mark) { return mark.state != ServiceState::InService; }
bool isForGood(const OutOfService& mark) { return mark.state == ServiceState::Condemned; }

}

ServiceReader::ServiceReader(const Connection& connection)
    : m_all(connection, "SELECT subject_no, at, state, buyer FROM service WHERE sort = ? AND at < ?"
                        " ORDER BY subject_no, at, state, entry_id"),
      m_one(connection, "SELECT at, state, buyer FROM service WHERE sort = ? AND subject_no = ? AND at < ?"
                        // What is condemned (8) stays so, whatever is said later.
                        " ORDER BY CASE WHEN state = 8 THEN 0 ELSE 1 END, CASE WHEN state = 8 THEN at ELSE -at END,"
                        " state DESC, entry_id DESC LIMIT 1"),
      m_words(connection, "SELECT at, state, buyer, entry_id FROM service WHERE sort = ? AND subject_no = ? AND at < ?"
                          " ORDER BY at, state, entry_id"),
      m_renamings(connection, "SELECT r.at, r.entry_id, f.text, t.text FROM renaming r"
                              " JOIN name f ON f.name_no = r.balloon_no JOIN name t ON t.name_no = r.to_no"
                              " WHERE r.at < ? ORDER BY r.at, r.entry_id"),
      // A registration that was given up is in use again when it is taken again, or when something is fitted to it.
      m_given(connection, "SELECT r.balloon_no, r.at, t.text, (SELECT MIN(s.from_at) FROM stay s"
                          " WHERE s.balloon_no = r.balloon_no AND s.from_at > r.at) FROM renaming r"
                          " JOIN name t ON t.name_no = r.to_no ORDER BY r.at, r.entry_id"),
      m_ofBalloon(connection, "SELECT f.at, f.entry_id, n.text FROM flight f JOIN name n ON n.name_no = f.balloon_no"
                              " WHERE f.balloon_no = ? AND f.at >= ? AND f.at < ?"),
      m_events(connection, "SELECT o.at, o.entry_id, n.text FROM occurrence o JOIN name n ON n.name_no = o.subject_no"
                           " WHERE o.sort = ? AND o.subject_no = ? AND o.at >= ? AND o.at < ?"),
      m_elsewhere(connection,
                  "SELECT k.at, k.entry_id, n.text FROM stay s JOIN kit_flight k ON k.item_no = s.item_no"
                  " AND (k.at, k.entry_id) >= (s.from_at, s.from_id)"
                  " AND (s.until_at IS NULL OR (k.at, k.entry_id) < (s.until_at, s.until_id))"
                  " JOIN name n ON n.name_no = k.item_no WHERE s.balloon_no = ? AND k.at >= ? AND k.at < ?"
                  " AND NOT EXISTS (SELECT 1 FROM flight f WHERE f.balloon_no = s.balloon_no AND f.at = k.at"
                  " AND f.entry_id = k.entry_id)"),
      m_inKit(connection, "SELECT k.at, k.entry_id, n.text FROM kit_flight k JOIN name n ON n.name_no = k.item_no"
                          " WHERE k.item_no = ? AND k.at >= ? AND k.at < ?"),
      m_aboard(connection, "SELECT f.at, f.entry_id, n.text FROM stay s JOIN flight f ON f.balloon_no = s.balloon_no"
                           " AND f.counted = 1 AND (f.at, f.entry_id) >= (s.from_at, s.from_id)"
                           " AND (s.until_at IS NULL OR (f.at, f.entry_id) < (s.until_at, s.until_id))"
                           " JOIN name n ON n.name_no = s.item_no WHERE s.item_no = ? AND f.at >= ? AND f.at < ?"),
      m_filled(connection, "SELECT t.at, t.entry_id, n.text FROM told t JOIN entry e ON e.entry_id = t.entry_id"
                           " JOIN name n ON n.name_no = t.subject_no WHERE t.sort = 1 AND e.kind = ?"
                           " AND t.subject_no = ? AND t.at >= ? AND t.at < ?"),
      m_twoStates(connection, "SELECT a.at, a.entry_id, n.text, b.state, b.buyer FROM service a JOIN service b"
                              " ON b.sort = a.sort AND b.subject_no = a.subject_no AND b.at = a.at"
                              " AND b.state > a.state AND NOT EXISTS (SELECT 1 FROM service c WHERE c.sort = b.sort"
                              " AND c.subject_no = b.subject_no AND c.at = b.at"
                              " AND (c.state > b.state OR c.state = b.state AND c.entry_id > b.entry_id))"
                              " JOIN name n ON n.name_no = a.subject_no ORDER BY a.at, a.entry_id"),
      m_rowsOut(connection, "SELECT sort, subject_no, at, entry_id, state, buyer FROM service"),
      m_rowsRenamed(connection, "SELECT balloon_no, at, entry_id, to_no FROM renaming") {}

Account ServiceReader::account() {
    Account account{Part::Service, Account::all, {}};
    for (auto* rows : {&m_rowsOut, &m_rowsRenamed}) {
        rows->run();
        while (rows->next())
            account.tally.add(rows->digest());
    }
    return account;
}

std::unordered_map<std::int64_t, OutOfService> ServiceReader::allOut(Subject sort, Moment end) {
    std::unordered_map<std::int64_t, OutOfService> out;
    m_all.run(static_cast<int>(sort), end.minutes());
    while (m_all.next()) {
        const auto number = m_all.read<std::int64_t>();
        auto mark = markFrom(m_all).out;
        if (const auto before = out.find(number); before == out.end())
            out.emplace(number, std::move(mark));
        else if (!isForGood(before->second))
            before->second = std::move(mark);
    }
    std::erase_if(out, [](const auto& each) { return !isOut(each.second); });
    return out;
}

std::optional<OutOfService> ServiceReader::outOf(Subject sort, std::int64_t number, Moment end) {
    std::optional<OutOfService> out;
    m_one.run(static_cast<int>(sort), number, end.minutes());
    if (m_one.next())
        out = markFrom(m_one).out;
    m_one.finish();
    return out && isOut(*out) ? out : std::nullopt;
}

StateWords ServiceReader::wordsOf(std::int64_t item, Moment end) {
    StateWords words;
    m_words.run(static_cast<int>(Subject::Item), item, end.minutes());
    while (m_words.next()) {
        auto& word = words.emplace_back();
        auto mark = markFrom(m_words);
        word.out = std::move(mark.out);
        word.stamp.at = mark.at;
        word.stamp.id = m_words.read<EntryId>();
    }
    return words;
}

std::vector<Renaming> ServiceReader::renamings(Moment end) {
    std::vector<Renaming> renamings;
    m_renamings.run(end.minutes());
    while (m_renamings.next()) {
        Renaming each;
        each.stamp.at = m_renamings.read<Moment>();
        each.stamp.id = m_renamings.read<EntryId>();
        each.from = m_renamings.read<Registration>();
        each.to = m_renamings.read<Registration>();
        renamings.push_back(std::move(each));
    }
    return renamings;
}

std::vector<ServiceReader::Out> ServiceReader::stretches(Subject sort) {
    std::vector<Out> stretches;
    std::int64_t last = 0;
    bool open = false;
    bool forGood = false;
    m_all.run(static_cast<int>(sort), never.minutes());
    while (m_all.next()) {
        const auto number = m_all.read<std::int64_t>();
        const auto [at, out] = markFrom(m_all);
        if (number == last && forGood)
            continue;
        forGood = isForGood(out);
        if (open && number == last)
            stretches.back().until = at;
        open = isOut(out);
        last = number;
        if (open)
            stretches.push_back({number, outFrom(at), never, reasonOf(out)});
    }
    return stretches;
}

std::vector<ServiceReader::Out> ServiceReader::givenUp() {
    std::vector<Out> stretches;
    m_given.run();
    while (m_given.next()) {
        Out out;
        out.number = m_given.read<std::int64_t>();
        const auto at = m_given.read<Moment>();
        out.why = Phrase{ServicePhrase::Renamed, {at.on(), m_given.read<Registration>()}};
        out.from = at; // it counts on nothing that was fitted from then on
        out.until = m_given.read<std::optional<Moment>>().value_or(never);
        stretches.push_back(std::move(out));
    }
    return stretches;
}

template <class... Values>
void ServiceReader::ask(Question::Kind kind, Statement& rows, const Argument& why, std::vector<Question>& questions,
                        const Values&... values) {
    rows.run(values...);
    while (rows.next()) {
        Question question{kind, {}, {}, why};
        question.stamp.at = rows.read<Moment>();
        question.stamp.id = rows.read<EntryId>();
        question.subject = rows.read<std::string>();
        questions.push_back(std::move(question));
    }
}

void ServiceReader::askOfBalloon(const Out& out, std::vector<Question>& questions) {
    ask(Question::Kind::FlownOutOfService, m_ofBalloon, out.why, questions, out.number, out.from.minutes(),
        out.until.minutes());
    ask(Question::Kind::HappenedOutOfService, m_events, out.why, questions, static_cast<int>(Subject::Balloon),
        out.number, out.from.minutes(), out.until.minutes());
}

std::vector<Question> ServiceReader::inTwoStates() {
    std::vector<Question> questions;
    m_twoStates.run();
    while (m_twoStates.next()) {
        Question question{Question::Kind::TwoStates, {}, {}, {}};
        question.stamp.at = m_twoStates.read<Moment>();
        question.stamp.id = m_twoStates.read<EntryId>();
        question.subject = m_twoStates.read<std::string>();
        OutOfService holds;
        holds.since = question.stamp.at.on();
        holds.state = m_twoStates.read<ServiceState>();
        holds.to = m_twoStates.read<std::string>();
        question.detail = reasonOf(holds);
        questions.push_back(std::move(question));
    }
    return questions;
}

std::vector<Question> ServiceReader::happenedOut() {
    constexpr auto flown = Question::Kind::FlownOutOfService;
    std::vector<Question> questions;
    for (const auto& out : givenUp())
        askOfBalloon(out, questions);
    for (const auto& out : stretches(Subject::Balloon)) {
        askOfBalloon(out, questions);
        ask(flown, m_elsewhere, out.why, questions, out.number, out.from.minutes(), out.until.minutes());
    }
    for (const auto& out : stretches(Subject::Item)) {
        ask(flown, m_inKit, out.why, questions, out.number, out.from.minutes(), out.until.minutes());
        ask(flown, m_aboard, out.why, questions, out.number, out.from.minutes(), out.until.minutes());
        ask(Question::Kind::FilledOutOfService, m_filled, out.why, questions, std::string(kindName<CylinderFilled>()),
            out.number, out.from.minutes(), out.until.minutes());
    }
    std::ranges::stable_sort(questions, {}, [](const Question& each) { return std::tie(each.stamp, each.subject); });
    return questions;
}

}
