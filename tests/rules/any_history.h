// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Random programmes, histories and days for the property tests. Small ranges, so that days, clocks and ids meet.

#include "rules/shed.h"

#include <nlohmann/json.hpp>
#include <rapidcheck.h>

namespace crownring::shed {

/// From a to b, whatever the size of the test: each history is as rich as any other.
inline std::int64_t number(std::int64_t from, std::int64_t to) {
    return *rc::gen::resize(rc::kNominalSize, rc::gen::inRange(from, to + 1));
}
inline bool chance(int percent) { return number(1, 100) <= percent; }
template <class What>
What oneOf(std::vector<What> values) {
    return values[static_cast<std::size_t>(number(0, std::ssize(values) - 1))];
}

inline CivilDate anyDay() { return CivilDate::fromDayNumber(number(19300, 20700)); }

/// The amounts of a limit: few and round, so that standings of all kinds come up, or as large as the schema allows.
inline std::int64_t anyAmount(const std::string& clock, bool huge) {
    if (huge && chance(20))
        return oneOf<std::int64_t>({largestCount, largestCount - 1, 4'000'000, 120'000, 2'147'483'648});
    return clock == "months" ? number(1, 24) : clock == "days" ? number(1, 400) : number(1, 200);
}

inline std::string anyClock() { return oneOf<std::string>({"minutes", "landings", "inflations", "months", "days"}); }

inline nlohmann::json anyLimit(bool huge) {
    nlohmann::json limit{{"clock", anyClock()}};
    const std::string clock = limit["clock"];
    limit["every"] = anyAmount(clock, huge);
    if (chance(30))
        limit["first"] = anyAmount(clock, huge);
    if (chance(40))
        limit["tolerance"] = clock == "months" ? number(0, 2) : anyAmount(clock, huge) / 4;
    if (clock == "months" && chance(40))
        limit["day"] = oneOf<std::string>({"same", "month-end"});
    if (chance(60))
        limit["look_ahead"] = anyAmount(clock, huge) / 8;
    return limit;
}

inline nlohmann::json anyAmounts(bool huge) {
    nlohmann::json amounts;
    for (int i = 0; i < 2; ++i) {
        const auto clock = anyClock();
        amounts[clock] = anyAmount(clock, huge);
    }
    return amounts;
}

inline std::vector<std::string> someOf(const std::vector<std::string>& names, int percent) {
    std::vector<std::string> some;
    for (const auto& name : names)
        if (chance(percent))
            some.push_back(name);
    return some;
}

inline nlohmann::json anyRequirement(const std::string& id, bool huge) {
    nlohmann::json r{{"id", id}, {"title", "t"}, {"source", "s"}, {"kinds", {"envelope"}}};
    r["action"] = oneOf<std::string>({"inspect", "retire", "comply"});
    for (auto count = number(0, 3); count > 0; --count)
        r["limits"].push_back(anyLimit(huge));
    r["whichever"] = oneOf<std::string>({"first", "last"});
    if (r["whichever"] == "first" && chance(35)) {
        auto inspections = someOf({"a", "b", "c", "d"}, 50);
        std::erase(inspections, id);
        if (!inspections.empty())
            r["limits"].push_back({{"with", inspections}, {"every", number(1, 3)}});
    }
    r["next_from"] = oneOf<std::string>({"done", "earlier", "kept"});
    if (r["next_from"] == "kept" || chance(20))
        r["window"] = anyAmounts(huge);
    r["starts_from"] = oneOf<std::string>({"done", "made", "entered"});
    r["tolerance_for"] = oneOf<std::string>({"flight", "positioning"});
    r["satisfied_by"] = someOf({"a", "b", "c", "d"}, 30);
    r["ended_by"] = someOf({"e"}, 10);
    r["once"] = chance(10);
    if (chance(25))
        r["at_most"] = number(1, 2);
    if (chance(15))
        r["operations"] = {"for-hire"};
    if (chance(30) || !r.contains("limits"))
        r["triggered_by"] = {"fire", "mildew"};
    if (chance(25))
        r["exempt_until"] = anyAmounts(huge);
    for (const auto& limit : r.value("limits", nlohmann::json::array()))
        if (limit.value("clock", "") == "months" && chance(30))
            r["by_method"] = {{"proof", anyAmount("months", huge)}, {"visual", 3}};
    return r;
}

inline std::string anyProgramme(bool huge) {
    nlohmann::json programme{{"programme", "p"}, {"revision", "1"}, {"title", "t"}, {"source", "s"}};
    for (const auto* id : {"a", "b", "c"})
        programme["requirements"].push_back(anyRequirement(id, huge));
    return programme.dump();
}

inline Figures anyClockFigures(std::int64_t most) {
    const auto figure = [&] { return number(0, most); };
    auto figures = clockOf(figure(), figure(), figure());
    if (chance(10))
        figures.minutes.reset();
    if (chance(10))
        figures.landings.reset();
    return figures;
}

inline Item anyItem(std::int64_t most) {
    Item item;
    item.entered(anyDay().iso(), anyClockFigures(most)).at(anyClockFigures(2 * most));
    if (chance(70))
        item.made(chance(50) ? anyDay().iso() : anyDay().iso().substr(0, 7));
    for (auto count = number(0, 6); count > 0; --count) {
        const auto entry = "e" + std::to_string(count);
        const auto stated = chance(40) ? anyClockFigures(most) : nothingStated;
        item.done(oneOf<std::string>({"a", "b", "c", "d", chance(20) ? "e" : "a"}).c_str(), anyDay().iso(),
                  anyClockFigures(most), stated, oneOf<std::string>({"", "proof", "visual", "odd"}).c_str(),
                  entry.c_str());
        if (chance(25)) // a certificate
            std::ranges::find(item.facts().done, EntryId(entry), [](const auto& each) {
                return each.stamp.id;
            })->expires = anyDay();
        // Now and then another one is signed at the same moment.
        if (chance(30)) {
            auto twin = item.facts().done[static_cast<std::size_t>(number(0, std::ssize(item.facts().done) - 1))];
            twin.requirement = RequirementId(oneOf<std::string>({"a", "b", "c"}));
            twin.stated = chance(50) ? anyClockFigures(most) : nothingStated;
            twin.stamp.id = EntryId(entry + "-twin");
            item.facts().done.push_back(twin);
            std::ranges::stable_sort(item.facts().done, {}, &Accomplishment::stamp);
        }
    }
    for (auto count = number(0, 2); count > 0; --count)
        item.happened(oneOf<std::string>({"fire", "mildew", "dragged"}).c_str(), anyDay().iso(), TimeOfDay(18, 0));
    std::ranges::stable_sort(item.facts().events, {}, &Occurrence::stamp);
    if (chance(50))
        item.flownFor({"for-hire"});
    return item;
}

}
