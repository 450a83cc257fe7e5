// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/answer_json.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "problem/faults/use_fault.h"
#include "words/words.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace crownring::ctl {

int run(const ClockOptions& options, const Common& common) {
    const auto record = openToAsk(common, options.on);
    if (!record)
        return BadInput;
    const auto facts = record->facts({std::nullopt, {ItemId(options.item)}}, record.on);
    if (!facts)
        return refuse(facts.error());
    if (facts->empty())
        return refuse(Problem{UseFault::NoItemOnThatDay, {options.item, record.on}});
    const auto& clock = facts->front().clock;
    if (options.json) {
        nlohmann::ordered_json answer{{"item", options.item}};
        addFigures(answer, clock);
        print(answer);
    } else {
        std::cout << options.item << " at the end of " << record.on.iso() << ": "
                  << plainly(words::Words::figures(clock)) << "\n";
    }
    return Done;
}

}
