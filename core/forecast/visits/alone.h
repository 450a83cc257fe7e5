// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a group of tasks costs as if it were alone, or together with one that it counts for: never more than what they
/// cost in a plan of all. An annual that counts for a 100-hour inspection is looked at with it, since by itself the
/// 100-hour inspection would leave all of its work to annuals that nobody pays for.

#include "forecast/visits/alike_tasks.h"

#include <optional>
#include <span>

namespace crownring {

class Alone {
public:
    /// @param counted a group that it counts for
    /// @param doneAt by stop: groups that can be done there
    /// @param question must outlive it
    Alone(const VisitQuestion& question, std::span<const TaskGroup> groups, std::span<const std::uint64_t> doneAt,
          std::size_t group, std::optional<std::size_t> counted);

    /// By week and due dates: the least that is paid from there on.
    using Least = std::vector<double>;
    /// @param stopCosts of each stop
    [[nodiscard]] Least leastAt(std::span<const double> stopCosts) const;
    [[nodiscard]] double from(const Least& least, int week, const Running& due) const {
        return valueAt(least, week, m_first.places[due[m_first.group]],
                       m_then ? m_then->places[due[m_then->group]] : 0);
    }
    /// The stops that its cheapest visits go to.
    [[nodiscard]] std::vector<std::size_t> stopsOf(std::span<const double> stopCosts, const Least& least) const;
    [[nodiscard]] bool isServedAt(std::size_t stop) const { return m_serves[stop] != 0; }

private:
    /// What doing it costs beside going there, what it costs more where it is paid for, and the place that follows.
    struct Doing {
        double late = 0;
        double work = 0;
        std::size_t next = 0;
    };
    struct Group {
        std::size_t group = 0;
        std::size_t width = 0;           ///< places that are told apart
        std::size_t beyond = 0;          ///< the place of what is not asked within the time, where that is one
        std::vector<std::size_t> places; ///< by due date
        std::vector<Doing> doing;        ///< by week and place
        std::vector<double> end;         ///< by place: where it is never done
        [[nodiscard]] const Doing& at(int week, std::size_t place) const {
            return doing[static_cast<std::size_t>(week) * width + place];
        }
    };
    /// How a stop serves.
    enum Serving : std::uint8_t { First = 1, FirstCounted = 2, Then = 4, ThenCounted = 8 };
    struct Pair {
        std::size_t first = 0;
        std::size_t then = 0;
    };
    struct Costs;

    [[nodiscard]] Group groupOf(const TaskGroup& tasks, std::size_t group, bool isEveryDueApart) const;
    void layPlaces(const VisitTask& task, const VisitTask* thenTask);
    [[nodiscard]] Costs costsIn(int week, std::size_t& stop, std::span<const double> stopCosts) const;
    [[nodiscard]] std::size_t placeOf(std::size_t first, std::size_t then) const {
        return m_places[first * (m_then ? m_then->width : 1) + then];
    }
    [[nodiscard]] double valueAt(const Least& least, int week, std::size_t first, std::size_t then) const {
        const auto place = placeOf(first, then);
        return place == nowhere ? 0 : least[m_rows[static_cast<std::size_t>(week)] + place];
    }
    static constexpr std::size_t nowhere = std::numeric_limits<std::size_t>::max();

    const VisitQuestion* m_question;
    Group m_first;
    std::optional<Group> m_then;
    std::vector<std::uint8_t> m_serves; ///< by stop
    std::vector<std::size_t> m_places; ///< by both places: among those that can be reached; `nowhere`: nothing is asked
    std::vector<Pair> m_pairs;         ///< in the order in which they can be reached first
    std::vector<std::size_t> m_rows;   ///< by week: where it begins; as many are in it as can be reached by then
};

}
