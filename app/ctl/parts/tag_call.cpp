// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/call.h"
#include "ctl/parts/component_calls.h"
#include "print/tags/tag_picture.h"
#include "problem/faults/components/part_fault.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace crownring::ctl {

int run(const TagOptions& options, const Common& common) {
    const auto record = openToAsk(common, options.on);
    if (!record)
        return BadInput;
    const auto item = print::itemOnPicture(options.picture);
    if (!item)
        return refuse(item.error());
    const auto known = record->facts({std::nullopt, {*item}}, record.on);
    if (!known && known.error().code() != Code::UnknownReference)
        return refuse(known.error());
    if (!known || known->empty())
        return refuse(Problem{PartFault::TagOfUnknown, {*item}, {options.picture, 0, {}}});
    const auto& facts = known->front();
    if (!options.json) {
        std::cout << facts.id.text() << ": " << itemKindName(facts.kind) << ", "
                  << (facts.balloon ? facts.balloon->text() : std::string("on no balloon")) << "\n";
        return Done;
    }
    print({{"item", facts.id.text()},
           {"kind", itemKindName(facts.kind)},
           {"serial", facts.serial ? nlohmann::ordered_json(*facts.serial) : nlohmann::ordered_json()},
           {"type", facts.type ? nlohmann::ordered_json(*facts.type) : nlohmann::ordered_json()},
           {"balloon", facts.balloon ? nlohmann::ordered_json(facts.balloon->text()) : nlohmann::ordered_json()},
           {"part_of", facts.carrier ? nlohmann::ordered_json(facts.carrier->text()) : nlohmann::ordered_json()}});
    return Done;
}

}
