// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/adopt.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "problem/faults/use_fault.h"
#include "rules/programme/programme.h"

#include <nlohmann/json.hpp>

namespace crownring::ctl {

namespace {

template <class NameOf>
std::vector<NameOf> namesOf(const std::vector<std::string>& texts) {
    return {texts.begin(), texts.end()};
}

}

int run(const AdoptOptions& options, const Common& common) {
    const int said = (options.balloons.empty() ? 0 : 1) + (options.items.empty() ? 0 : 1) + (options.all ? 1 : 0);
    if (said != 1)
        return refuse(Problem{UseFault::BoundNotOnce});
    const auto on = dayFrom(options.on);
    if (!on)
        return refuse(on.error());
    // A bare name of a programme on the shelf serves as well as a file.
    std::string document(shelfText(ProgrammeId(options.file)));
    if (document.empty()) {
        auto content = contentOf(options.file);
        if (!content)
            return refuse(content.error());
        document = std::move(*content);
    }
    Bound bound = BoundEverything{};
    if (!options.balloons.empty())
        bound = BoundBalloons{namesOf<Registration>(options.balloons)};
    else if (!options.items.empty())
        bound = BoundItems{namesOf<ItemId>(options.items)};
    return write(common, [&](Record& record) -> Results<std::string> {
        const auto receipt = adopt(record, record, document, options.file, bound, *on, options.by);
        if (!receipt)
            return tl::unexpected(receipt.error());
        const auto programme = programmeFrom(document);
        const auto line = record.line(receipt->ids.front());
        const auto digest = std::get<ProgrammeAdopted>(line.value().value().entry.body).digest;
        return printed({{"adopted", programme->id.text()},
                        {"revision", programme->revision},
                        {"on", on->iso()},
                        {"digest", digest},
                        {"entry", receipt->ids.front().text()}});
    });
}

}
