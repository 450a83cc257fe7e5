// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Builds the facts of items and requirements for the tests of the rules, as short as they are written in a logbook.

#include "rules/programme/programme.h"
#include "rules/standing/standing.h"

#include <QtTest>

#include <algorithm>
#include <cmath>

namespace crownring::shed {

inline CivilDate day(std::string_view iso) { return CivilDate::parse(iso).value(); }

/// Hours as written in a logbook, in whole minutes: 312.4 h are 18,744 min.
inline std::int64_t hours(double value) { return std::llround(value * 60); }

inline Figures clockOf(std::int64_t minutes, std::int64_t landings = 0, std::int64_t inflations = 0) {
    return {Minutes{minutes}, Landings{landings}, Inflations{inflations}};
}
inline constexpr Figures nothingStated{std::nullopt, std::nullopt, std::nullopt};

/// An item and its history. Accomplishments are at 18:00, events at 00:00, as in the record.
class Item {
public:
    explicit Item(ItemKind kind = ItemKind::Envelope) {
        m_facts.id = ItemId("ITEM-1");
        m_facts.kind = kind;
        m_facts.serial = "100";
        m_facts.type = "T-77";
        m_facts.entered = day("2010-01-01");
    }
    Item& called(const char* id) { return m_facts.id = ItemId(id), *this; }
    Item& made(std::string_view text) { return m_facts.made = DayOrMonth::parse(text).value(), *this; }
    Item& entered(std::string_view on, Figures broughtForward = newFigures) {
        m_facts.entered = day(on);
        m_facts.broughtForward = broughtForward;
        return *this;
    }
    Item& at(Figures clock) { return m_facts.clock = clock, *this; }
    Item& at(double clockHours) { return at(clockOf(hours(clockHours))); }
    Item& done(const char* requirement, std::string_view on, Figures clock = newFigures, Figures stated = nothingStated,
               const char* method = "", const char* entry = "e1") {
        m_facts.done.push_back(
            {RequirementId(requirement), {Moment(day(on), TimeOfDay(18, 0)), EntryId(entry)}, clock, stated, method});
        std::ranges::stable_sort(m_facts.done, {}, &Accomplishment::stamp);
        return *this;
    }
    Item& done(const char* requirement, std::string_view on, double clockHours) {
        return done(requirement, on, clockOf(hours(clockHours)));
    }
    Item& happened(const char* event, std::string_view on, TimeOfDay time = {}) {
        m_facts.events.push_back({event, {Moment(day(on), time), EntryId("v1")}});
        return *this;
    }
    Item& flownFor(std::vector<std::string> operations) { return m_facts.operations = std::move(operations), *this; }
    ItemFacts& facts() { return m_facts; }
    operator const ItemFacts&() const { return m_facts; }

private:
    ItemFacts m_facts;
};

/// What is in force: the requirements given.
class Rules : public InForce {
public:
    Rules() = default;
    explicit Rules(std::vector<Requirement> requirements) : m_requirements(std::move(requirements)) {}
    [[nodiscard]] const Requirement* find(const RequirementId& id) const override {
        const auto found = std::ranges::find(m_requirements, id, &Requirement::id);
        return found == m_requirements.end() ? nullptr : &*found;
    }
    [[nodiscard]] const Requirement& operator[](const char* id) const { return *find(RequirementId(id)); }
    [[nodiscard]] const std::vector<Requirement>& all() const { return m_requirements; }

private:
    std::vector<Requirement> m_requirements;
};

/// A programme that ships with the program.
inline Rules shelved(const char* programme) {
    return Rules(programmeFrom(shelfText(ProgrammeId(programme))).value().requirements);
}

/// Requirements from their keys; kinds and action are envelope and inspect where not given.
inline Rules rulesFrom(const std::vector<std::string>& requirements) {
    std::string texts;
    for (const auto& keys : requirements) {
        std::string text = R"({"title": "t", "source": "s", )" + keys;
        if (keys.find(R"("kinds")") == std::string::npos)
            text += R"(, "kinds": ["envelope"])";
        if (keys.find(R"("action")") == std::string::npos)
            text += R"(, "action": "inspect")";
        texts += (texts.empty() ? "" : ", ") + text + "}";
    }
    const auto programme = programmeFrom(
        R"({"programme": "p", "revision": "1", "title": "t", "source": "s", "requirements": [)" + texts + "]}");
    if (!programme)
        qFatal("%s", text(programme.error()).c_str());
    return Rules(programme->requirements);
}

/// One requirement "r" from its further keys.
inline Requirement rule(const std::string& keys) { return rulesFrom({R"("id": "r", )" + keys}).all().front(); }

inline Assessment on(std::string_view today, const Requirement& requirement, const ItemFacts& item,
                     const InForce& inForce = Rules()) {
    return assess(requirement, item, inForce, day(today));
}

/// The figures of a limit as the oracle has them: days since 1970, days, or counts; nothing when unproven.
inline std::int64_t bare(CivilDate day) { return day.dayNumber(); }
template <class What>
std::int64_t bare(Count<What> count) {
    return count.value();
}
template <class Of>
std::optional<std::int64_t> bareOf(const LimitState& limit, Of of) {
    if (const auto* reach = limit.calendar())
        return bare(of(*reach));
    const auto* reach = limit.usage();
    return reach ? std::optional(bare(of(*reach))) : std::nullopt;
}
inline std::optional<std::int64_t> lastOf(const LimitState& limit) {
    return bareOf(limit, [](const auto& reach) { return reach.last; });
}
inline std::optional<std::int64_t> dueOf(const LimitState& limit) {
    return bareOf(limit, [](const auto& reach) { return reach.due; });
}
inline std::optional<std::int64_t> leftOf(const LimitState& limit) {
    return bareOf(limit, [](const auto& reach) { return reach.left; });
}
inline std::optional<std::int64_t> toleranceLeftOf(const LimitState& limit) {
    return bareOf(limit, [](const auto& reach) { return reach.toleranceLeft; });
}

/// The due of a limit as it is written: a date or a count; "" when unproven.
inline std::string dueText(const LimitState& limit) {
    if (const auto* reach = limit.calendar())
        return reach->due.iso();
    return limit.usage() ? std::to_string(limit.usage()->due.value()) : "";
}

}

/// Compares standings by the words that the screen shows.
#define COMPARE_STANDING(actual, expected)                                                                             \
    QCOMPARE(QString::fromStdString(std::string(crownring::standingText(actual))), QString(expected))
#define COMPARE_DUE(limit, expected)                                                                                   \
    QCOMPARE(QString::fromStdString(crownring::shed::dueText(limit)), QString(expected))
