// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/question_reader.h"

#include <iterator>

namespace crownring {

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

}

QuestionReader::QuestionReader(const Connection& connection)
    : m_all(connection, "SELECT q.at, q.entry_id, q.kind, q.detail, n.text FROM question q"
                        " JOIN name n ON n.name_no = q.subject_no ORDER BY q.at, q.entry_id, n.text, q.kind"),
      m_unreadable(connection, "SELECT q.at, q.entry_id, q.kind, q.detail, n.text FROM question q"
                               " JOIN name n ON n.name_no = q.subject_no WHERE q.sort = ? ORDER BY q.at, q.entry_id"),
      m_again(connection, "SELECT q.at, q.entry_id, q.kind, q.detail, n.text FROM question q JOIN name n"
                          " ON n.name_no = q.subject_no WHERE q.sort = ? AND q.kind = ? ORDER BY q.at, q.entry_id"),
      m_idle(connection, "SELECT at, entry_id, root_id FROM idle_correction ORDER BY at, entry_id"),
      m_stated(connection,
               "SELECT d.at, d.entry_id, n.text, r.text FROM done d JOIN name n ON n.name_no = d.item_no"
               " JOIN name r ON r.name_no = d.requirement_no WHERE d.paper = 0 AND (d.ref IS NULL OR NOT EXISTS"
               " (SELECT 1 FROM closing c WHERE c.inspection = d.ref AND (c.outcome = 0 OR c.outcome = 1"
               " AND EXISTS (SELECT 1 FROM approval a WHERE a.inspection = d.ref)))) AND NOT EXISTS"
               " (SELECT 1 FROM done l WHERE l.item_no = d.item_no AND l.requirement_no = d.requirement_no"
               " AND (l.at, l.entry_id) > (d.at, d.entry_id)) ORDER BY d.at, d.entry_id"),
      m_service(connection) {}

std::vector<Question> QuestionReader::all() {
    auto questions = questionsFrom(m_all.run());
    readIdle(questions);
    readStated(questions);
    auto happened = m_service.happenedOut();
    std::move(happened.begin(), happened.end(), std::back_inserter(questions));
    auto doubled = m_service.inTwoStates();
    std::move(doubled.begin(), doubled.end(), std::back_inserter(questions));
    return questions;
}

std::vector<Question> QuestionReader::unreadable() {
    return questionsFrom(m_unreadable.run(static_cast<int>(Subject::Entry)));
}

std::vector<Question> QuestionReader::enteredAgain() {
    return questionsFrom(m_again.run(static_cast<int>(Subject::Item), static_cast<int>(Question::Kind::EnteredTwice)));
}

void QuestionReader::readStated(std::vector<Question>& questions) {
    m_stated.run();
    while (m_stated.next()) {
        Question question{Question::Kind::OnlyStated, {}, {}, {}};
        question.stamp.at = m_stated.read<Moment>();
        question.stamp.id = m_stated.read<EntryId>();
        question.subject = m_stated.read<std::string>();
        question.detail = m_stated.read<std::string>();
        questions.push_back(std::move(question));
    }
}

void QuestionReader::readIdle(std::vector<Question>& questions) {
    m_idle.run();
    while (m_idle.next()) {
        Question question{Question::Kind::CorrectionIdle, {}, {}, {}};
        question.stamp.at = m_idle.read<Moment>();
        question.stamp.id = m_idle.read<EntryId>();
        question.subject = m_idle.read<std::string>();
        question.detail = question.stamp.id.text();
        questions.push_back(std::move(question));
    }
}

}
