// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/entry.h"

#include <array>

namespace crownring {

namespace {

template <std::size_t Count>
using Words = std::array<std::string_view, Count>;

constexpr Words<itemKindCount> itemKinds = {"envelope", "basket", "burner", "cylinder", "hose", "instrument", "other"};
constexpr Words<lineStateCount> lineStates = {"open", "done", "not-applicable"};
constexpr Words<severityCount> severities = {"barring", "minor"};
constexpr Words<outcomeCount> outcomes = {"released", "discrepancies", "abandoned"};
constexpr Words<retiredCount> retiredThings = {"panel", "item"};

template <class Value, std::size_t Count>
std::optional<Value> among(const Words<Count>& words, std::string_view name) {
    for (std::size_t i = 0; i < Count; ++i)
        if (words[i] == name)
            return static_cast<Value>(i);
    return std::nullopt;
}

/// The default times that are not 00:00.
struct DefaultTime {
    TimeOfDay operator()(const FlightLogged&) const { return {12, 0}; }
    TimeOfDay operator()(const RequirementDone&) const { return {18, 0}; }
    TimeOfDay operator()(const ReadingTaken&) const { return {18, 0}; }
    TimeOfDay operator()(const LineSettled&) const { return {18, 0}; }
    TimeOfDay operator()(const DefectFound&) const { return {18, 0}; }
    TimeOfDay operator()(const RepairMade&) const { return {18, 0}; }
    TimeOfDay operator()(const PartReplaced&) const { return {18, 0}; }
    TimeOfDay operator()(const DefectDeferred&) const { return {18, 1}; }
    TimeOfDay operator()(const DefectCleared&) const { return {18, 2}; }
    TimeOfDay operator()(const InspectionClosed&) const { return {18, 10}; }
    TimeOfDay operator()(const ItemRemoved&) const { return {23, 59}; }
    template <class Other>
    TimeOfDay operator()(const Other&) const {
        return {0, 0};
    }
};

}

std::string_view itemKindName(ItemKind kind) { return itemKinds[static_cast<std::size_t>(kind)]; }
std::optional<ItemKind> itemKindFrom(std::string_view name) { return among<ItemKind>(itemKinds, name); }
std::string_view lineStateName(LineState state) { return lineStates[static_cast<std::size_t>(state)]; }
std::optional<LineState> lineStateFrom(std::string_view name) { return among<LineState>(lineStates, name); }
std::string_view severityName(Severity severity) { return severities[static_cast<std::size_t>(severity)]; }
std::optional<Severity> severityFrom(std::string_view name) { return among<Severity>(severities, name); }
std::string_view outcomeName(Outcome outcome) { return outcomes[static_cast<std::size_t>(outcome)]; }
std::optional<Outcome> outcomeFrom(std::string_view name) { return among<Outcome>(outcomes, name); }
std::string_view retiredName(Retired retired) { return retiredThings[static_cast<std::size_t>(retired)]; }
std::optional<Retired> retiredFrom(std::string_view name) { return among<Retired>(retiredThings, name); }

const std::vector<std::string_view>& kindNames() {
    static const std::vector<std::string_view> names = {
        "item.entered",      "balloon.entered",   "item.fitted",   "item.removed",      "flight.logged",
        "requirement.done",  "programme.adopted", "reading.taken", "event.reported",    "entry.corrected",
        "entry.voided",      "inspection.opened", "line.settled",  "defect.found",      "defect.deferred",
        "defect.cleared",    "repair.made",       "part.replaced", "inspection.closed", "person.entitled",
        "tester.calibrated", "type.described",    "limit.stated",  "checklist.adopted", "fabric.stated"};
    return names;
}

std::string_view kindName(const Body& body) { return kindNames()[body.index()]; }

TimeOfDay defaultTime(const Body& body) { return std::visit(DefaultTime{}, body); }

Moment momentOf(const Entry& entry) { return {entry.on, entry.time.value_or(defaultTime(entry.body))}; }

Stamp stampOf(const Entry& entry) { return {momentOf(entry), entry.id}; }

std::optional<EntryId> amends(const Entry& entry) {
    if (const auto* corrected = std::get_if<EntryCorrected>(&entry.body))
        return corrected->replaces;
    if (const auto* voided = std::get_if<EntryVoided>(&entry.body))
        return voided->voids;
    return std::nullopt;
}

}
