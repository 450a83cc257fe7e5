// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/due.h"
#include "answers/review/supported_reviews.h"
#include "ctl/answer_json.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "ctl/due_table.h"

#include <nlohmann/json.hpp>

#include <iostream>
#include <limits>

namespace crownring::ctl {

int run(const DueOptions& options, const Common& common) {
    const auto record = openToAsk(common, options.on);
    if (!record)
        return BadInput;
    Scope scope;
    if (!options.balloon.empty())
        scope.balloon = Registration(options.balloon);
    scope.items = std::vector<ItemId>(options.items.begin(), options.items.end());
    auto list = due(*record, scope, record.on, options.outOfService ? Outside::AsInService : Outside::LeftOut);
    if (!list)
        return refuse(list.error());
    // Of the whole fleet each review would ask for another due list: `review show` tells of one.
    if (scope.balloon || !scope.items.empty())
        if (const auto lost = markUnsupportedReviews(*record, list->rows, record.on); !lost)
            return refuse(lost.error());
    if (!options.json) {
        printTable(std::cout, *list, options.most == 0 ? std::numeric_limits<std::size_t>::max() : options.most);
        return Done;
    }
    nlohmann::ordered_json answer{{"on", record.on.iso()}, {"rows", nlohmann::ordered_json::array()}};
    for (const auto& row : list->rows)
        answer["rows"].push_back(rowJson(row));
    if (const auto added = addUnread(answer, *record); !added)
        return refuse(added.error());
    print(answer);
    return Done;
}

}
