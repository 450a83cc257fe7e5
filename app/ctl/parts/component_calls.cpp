// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/parts/component_calls.h"

#include "acts/components.h"
#include "ctl/call.h"
#include "problem/faults/entry_fault.h"

#include <nlohmann/json.hpp>

namespace crownring::ctl {

namespace {

std::vector<ItemId> idsOf(const std::vector<std::string>& texts) { return {texts.begin(), texts.end()}; }

/// "easa-form-1:QE-1234"; nothing of an empty text.
Result<std::optional<PartRelease>> releaseFrom(const std::string& text) {
    if (text.empty())
        return std::nullopt;
    const auto colon = text.find(':');
    const auto form = releaseFormFrom(text.substr(0, colon));
    if (!form || colon == std::string::npos || colon + 1 == text.size())
        return problem(EntryFault::NoWordForThis,
                       {text, "easa-form-1:…, faa-8130-3:…, owner-accepted:…, declaration:…, inspection:…"});
    return PartRelease{*form, text.substr(colon + 1)};
}

std::string postedText(const Receipt& receipt) {
    auto entries = nlohmann::ordered_json::array();
    for (const auto& id : receipt.ids)
        entries.push_back(id.text());
    return printed({{"posted", receipt.ids.size()}, {"entries", entries}});
}

}

int run(const ReplaceOptions& options, const Common& common) {
    const auto when = whenFrom(options.on, options.time);
    if (!when)
        return refuse(when.error());
    const auto release = releaseFrom(options.release);
    if (!release)
        return refuse(release.error());
    return write(common, [&](Record& record) -> Results<std::string> {
        return replaceItem(record, record,
                           {ItemId(options.off), ItemId(options.with), *release, options.lot, options.unserviceable,
                            when->on, when->time ? when->time : timeOn(when->on), options.by})
            .map(postedText);
    });
}

int run(const SendOptions& options, const Common& common) {
    const auto on = dayFrom(options.on);
    if (!on)
        return refuse(on.error());
    return write(common, [&](Record& record) -> Results<std::string> {
        return sendAway(record, record, {idsOf(options.items), options.to, *on, options.by, timeOn(*on)})
            .map(postedText);
    });
}

int run(const ReturnOptions& options, const Common& common) {
    const auto on = dayFrom(options.on);
    if (!on)
        return refuse(on.error());
    const auto release = releaseFrom(options.release);
    if (!release)
        return refuse(release.error());
    Returning returning;
    returning.items = idsOf(options.items);
    returning.condemned = idsOf(options.condemned);
    returning.method = options.method;
    returning.mark = options.mark;
    returning.ref = options.ref;
    returning.release = *release;
    returning.day = *on;
    returning.by = options.by;
    returning.time = timeOn(*on);
    returning.licence = options.licence;
    if (!options.signatory.empty())
        returning.signatory = PersonId(options.signatory);
    if (!options.requirement.empty())
        returning.requirement = RequirementId(options.requirement);
    if (!options.tested.empty()) {
        const auto tested = CivilDate::parse(options.tested);
        if (!tested)
            return refuse(tested.error());
        returning.tested = *tested;
    }
    return write(common, [&](Record& record) -> Results<std::string> {
        return takeBack(record, record, returning).map(postedText);
    });
}

}
