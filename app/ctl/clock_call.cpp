// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/answer_json.h"
#include "ctl/call.h"
#include "measure/duration_text.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace crownring::ctl {

namespace {

std::string shown(const std::optional<std::int64_t>& figure, const char* unit) {
    return (figure ? std::to_string(*figure) : "unknown") + unit;
}

int run(const std::string& item, const std::string& day, bool json, const Common& common) {
    const auto on = dayFrom(day);
    if (!on)
        return refuse(on.error());
    const auto record = open(common);
    if (!record)
        return BadInput;
    const auto facts = record->facts({std::nullopt, {ItemId(item)}}, *on);
    if (!facts)
        return refuse(facts.error());
    if (facts->empty())
        return refuse(Problem{Code::UnknownReference,
                              "item '" + item + "' is not in the record on " + on->iso(),
                              "ask for a later day",
                              {}});
    const auto& clock = facts->front().clock;
    if (json) {
        nlohmann::ordered_json answer{{"item", item}};
        addFigures(answer, clock);
        print(answer);
    } else {
        std::cout << item << " at the end of " << on->iso() << ": "
                  << (clock.minutes ? hoursAndMinutes(*clock.minutes) : "unknown") << " h, "
                  << shown(count(clock.landings), " landings, ") << shown(count(clock.inflations), " inflations")
                  << "\n";
    }
    return Done;
}

}

void addClock(CLI::App& app, Common& common, Chosen& chosen) {
    auto* call = app.add_subcommand("clock", "An item's clock at the end of a day: minutes, landings, inflations");
    auto item = std::make_shared<std::string>();
    auto on = std::make_shared<std::string>();
    auto json = std::make_shared<bool>(false);
    call->add_option("ITEM", *item, "The item's id")->required();
    call->add_option("--on", *on, "The day (default: today)")->type_name("DATE");
    call->add_flag("--json", *json, "Answer as JSON; an unknown figure is null");
    call->callback([=, &common, &chosen] { chosen = [=, &common] { return run(*item, *on, *json, common); }; });
}

}
