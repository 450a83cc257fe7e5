// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/entry.h"

#include <array>

namespace crownring {

namespace {

constexpr std::array<std::string_view, itemKindCount> itemKinds = {"envelope", "basket",     "burner", "cylinder",
                                                                   "hose",     "instrument", "other"};

}

std::string_view itemKindName(ItemKind kind) { return itemKinds[static_cast<std::size_t>(kind)]; }

std::optional<ItemKind> itemKindFrom(std::string_view name) {
    for (std::size_t i = 0; i < itemKinds.size(); ++i)
        if (itemKinds[i] == name)
            return static_cast<ItemKind>(i);
    return std::nullopt;
}

const std::vector<std::string_view>& kindNames() {
    static const std::vector<std::string_view> names = {"item.entered",      "balloon.entered", "item.fitted",
                                                        "item.removed",      "flight.logged",   "requirement.done",
                                                        "programme.adopted", "reading.taken",   "event.reported",
                                                        "entry.corrected",   "entry.voided"};
    return names;
}

std::string_view kindName(const Body& body) { return kindNames()[body.index()]; }

TimeOfDay defaultTime(const Body& body) {
    if (std::holds_alternative<FlightLogged>(body))
        return {12, 0};
    if (std::holds_alternative<RequirementDone>(body) || std::holds_alternative<ReadingTaken>(body))
        return {18, 0};
    if (std::holds_alternative<ItemRemoved>(body))
        return {23, 59};
    return {0, 0};
}

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
