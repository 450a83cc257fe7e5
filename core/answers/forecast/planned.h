// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is stated ahead in the record: how something will be flown, flights, visits. What is planned for a former
/// registration is planned for the one that the balloon has now.

#include "forecast/use_ahead.h"
#include "registry/books.h"

#include <map>
#include <optional>
#include <vector>

namespace crownring {

struct UseAheadStated {
    Stamp stated;
    UsePlanned plan;
};
struct FlightAhead {
    Stamp at;
    bool timed = false; ///< a time was stated
    FlightPlanned flight;
    std::string note{};
};
struct VisitAhead {
    Stamp stated;
    VisitPlanned visit;
    std::string note{};
};

struct Planned {
    std::vector<UseAheadStated> use;  ///< by stamp
    std::vector<FlightAhead> flights; ///< by stamp
    std::vector<VisitAhead> visits;   ///< by their first day, then stamp
};

/// @param from what ended before it is left out
/// @param known what was stated after it is not known; of flights nobody can tell
[[nodiscard]] Result<Planned> plannedFrom(Books& books, CivilDate from, CivilDate known);

/// The plans that bear on one subject, for `UseAhead`: what is planned for a balloon holds for what is on it; what is
/// planned for the item itself comes before that; a planned flight is flown by its kit, else by what is on its balloon.
class PlansOfSubjects {
public:
    /// Whose plans they are: neither where nothing is planned.
    struct Key {
        std::optional<Registration> balloon;
        std::optional<ItemId> item;
        auto operator<=>(const Key&) const = default;
    };

    PlansOfSubjects() = default;
    explicit PlansOfSubjects(const Planned& planned);

    [[nodiscard]] bool empty() const { return m_ofBalloons.empty() && m_ofItems.empty(); }
    [[nodiscard]] Key keyOf(const std::optional<Registration>& balloon, const std::optional<ItemId>& item) const;
    [[nodiscard]] std::vector<StatedPlan> of(const Key& key) const;

private:
    struct Plans {
        std::vector<StatedPlan> paces;
        std::map<CivilDate, Usage> flown;
    };
    std::map<Registration, Plans> m_ofBalloons;
    std::map<ItemId, Plans> m_ofItems;
};

}
