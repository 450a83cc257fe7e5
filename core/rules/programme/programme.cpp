// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/programme/programme.h"

#include "problem/faults/programme_fault.h"
#include "rules/programme/document_schema.h"
#include "rules/programme/read_once.h"
#include "rules/programme/serial_order.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <unordered_set>

namespace crownring::embedded {

const std::vector<std::pair<std::string_view, std::string_view>>& programmeSchemaData();

}

namespace crownring {

namespace {

using nlohmann::json;

template <class Value, std::size_t count>
using Words = std::array<std::pair<std::string_view, Value>, count>;

constexpr Words<Action, 6> actions = {{{"inspect", Action::Inspect},
                                       {"test", Action::Test},
                                       {"service", Action::Service},
                                       {"replace", Action::Replace},
                                       {"retire", Action::Retire},
                                       {"comply", Action::Comply}}};
constexpr Words<DayRule, 2> dayRules = {{{"same", DayRule::Same}, {"month-end", DayRule::MonthEnd}}};
constexpr Words<Whichever, 2> whichevers = {{{"first", Whichever::First}, {"last", Whichever::Last}}};
constexpr Words<NextFrom, 3> nextFroms = {
    {{"done", NextFrom::Done}, {"earlier", NextFrom::Earlier}, {"kept", NextFrom::Kept}}};
constexpr Words<StartsFrom, 3> startsFroms = {
    {{"done", StartsFrom::Done}, {"made", StartsFrom::Made}, {"entered", StartsFrom::Entered}}};
constexpr Words<ToleranceFor, 2> tolerances = {
    {{"flight", ToleranceFor::Flight}, {"positioning", ToleranceFor::Positioning}}};
constexpr Words<Force, 2> forces = {{{"mandatory", Force::Mandatory}, {"recommended", Force::Recommended}}};
constexpr Words<Blocks, 2> blockings = {{{"flight", Blocks::Flight}, {"filling", Blocks::Filling}}};

/// Reads keys of an object that the schema has found good; what is absent keeps the value that it has.
class Keys {
public:
    explicit Keys(const json& object) : m_object(object) {}

    template <class Value>
    void read(const char* key, Value& value) const {
        if (const auto* found = find(key))
            value = found->get<Value>();
    }
    void read(const char* key, Argument& value) const {
        if (const auto* found = find(key))
            value = found->get<std::string>();
    }
    template <class What>
    void read(const char* key, std::optional<What>& value) const {
        if (const auto* found = find(key))
            value = found->get<What>();
    }
    template <class What>
    void read(const char* key, Name<What>& value) const {
        if (const auto* found = find(key))
            value = Name<What>(found->get<std::string>());
    }
    template <class What>
    void read(const char* key, std::vector<Name<What>>& values) const {
        if (const auto* found = find(key))
            for (const auto& name : *found)
                values.emplace_back(name.get<std::string>());
    }
    template <class Value, std::size_t count>
    void read(const char* key, Value& value, const Words<Value, count>& words) const {
        if (const auto* found = find(key))
            value = std::ranges::find(words, found->get<std::string_view>(), &Words<Value, count>::value_type::first)
                        ->second;
    }
    [[nodiscard]] const json* find(const char* key) const {
        const auto found = m_object.find(key);
        return found == m_object.end() ? nullptr : &*found;
    }

private:
    const json& m_object;
};

Limit limitFrom(const json& object) {
    const Keys keys(object);
    Limit limit;
    keys.read("with", limit.with);
    limit.clock =
        limit.with.empty() ? *clockNameFrom(object.at("clock").get<std::string_view>()) : ClockName::Inspections;
    keys.read("every", limit.every);
    keys.read("first", limit.first);
    keys.read("tolerance", limit.tolerance);
    keys.read("day", limit.day, dayRules);
    keys.read("look_ahead", limit.lookAhead);
    return limit;
}

/// {"months": 24, "minutes": 9000}, or the same as {"limits": [{"clock": "months", "every": 24}, …]}.
PerClock amountsFrom(const json& object) {
    PerClock amounts;
    if (const auto limits = object.find("limits"); limits != object.end()) {
        for (const auto& limit : *limits)
            amounts.emplace_back(*clockNameFrom(limit.at("clock").get<std::string_view>()),
                                 limit.at("every").get<std::int64_t>());
        return amounts;
    }
    for (const auto& [key, amount] : object.items())
        amounts.emplace_back(*clockNameFrom(key), amount.get<std::int64_t>());
    return amounts;
}

SerialRange serialsFrom(const json& object) {
    const Keys keys(object);
    SerialRange range;
    keys.read("from", range.from);
    keys.read("to", range.to);
    return range;
}

void readApplicability(const Keys& keys, Requirement& requirement) {
    if (const auto* kinds = keys.find("kinds"))
        for (const auto& kind : *kinds)
            requirement.kinds.push_back(*itemKindFrom(kind.get<std::string_view>()));
    keys.read("types", requirement.types);
    if (const auto* serials = keys.find("serials"))
        for (const auto& range : *serials)
            requirement.serials.push_back(serialsFrom(range));
    keys.read("operations", requirement.operations);
}

void readTiming(const Keys& keys, Requirement& requirement) {
    if (const auto* limits = keys.find("limits"))
        for (const auto& limit : *limits)
            requirement.limits.push_back(limitFrom(limit));
    keys.read("whichever", requirement.whichever, whichevers);
    keys.read("next_from", requirement.nextFrom, nextFroms);
    if (const auto* window = keys.find("window"))
        requirement.window = amountsFrom(*window);
    keys.read("starts_from", requirement.startsFrom, startsFroms);
    keys.read("tolerance_for", requirement.toleranceFor, tolerances);
    keys.read("triggered_by", requirement.triggeredBy);
    if (const auto* methods = keys.find("by_method"))
        for (const auto& [method, months] : methods->items())
            requirement.byMethod.emplace_back(method, months.get<std::int64_t>());
    if (const auto* bounds = keys.find("exempt_until"))
        requirement.exemptUntil = amountsFrom(*bounds);
}

Requirement requirementFrom(const json& object) {
    const Keys keys(object);
    Requirement requirement;
    keys.read("id", requirement.id);
    keys.read("title", requirement.title);
    keys.read("source", requirement.source);
    keys.read("note", requirement.note);
    keys.read("action", requirement.action, actions);
    keys.read("satisfied_by", requirement.satisfiedBy);
    keys.read("at_most", requirement.atMost);
    keys.read("once", requirement.once);
    keys.read("ended_by", requirement.endedBy);
    keys.read("force", requirement.force, forces);
    keys.read("blocks", requirement.blocks, blockings);
    readApplicability(keys, requirement);
    readTiming(keys, requirement);
    return requirement;
}

/// What the schema cannot say.
std::optional<Problem> contradictionIn(const Requirement& requirement, const std::string& path) {
    const bool onMonths =
        std::ranges::any_of(requirement.limits, [](const Limit& limit) { return limit.clock == ClockName::Months; });
    if (!requirement.byMethod.empty() && !onMonths)
        return Problem{ProgrammeFault::MethodWithoutMonths, {}, atKey(path + "/by_method")};
    if (requirement.nextFrom == NextFrom::Kept && requirement.window.empty())
        return Problem{ProgrammeFault::KeptWithoutWindow, {}, atKey(path + "/window")};
    for (std::size_t i = 0; i < requirement.limits.size(); ++i) {
        const auto& with = requirement.limits[i].with;
        const auto at = path + "/limits/" + std::to_string(i) + "/with";
        if (std::ranges::find(with, requirement.id) != with.end())
            return Problem{ProgrammeFault::WithItself, {}, atKey(at)};
        if (!with.empty() && requirement.whichever == Whichever::Last)
            return Problem{ProgrammeFault::WithAndLast, {}, atKey(at)};
    }
    if (requirement.limits.empty() && requirement.triggeredBy.empty())
        return Problem{ProgrammeFault::NeverDue, {}, atKey(path + "/limits")};
    for (std::size_t i = 0; i < requirement.serials.size(); ++i) {
        const auto& range = requirement.serials[i];
        if (range.from && range.to && compareSerials(*range.from, *range.to) > 0)
            return Problem{ProgrammeFault::EmptyRange, {}, atKey(path + "/serials/" + std::to_string(i))};
    }
    return std::nullopt;
}

std::optional<Problem> contradictionIn(const Programme& programme) {
    std::unordered_set<RequirementId> seen;
    for (std::size_t i = 0; i < programme.requirements.size(); ++i) {
        const auto& requirement = programme.requirements[i];
        const auto path = "/requirements/" + std::to_string(i);
        if (!seen.insert(requirement.id).second)
            return Problem{ProgrammeFault::RequirementTwice, {requirement.id}, atKey(path + "/id")};
        if (auto found = contradictionIn(requirement, path))
            return found;
    }
    return std::nullopt;
}

Programme programmeOf(const json& document) {
    const Keys keys(document);
    Programme programme;
    keys.read("programme", programme.id);
    keys.read("revision", programme.revision);
    keys.read("regime", programme.regime);
    keys.read("title", programme.title);
    keys.read("source", programme.source);
    keys.read("note", programme.note);
    for (const auto& requirement : document.at("requirements"))
        programme.requirements.push_back(requirementFrom(requirement));
    return programme;
}

struct Checked {
    json document;
    Programme programme;
};

Result<Checked> checked(std::string_view text) {
    static const DocumentSchema schema("programme", embedded::programmeSchemaData().front().second,
                                       documentFaults<ProgrammeFault>());
    auto document = schema.read(text);
    if (!document)
        return tl::unexpected(std::move(document.error()));
    if (auto breach = schema.breachIn(*document))
        return tl::unexpected(*std::move(breach));
    auto programme = programmeOf(*document);
    if (auto found = contradictionIn(programme))
        return tl::unexpected(*std::move(found));
    return Checked{*std::move(document), std::move(programme)};
}

}

Result<Programme> programmeFrom(std::string_view text) {
    return checked(text).map([](Checked&& good) { return std::move(good.programme); });
}

Result<std::shared_ptr<const Programme>> knownProgramme(std::string_view text) {
    static ReadOnce<Programme> known(programmeFrom);
    return known(text);
}

Result<std::string> canonicalProgramme(std::string_view text) {
    return checked(text).map([](const Checked& good) { return good.document.dump(); });
}

}
