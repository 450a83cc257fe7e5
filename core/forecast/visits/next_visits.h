// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Which visits can be the next one in a cheapest plan of a balloon. Not looked at is what another plan does at no more
/// cost with something done later, or with a visit in a later week:
///
/// - what neither keeps a pattern nor counts for another is done at the last visit that serves; so of such tasks that
///   can be done at the same stops those are covered whose last weeks come first;
/// - a visit takes place in the last week in which it costs no more, unless another one comes before that;
/// - what could only be done late otherwise is done.
///
/// `tests/forecast/visits` holds that against all visits there are. A rough search takes what counts for other things
/// to be like all else, done at the last visit that serves: it finds good plans where many things count for many
/// others.

#include "forecast/visits/visit_plan.h"

#include <boost/container/small_vector.hpp>

#include <functional>

namespace crownring {

/// What a visit forbids the next one.
struct Forbidden {
    static constexpr int never = 1 << 14;

    /// By group: until this week what was covered could have been done instead; -1: it could not.
    boost::container::small_vector<std::int16_t, 12> waits{};
    int movesTo = never; ///< the week that the visit itself could as well be in: none comes after that

    [[nodiscard]] std::uint64_t groupsIn(int week) const;
    [[nodiscard]] bool isNoMoreThan(const Forbidden& other) const;
};

struct NextVisit {
    int week = 0;
    std::size_t stop = 0;
    std::uint64_t covers = 0;
    double cost = 0; ///< with what is late by then
    Running due;     ///< after it
    Forbidden forbidden;
};

class NextVisits {
public:
    /// @param stopCosts of each stop; where one is without bound nobody goes there
    NextVisits(const VisitSearch& asked, std::span<const double> stopCosts, VisitSearch::Effort effort);

    /// Tells those in a week. How many were looked at, `most` or fewer.
    /// @param isPinned there is one, though it cover nothing
    std::size_t tell(int week, bool isPinned, const Running& due, const Forbidden& before, std::size_t most,
                     const std::function<void(NextVisit&&)>& to) const;

private:
    friend class NextVisitsTelling;
    void chooseStops();
    void chooseSorts();
    void layNextWeeks();
    [[nodiscard]] std::span<const std::size_t> stopsOf(int week) const;

    const VisitSearch& m_asked;
    std::span<const double> m_stopCosts;
    bool m_isRough;
    std::vector<std::vector<std::size_t>> m_sorts; ///< groups of each sort
    std::vector<std::size_t> m_stops;              ///< those worth going to
    std::vector<std::size_t> m_firstStop;          ///< by week, into these
    std::vector<std::vector<int>> m_nextWeek;      ///< by group and week: the first after it in which it can be done
};

}
