// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// When what limits an item falls due: a date that is certain where the calendar limits it, a band where use does.
///
///     every 12 months or 100 h, whichever is first: due 2027-04-10, 31 h left
///     p10 2026-08-02   with one chance in ten the hours are used up by then
///     p50 2026-09-19
///     p90 2027-04-10   the calendar comes first
///
/// The day is the last good one by the calendar, and the one on which nothing is left of a count. Of several counts of
/// one item the band's places are compared one by one, as if all went together: a flight puts on all of them.

#include "forecast/use_ahead.h"
#include "rules/standing/standing.h"

#include <map>
#include <optional>
#include <utility>

namespace crownring {

/// Days by which it falls due with a chance of one in ten, of one in two, of nine in ten; nothing where that is not
/// within `UseAhead::horizonYears`.
struct DateBand {
    std::optional<CivilDate> p10;
    std::optional<CivilDate> p50;
    std::optional<CivilDate> p90;
    bool operator==(const DateBand&) const = default;
};

/// @param left more than nothing
[[nodiscard]] DateBand usedUp(const UseAhead& ahead, UseClock clock, ClockCount left);

/// The same, remembered: what is inspected together has as much left, so that many rows ask for one band.
class DatesAhead {
public:
    explicit DatesAhead(UseAhead ahead) : m_ahead(std::move(ahead)) {}
    [[nodiscard]] const UseAhead& use() const { return m_ahead; }

    /// @param certain a day on which it falls due anyway; no band where hardly anything is used up by then
    [[nodiscard]] DateBand usedUp(UseClock clock, ClockCount left, const std::optional<CivilDate>& certain);

private:
    UseAhead m_ahead;
    std::map<std::pair<UseClock, ClockCount>, DateBand> m_known;
};

/// Of a row of the due list. Nothing where it is unproven, past already or closed, or where nothing that can be
/// foretold limits it.
/// @param ahead from the day after `today` on; null where nothing will be flown, so that no count is ever used up
[[nodiscard]] std::optional<DateBand> fallsDue(const Assessment& state, Whichever whichever, DatesAhead* ahead,
                                               CivilDate today);

/// Does a count of use limit the row?
[[nodiscard]] bool isLimitedByUse(const Assessment& state);
/// Does when it falls due hang on how its item is flown?
[[nodiscard]] bool hangsOnUse(const Assessment& state);

}
