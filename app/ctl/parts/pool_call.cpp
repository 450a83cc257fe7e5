// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/parts/pool.h"
#include "ctl/call.h"
#include "ctl/parts/component_calls.h"
#include "problem/faults/entry_fault.h"
#include "registry/overhaul.h"
#include "words/sentence.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <iomanip>
#include <iostream>

namespace crownring::ctl {

namespace {

using Json = nlohmann::ordered_json;

Json dayJson(const std::optional<CivilDate>& day) { return day ? Json(day->iso()) : Json(); }

/// The balloon, what it is a part of, where it was sent; else it lies in the pool.
std::string whereIs(const PoolItem& item) {
    const auto& facts = item.facts;
    if (facts.balloon)
        return facts.balloon->text();
    if (facts.carrier)
        return facts.carrier->text();
    return facts.out && !facts.out->to.empty() ? facts.out->to : "pool";
}

template <class Count>
Json countJson(const std::optional<Count>& count) {
    return count ? Json(count->value()) : Json();
}

Json useJson(const Figures& use) {
    return {{"minutes", countJson(use.minutes)},
            {"landings", countJson(use.landings)},
            {"inflations", countJson(use.inflations)}};
}

Json itemJson(const PoolItem& item) {
    const auto& facts = item.facts;
    const auto quarter = item.quarter();
    const auto standing = [](const GoodUntil& good) {
        return good.standing ? Json(standingText(*good.standing)) : Json();
    };
    Json json{{"item", facts.id.text()},
              {"kind", itemKindName(facts.kind)},
              {"serial", facts.serial ? Json(*facts.serial) : Json()},
              {"where", whereIs(item)},
              {"part_of", facts.carrier ? Json(facts.carrier->text()) : Json()},
              {"state", facts.out ? Json(serviceStateName(facts.out->state)) : Json("in-service")},
              {"airworthy_until", dayJson(item.airworthy.until)},
              {"airworthy", standing(item.airworthy)},
              {"transport_until", dayJson(item.transport.until)},
              {"transport", standing(item.transport)},
              {"quarter", quarter.empty() ? Json() : Json(quarter)},
              {"fillable", item.fillable},
              {"condemned", item.condemned},
              {"filled", dayJson(item.component.filled)},
              {"lot", item.component.lot.empty() ? Json() : Json(item.component.lot)},
              {"release", Json()}};
    if (const auto& release = item.component.release)
        json["release"] = {{"form", releaseFormName(release->form)}, {"number", release->number}};
    json["since_new"] = useJson(facts.clock);
    const auto overhaul = sinceOverhaul(facts);
    json["since_overhaul"] = overhaul ? useJson(overhaul->use) : Json();
    if (overhaul)
        json["since_overhaul"]["on"] = overhaul->done.iso();
    if (item.material)
        json["material_of_lot"] = true;
    return json;
}

std::string untilText(const GoodUntil& good) {
    if (!good.standing)
        return "-";
    return good.until ? good.until->iso() : std::string(standingText(*good.standing));
}

std::string stateText(const PoolItem& item) {
    if (item.facts.out)
        return plainly(words::said(reasonOf(*item.facts.out)));
    return item.facts.kind == ItemKind::Cylinder ? (item.fillable ? "may be filled" : "not to be filled") : "";
}

void printRow(const std::array<std::string, 6>& cells) {
    constexpr std::array widths{9, 14, 16, 12, 12, 0};
    for (std::size_t at = 0; at + 1 < cells.size(); ++at)
        std::cout << std::left << std::setw(widths[at]) << cells[at] << " ";
    std::cout << cells.back() << "\n";
}

}

int run(const PoolOptions& options, const Common& common) {
    PoolAsked asked{{}, options.lot};
    if (!options.kind.empty()) {
        asked.kind = itemKindFrom(options.kind);
        if (!asked.kind)
            return refuse(Problem{EntryFault::NoKindOfItem,
                                  {options.kind, "envelope, basket, burner, cylinder, hose, instrument, other"}});
    }
    const auto record = openToAsk(common, options.on);
    if (!record)
        return BadInput;
    const auto items = pool(*record, asked, record.on);
    if (!items)
        return refuse(items.error());
    if (options.json) {
        auto list = Json::array();
        for (const auto& item : *items)
            list.push_back(itemJson(item));
        print({{"on", record.on.iso()}, {"items", list}});
        return Done;
    }
    if (items->empty())
        std::cout << "There is none.\n";
    else
        printRow({"due", "item", "where", "airworthy", "transport", "state"});
    for (const auto& item : *items) {
        const auto quarter = item.quarter();
        printRow({quarter.empty() ? "?" : quarter, item.facts.id.text(), whereIs(item), untilText(item.airworthy),
                  untilText(item.transport), stateText(item)});
    }
    const auto isUnbound = [](const PoolItem& item) {
        return !item.airworthy.standing && !item.facts.balloon && !item.facts.carrier;
    };
    if (std::ranges::any_of(*items, isUnbound))
        std::cout << "airworthy \"-\" in the pool: bound only on a balloon.\n";
    return Done;
}

}
