// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/made_logs.h"

#include <algorithm>
#include <cmath>

namespace crownring::made {

namespace {

constexpr int asked = 12;
constexpr int others = 8; ///< of a fleet that a new one joins

using Months = std::array<double, 12>;
constexpr Months flyable{.22, .27, .36, .45, .52, .55, .56, .56, .50, .42, .27, .20};
constexpr Months likedPrivately{.10, .12, .45, .90, 1, 1, 1, 1, 1, .75, .25, .10};
constexpr Months likedByGuests{.10, .10, .40, .80, 1, 1, 1, 1, 1, .85, .30, .12};

/// Of one region: days on which one can fly, in spells.
class Weather {
public:
    Weather(CivilDate first, CivilDate last, Draws& draws) : m_first(first) {
        bool good = true;
        double year = 1;
        for (auto day = first; day <= last; day = addDays(day, 1)) {
            if (day == first || (day.month() == 1 && day.day() == 1))
                year = std::exp(0.1 * draws.normal());
            const double chance = std::min(flyable.at(static_cast<std::size_t>(day.month()) - 1) * year, 0.9);
            // Stays as it is on three of five days, else is drawn anew.
            if (draws.uniform() > 0.6)
                good = draws.uniform() < chance;
            m_good.push_back(good);
        }
    }
    [[nodiscard]] bool isGood(CivilDate day) const {
        return m_good.at(static_cast<std::size_t>(daysBetween(m_first, day).value()));
    }

private:
    CivilDate m_first;
    std::vector<bool> m_good;
};

struct Habits {
    Months liked{};
    double weekend = 0; ///< chance on a day that is liked and good
    double weekday = 0;
    double second = 0; ///< of a second flight that day
    double drift = 0;  ///< of the logarithm of its eagerness, a year
    double off = 0;    ///< chance a year of weeks off
    bool festival = false;
    bool summerOnly = false;
    double minutes = 60;
    double twoLandings = 0;
};

Habits habitsOf(Character character, Draws& draws) {
    Habits habits;
    habits.minutes = 45 + 30 * draws.uniform();
    switch (character) {
    case Character::Private:
        habits.liked = likedPrivately;
        habits.weekend = 0.35 + 0.5 * draws.uniform();
        habits.weekday = 0.03 + 0.10 * draws.uniform();
        habits.drift = 0.2;
        habits.off = 0.4;
        habits.festival = draws.uniform() < 0.6;
        habits.twoLandings = 0.1;
        break;
    case Character::Commercial:
        habits.liked = likedByGuests;
        habits.weekend = 0.6 + 0.35 * draws.uniform();
        habits.weekday = 0.4 + 0.4 * draws.uniform();
        habits.second = 0.1 + 0.4 * draws.uniform();
        habits.drift = 0.1;
        habits.off = 0.2;
        break;
    case Character::Seasonal:
        habits.liked.fill(1);
        habits.weekend = 0.5 + 0.4 * draws.uniform();
        habits.weekday = 0.2 + 0.4 * draws.uniform();
        habits.drift = 0.15;
        habits.off = 0.15;
        habits.summerOnly = true;
        break;
    case Character::New:
    case Character::Changed:
        return habitsOf(draws.uniform() < 0.5 ? Character::Private : Character::Commercial, draws);
    }
    return habits;
}

bool isWeekend(CivilDate day) {
    const auto sinceThursday = ((day.dayNumber() % 7) + 7) % 7; // 1970-01-01 was one
    return sinceThursday == 2 || sinceThursday == 3;
}

/// What one balloon flies.
class Flying {
public:
    Flying(const Habits& habits, const Weather& weather, Draws& draws)
        : m_habits(habits), m_weather(weather), m_draws(draws) {}

    void changeOn(CivilDate day, double times) {
        m_changes = day;
        m_times = times;
    }

    UseLog fly(CivilDate first, CivilDate last) {
        UseLog log{first, last, {}};
        for (auto day = first; day <= last; day = addDays(day, 1)) {
            if (day == first || (day.month() == 1 && day.day() == 1))
                beginYear(day);
            if (day == m_changes)
                m_changed = m_times;
            if (const int flights = flightsOn(day); flights > 0)
                log.days.push_back(dayOf(day, flights));
        }
        return log;
    }

private:
    void beginYear(CivilDate day) {
        m_eager *= std::exp(m_habits.drift * m_draws.normal());
        m_eager = std::clamp(m_eager, 0.3, 2.5);
        const auto newYear = addDays(day, -day.day() + 1);
        const auto at = [&](double days) { return addDays(newYear, static_cast<std::int64_t>(days)); };
        m_begins = at(120 + 10 * m_draws.normal());
        m_ends = at(272 + 10 * m_draws.normal());
        m_festival = m_habits.festival ? at(225 + 6 * m_draws.normal()) : CivilDate::last();
        m_offFrom = m_offUntil = CivilDate();
        if (m_draws.uniform() < m_habits.off) {
            m_offFrom = at(365 * m_draws.uniform());
            m_offUntil = addDays(m_offFrom, static_cast<std::int64_t>(14 + 50 * m_draws.uniform()));
        }
    }

    int flightsOn(CivilDate day) {
        const double chance = chanceOn(day);
        const bool flies = m_draws.uniform() < chance;
        const bool twice = m_draws.uniform() < std::min(m_habits.second * m_eager * m_changed, 0.9);
        return flies && m_weather.isGood(day) ? 1 + twice : 0;
    }

    double chanceOn(CivilDate day) const {
        if (m_offFrom <= day && day < m_offUntil)
            return 0;
        if (m_festival <= day && day < addDays(m_festival, 6))
            return 0.9;
        if (m_habits.summerOnly && (day < m_begins || day > m_ends))
            return 0;
        return std::min(m_habits.liked.at(static_cast<std::size_t>(day.month()) - 1) *
                            (isWeekend(day) ? m_habits.weekend : m_habits.weekday) * m_eager * m_changed,
                        0.97);
    }

    DayUse dayOf(CivilDate day, int flights) {
        DayUse use{day, flights, {}};
        for (int flight = 0; flight < flights; ++flight) {
            const double minutes = std::max(m_habits.minutes + 14 * m_draws.normal(), 10.0);
            use.use += {Minutes(std::lround(minutes)), Landings(m_draws.uniform() < m_habits.twoLandings ? 2 : 1),
                        Inflations(1)};
        }
        return use;
    }

    Habits m_habits;
    const Weather& m_weather;
    Draws& m_draws;
    double m_eager = 1;
    double m_changed = 1;
    CivilDate m_changes = CivilDate::last();
    double m_times = 1;
    CivilDate m_begins, m_ends, m_festival, m_offFrom, m_offUntil;
};

}

MadeBalloon cutAt(const UseLog& log, CivilDate known) {
    MadeBalloon made{{log.first, known, {}}, {addDays(known, 1), log.last, {}}, false};
    for (const auto& day : log.days)
        (day.on <= known ? made.known : made.hidden).days.push_back(day);
    return made;
}

std::string nameOf(Character character) {
    switch (character) {
    case Character::Private:
        return "private";
    case Character::Commercial:
        return "commercial";
    case Character::Seasonal:
        return "seasonal";
    case Character::New:
        return "new";
    case Character::Changed:
        return "changed half way";
    }
    return {};
}

std::vector<MadeBalloon> madeFleet(Character character, std::uint64_t seed) {
    Draws draws(seed, static_cast<std::uint32_t>(character) + 1);
    const auto known =
        addDays(*CivilDate::fromYearMonthDay(2025, 1, 1), static_cast<std::int64_t>(365 * draws.uniform()));
    const auto last = addMonths(known, 12, DayRule::Same);
    const auto earliest = addMonths(known, -6 * 12, DayRule::Same);
    const Weather weather(earliest, last, draws);
    std::vector<MadeBalloon> fleet;
    const bool joins = character == Character::New;
    for (int i = 0; i < asked + (joins ? others : 0); ++i) {
        const bool isOld = i >= asked;
        const auto months = joins && !isOld ? 2 + 9 * draws.uniform() : 36 + 36 * draws.uniform();
        const auto first = std::max(addDays(known, -static_cast<std::int64_t>(months * 30.4)), earliest);
        Flying flying(habitsOf(character, draws), weather, draws);
        if (character == Character::Changed) {
            const double times = draws.uniform() < 0.5 ? 0.33 + 0.27 * draws.uniform() : 1.7 + 1.3 * draws.uniform();
            flying.changeOn(addDays(first, daysBetween(first, known).value() / 2), times);
        }
        fleet.push_back(cutAt(flying.fly(first, last), known));
        fleet.back().isAsked = !isOld;
    }
    return fleet;
}

}
