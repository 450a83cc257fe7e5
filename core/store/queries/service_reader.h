// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Reads what is out of service, what was renamed, and what flew nevertheless.

#include "registry/apart/kept_apart.h"
#include "registry/question.h"
#include "registry/service.h"
#include "store/accounts/account.h"
#include "store/projection/kept.h"

#include <optional>
#include <unordered_map>
#include <vector>

namespace crownring {

class ServiceReader {
public:
    explicit ServiceReader(const Connection& connection);

    /// By the number of the item or balloon; what is in service is left out.
    [[nodiscard]] std::unordered_map<std::int64_t, OutOfService> allOut(Subject sort, Moment end);
    [[nodiscard]] std::optional<OutOfService> outOf(Subject sort, std::int64_t number, Moment end);
    /// All that is said of an item before that moment.
    [[nodiscard]] StateWords wordsOf(std::int64_t item, Moment end);
    /// In the order of their stamps.
    [[nodiscard]] std::vector<Renaming> renamings(Moment end);
    /// What all of it rests on, whatever the day.
    [[nodiscard]] Account account();
    /// Each flight of a balloon or an item that was out of service, each event of such a balloon and each filling of
    /// such a cylinder, by stamp and name.
    [[nodiscard]] std::vector<Question> happenedOut();
    /// Each word that another of the same moment overrules: of several what is furthest from service holds, whatever
    /// their ids.
    [[nodiscard]] std::vector<Question> inTwoStates();

private:
    /// From when until when it was out.
    struct Out {
        std::int64_t number = 0;
        Moment from;
        Moment until;
        Argument why;
    };
    [[nodiscard]] std::vector<Out> stretches(Subject sort);
    [[nodiscard]] std::vector<Out> givenUp();
    template <class... Values>
    void ask(Question::Kind kind, Statement& rows, const Argument& why, std::vector<Question>& questions,
             const Values&... values);
    void askOfBalloon(const Out& out, std::vector<Question>& questions);

    Statement m_all, m_one, m_words, m_renamings, m_given, m_ofBalloon, m_events, m_elsewhere, m_inKit, m_aboard,
        m_filled, m_twoStates, m_rowsOut, m_rowsRenamed;
};

}
