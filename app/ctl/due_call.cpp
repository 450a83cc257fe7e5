// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/due.h"
#include "ctl/answer_json.h"
#include "ctl/call.h"
#include "ctl/due_table.h"

#include <nlohmann/json.hpp>

#include <iostream>
#include <limits>

namespace crownring::ctl {

namespace {

struct DueOptions {
    std::string on;
    std::string balloon;
    std::vector<std::string> items;
    std::size_t most = 60;
    bool json = false;
};

int run(const DueOptions& options, const Common& common) {
    const auto on = dayFrom(options.on);
    if (!on)
        return refuse(on.error());
    const auto record = open(common);
    if (!record)
        return BadInput;
    Scope scope;
    if (!options.balloon.empty())
        scope.balloon = Registration(options.balloon);
    scope.items = std::vector<ItemId>(options.items.begin(), options.items.end());
    const auto list = due(*record, scope, *on);
    if (!list)
        return refuse(list.error());
    if (!options.json) {
        printTable(std::cout, *list, options.most == 0 ? std::numeric_limits<std::size_t>::max() : options.most);
        return Done;
    }
    nlohmann::ordered_json answer{{"on", on->iso()}, {"rows", nlohmann::ordered_json::array()}};
    for (const auto& row : list->rows)
        answer["rows"].push_back(rowJson(row));
    print(answer);
    return Done;
}

}

void addDue(CLI::App& app, Common& common, Chosen& chosen) {
    auto* call = app.add_subcommand("due", "What is due on a day, worst first");
    auto options = std::make_shared<DueOptions>();
    call->add_option("--on", options->on, "The day, past or future (default: today)")->type_name("DATE");
    call->add_option("--balloon", options->balloon, "Only what is fitted to this balloon")->type_name("REG");
    call->add_option("--item", options->items, "Only this item (may repeat)")->type_name("ID");
    call->add_option("--most", options->most, "At most so many lines of the table; 0 for all (default: 60)");
    call->add_flag("--json", options->json, "Answer as JSON, all rows");
    call->footer("Standings: spent (a life limit is reached), lapsed, unproven (no record to count from), tolerance,\n"
                 "nearing, clear, closed (done once for all, or ended).");
    call->callback([=, &common, &chosen] { chosen = [=, &common] { return run(*options, common); }; });
}

}
