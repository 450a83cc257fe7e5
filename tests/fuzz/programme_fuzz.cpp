// SPDX-License-Identifier: GPL-3.0-or-later
/// Bytes as a programme document. What is taken has a canonical text that means the same, and an item can be held
/// against each of its requirements; what is refused must say what is wrong.

#include "rules/programme/programme.h"
#include "rules/standing/standing.h"

#include <cstdint>
#include <cstdlib>
#include <string_view>

using namespace crownring;

namespace {

void require(bool holds) {
    if (!holds)
        std::abort();
}

class NothingElse final : public InForce {
public:
    [[nodiscard]] const Requirement* find(const RequirementId&) const override { return nullptr; }
};

/// An item with some life behind it, of the kind that the requirement binds.
ItemFacts itemFor(const Requirement& requirement) {
    ItemFacts item;
    item.id = ItemId("E1");
    item.kind = requirement.kinds.empty() ? ItemKind::Envelope : requirement.kinds.front();
    item.serial = "AB-123";
    item.entered = *CivilDate::parse("2020-02-29");
    item.made = *DayOrMonth::parse("2016-05");
    item.clock = {Minutes(30'000), Landings(400), std::nullopt};
    item.done = {
        {requirement.id, {Moment::startOf(*CivilDate::parse("2024-01-31")), EntryId("d1")}, item.clock, {}, "proof"}};
    item.events = {{"hard-landing", {Moment::startOf(*CivilDate::parse("2024-06-01")), EntryId("v1")}, {}, {}}};
    return item;
}

}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(bytes), size);
    const auto programme = programmeFrom(text);
    if (!programme) {
        require(!rowOf(programme.error().fault).name.empty());
        return 0;
    }
    const auto canonical = canonicalProgramme(text);
    require(canonical.has_value());
    const auto again = programmeFrom(*canonical);
    require(again.has_value() && *again == *programme);
    const NothingElse nothingElse;
    for (const auto& requirement : programme->requirements) {
        const auto item = itemFor(requirement);
        if (!binds(requirement, item))
            continue;
        const auto early = assess(requirement, item, nothingElse, *CivilDate::parse("2024-07-01"));
        const auto late = assess(requirement, item, nothingElse, *CivilDate::parse("9999-12-31"));
        require(late.standing <= early.standing || early.standing == Standing::Unproven);
    }
    return 0;
}
