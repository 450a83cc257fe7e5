// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/approve_return.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "problem/faults/bench_fault.h"

#include <nlohmann/json.hpp>

namespace crownring::ctl {

namespace {

Result<std::optional<TimeOfDay>> timeFrom(const std::string& text) {
    if (text.empty())
        return std::optional<TimeOfDay>();
    return TimeOfDay::parse(text).map([](TimeOfDay time) { return std::optional(time); });
}

}

int run(const InspectionApproveOptions& options, const Common& common) {
    const auto on = dayFrom(options.on);
    if (!on)
        return refuse(on.error());
    const auto time = timeFrom(options.time);
    if (!time)
        return refuse(time.error());
    const auto capacity = capacityFrom(options.capacity);
    if (!capacity)
        return refuse(Problem{BenchFault::NoCapacityToSignIn, {options.capacity}});
    const InspectionId inspection(options.inspection);
    return write(common, [&](Record& record) -> Results<std::string> {
        const auto receipt = approveReturn(record, record, inspection, {PersonId(options.by), *capacity, *on}, *time);
        if (!receipt)
            return tl::unexpected(receipt.error());
        auto accomplished = nlohmann::ordered_json::array();
        std::string from;
        for (const auto& id : receipt->ids) {
            const auto line = record.line(id);
            if (!line)
                return tl::unexpected(std::vector{line.error()});
            const auto* done = *line ? std::get_if<RequirementDone>(&(*line)->entry.body) : nullptr;
            if (!done)
                continue;
            from = (*line)->entry.on.iso();
            accomplished.push_back({{"item", done->item.text()}, {"requirement", done->requirement.text()}});
        }
        return printed({{"approved", inspection.text()},
                        {"on", on->iso()},
                        {"by", options.by},
                        {"counts_from", from.empty() ? nlohmann::ordered_json() : nlohmann::ordered_json(from)},
                        {"accomplished", accomplished},
                        {"entry", receipt->ids.front().text()}});
    });
}

}
