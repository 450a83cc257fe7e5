// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/due.h"
#include "answers/forecast/projected.h"
#include "answers/review/supported_reviews.h"
#include "ctl/answer_json.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "ctl/due_table.h"
#include "ctl/forecast/suppose_call.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <iostream>
#include <limits>

namespace crownring::ctl {

int run(const DueOptions& options, const Common& common) {
    if (!options.supposed.empty())
        return suppose(options, common);
    const auto record = openToAsk(common, options.on);
    if (!record)
        return BadInput;
    auto scope = scopeOf(options.balloon);
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
    const auto bands = projected(*record, *list, std::min(record.on, today()));
    if (!bands)
        return refuse(bands.error());
    nlohmann::ordered_json answer{{"on", record.on.iso()}, {"rows", nlohmann::ordered_json::array()}};
    for (std::size_t i = 0; i < list->rows.size(); ++i) {
        auto row = rowJson(list->rows[i]);
        row["projected"] = projectedJson((*bands)[i]);
        answer["rows"].push_back(std::move(row));
    }
    if (const auto added = addUnread(answer, *record); !added)
        return refuse(added.error());
    print(answer);
    return Done;
}

}
