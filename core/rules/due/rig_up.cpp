// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/due/rig_up.h"

#include "rules/due/headline.h"
#include "rules/standing/limit_state.h"

#include <algorithm>
#include <array>

namespace crownring {

namespace {

std::optional<LimitState> governing(const Assessment& state) {
    const auto* limit = governingLimit(state);
    return limit ? std::optional(*limit) : std::nullopt;
}

class FlightCheck {
public:
    explicit FlightCheck(const PlannedFlight& flight) : m_flight(flight) {}

    [[nodiscard]] bool covers(const DueRow& row) const {
        return std::ranges::find(m_flight.covered, Covered{row.item->id, row.requirement->id}) !=
               m_flight.covered.end();
    }
    void ask(const DueRow& row) {
        switch (row.state.standing) {
        case Standing::Spent:
        case Standing::Lapsed:
        case Standing::Unproven:
            return refuse(RigUpReason::Kind::Standing, row, governing(row.state));
        case Standing::Tolerance:
            if (!mayUseTolerance(row))
                return refuse(RigUpReason::Kind::Positioning, row, governing(row.state));
            [[fallthrough]];
        case Standing::Nearing:
        case Standing::Clear:
            if (!staysExempt(row))
                askLimits(row);
            return;
        case Standing::Closed:
            return;
        }
    }
    void into(RigUp& answer) && {
        answer.reasons = std::move(m_reasons);
        answer.tolerances = std::move(m_tolerances);
    }

private:
    void refuse(RigUpReason::Kind kind, const DueRow& row, std::optional<LimitState> limit) {
        m_reasons.push_back({.kind = kind, .row = &row, .limit = limit});
    }

    [[nodiscard]] bool mayUseTolerance(const DueRow& row) const {
        return m_flight.positioning || row.requirement->toleranceFor == ToleranceFor::Flight;
    }

    /// Exempt now and still so at the end of the flight: its limits do not matter yet.
    [[nodiscard]] bool staysExempt(const DueRow& row) const {
        if (row.state.because != Because::Exempt)
            return false;
        const auto after = row.item->clock + m_flight.use;
        return std::ranges::all_of(row.requirement->exemptUntil, [&](const auto& bound) {
            const auto figure = figureOf(after, bound.first);
            return isCalendar(bound.first) || (figure && *figure < ClockCount(bound.second));
        });
    }

    /// Does the limit leave enough for the whole flight? Nothing left means no flight, not even a short one.
    [[nodiscard]] bool leavesEnough(const LimitState& limit, bool withTolerance) const {
        const auto left = [&](const auto& reach) { return withTolerance ? reach.toleranceLeft : reach.left; };
        if (const auto* reach = limit.calendar())
            return isGood(left(*reach));
        const auto* reach = limit.usage();
        return reach && isGood(left(*reach)) && left(*reach) >= figureOf(m_flight.use, limit.clock);
    }

    void askLimits(const DueRow& row) {
        const auto& limits = row.state.limits;
        if (row.requirement->whichever == Whichever::Last) {
            const auto anyEnough = [&](bool withTolerance) {
                return std::ranges::any_of(limits,
                                           [&](const auto& limit) { return leavesEnough(limit, withTolerance); });
            };
            const auto last = governing(row.state);
            if (!limits.empty() && !anyEnough(mayUseTolerance(row)))
                refuse(RigUpReason::Kind::TooLong, row, last);
            else if (last && !anyEnough(false))
                m_tolerances.push_back({&row, *last});
            return;
        }
        for (const auto& limit : limits)
            if (!leavesEnough(limit, mayUseTolerance(row)))
                refuse(RigUpReason::Kind::TooLong, row, limit);
            else if (!leavesEnough(limit, false))
                m_tolerances.push_back({&row, limit});
    }

    const PlannedFlight& m_flight;
    std::vector<RigUpReason> m_reasons;
    std::vector<ToleranceUse> m_tolerances;
};

/// What a balloon is made of. A hose or an instrument may fly without a requirement of its own: it is looked at with
/// what it belongs to.
constexpr std::array parts{ItemKind::Envelope, ItemKind::Basket, ItemKind::Burner, ItemKind::Cylinder};

void askWhole(const DueList& kit, std::vector<RigUpReason>& reasons) {
    const auto countOf = [&](ItemKind kind) {
        return static_cast<std::size_t>(std::ranges::count(kit.items, kind, &ItemFacts::kind));
    };
    for (const auto part : parts) {
        const auto count = countOf(part);
        if (count == 0 || (count > 1 && part != ItemKind::Cylinder))
            reasons.push_back({.kind = RigUpReason::Kind::Incomplete, .part = part, .count = count});
    }
}

/// Due when an inspection is carried out, it stands in no flight's way before that.
bool waitsForInspection(const DueRow& row) {
    return row.state.governs == ClockName::Inspections && row.state.standing >= Standing::Nearing;
}

bool governsBefore(const DueRow& a, const DueRow& b) {
    return waitsForInspection(a) != waitsForInspection(b) ? waitsForInspection(b) : comesBefore(a, b);
}

bool isBound(const DueList& kit, const ItemFacts& item) {
    return std::ranges::any_of(kit.rows, [&](const DueRow& row) {
        return row.item == &item && !isOfTheRecord(row) && row.requirement->force == Force::Mandatory &&
               isRequired(row.state);
    });
}

}

RigUp rigUp(std::span<const DueRow> rows, const PlannedFlight& flight) {
    RigUp answer;
    FlightCheck check(flight);
    for (const auto& row : rows) {
        if (!isBinding(row)) {
            const bool isDeferred = row.state.because == Because::Deferred;
            if (row.state.standing < Standing::Clear || isDeferred)
                answer.notes.push_back(&row);
            if (isDeferred) // it grounds once it has run out, on the way too
                check.ask(row);
            continue;
        }
        if (check.covers(row))
            continue;
        if (row.state.because == Because::Deferred && row.state.standing >= Standing::Nearing)
            answer.notes.push_back(&row);
        if (!answer.governs || governsBefore(row, *answer.governs))
            answer.governs = &row;
        check.ask(row);
    }
    std::move(check).into(answer);
    answer.mayFly = answer.reasons.empty();
    return answer;
}

RigUp rigUp(const DueList& kit, const PlannedFlight& flight) {
    auto answer = rigUp(kit.rows, flight);
    askWhole(kit, answer.reasons);
    for (const auto& item : kit.items)
        if (item.out)
            answer.reasons.push_back({.kind = RigUpReason::Kind::OutOfService, .item = &item});
    for (const auto& item : kit.items)
        if (std::ranges::find(parts, item.kind) != parts.end() && !isBound(kit, item))
            answer.reasons.push_back({.kind = RigUpReason::Kind::CannotSay, .item = &item});
    answer.mayFly = answer.reasons.empty();
    return answer;
}

}
