// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Tasks that are always done together: all items of a balloon that were inspected on one day, with one interval. A
/// cheapest plan of all is one of their groups, since what each costs early is in proportion.

#include "forecast/visits/visit_question.h"

#include <boost/container/small_vector.hpp>

#include <cstdint>
#include <limits>
#include <vector>

namespace crownring {

struct TaskGroup {
    std::vector<std::size_t> tasks; ///< in order; the first stands for all
    double cost = 0;                ///< of all
    std::vector<std::size_t> implies{};
    std::vector<std::size_t> impliedBy{};
    /// Whether it may pay to do it before the last visit that serves: it keeps a pattern, or does not last evenly; or
    /// it counts for something else.
    bool isUneven = false;
    [[nodiscard]] bool mayPayEarly() const { return isUneven || !implies.empty(); }
    /// The same for groups that can be done at the same stops, never pay early, and that nothing else counts for.
    std::size_t sort = 0;
    /// The same for those that would be, were it not for what counts for what; what counts for others apart.
    std::size_t roughSort = 0;
};

using Running = boost::container::small_vector<std::uint16_t, 12>; ///< by group: its due date

inline constexpr double unreached = std::numeric_limits<double>::infinity();
/// Sets of groups, a bit each.
[[nodiscard]] constexpr std::uint64_t bit(std::size_t group) { return std::uint64_t{1} << group; }
[[nodiscard]] constexpr bool has(std::uint64_t groups, std::size_t group) { return (groups >> group & 1U) != 0; }

/// @pre at most `mostVisitTasks`
[[nodiscard]] std::vector<TaskGroup> groupsOf(const VisitQuestion& question);

}
