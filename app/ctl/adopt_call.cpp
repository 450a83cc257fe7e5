// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/adopt.h"
#include "ctl/call.h"
#include "rules/programme.h"

#include <nlohmann/json.hpp>

namespace crownring::ctl {

namespace {

struct AdoptOptions {
    std::string file;
    std::vector<std::string> balloons;
    std::vector<std::string> items;
    bool all = false;
    std::string on;
    std::string by;
};

template <class NameOf>
std::vector<NameOf> namesOf(const std::vector<std::string>& texts) {
    return {texts.begin(), texts.end()};
}

int run(const AdoptOptions& options, const Common& common) {
    const int said = (options.balloons.empty() ? 0 : 1) + (options.items.empty() ? 0 : 1) + (options.all ? 1 : 0);
    if (said != 1)
        return refuse(Problem{Code::BadUse,
                              "whom the programme binds is not said exactly once",
                              "give --balloon, --item (each may repeat) or --all",
                              {}});
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
    const auto record = open(common, OpenMode::OrCreate);
    if (!record)
        return BadInput;
    const auto receipt = adopt(*record, *record, document, options.file, std::move(bound), *on, options.by);
    if (!receipt)
        return refuse(receipt.error());
    const auto programme = programmeFrom(document);
    const auto line = record->line(receipt->ids.front());
    const auto digest = std::get<ProgrammeAdopted>(line.value().value().entry.body).digest;
    print({{"adopted", programme->id.text()},
           {"revision", programme->revision},
           {"on", on->iso()},
           {"digest", digest},
           {"entry", receipt->ids.front().text()}});
    return Done;
}

}

void addAdopt(CLI::App& app, Common& common, Chosen& chosen) {
    auto* call = app.add_subcommand("adopt", "Adopt a programme of requirements: its text goes into the record");
    auto options = std::make_shared<AdoptOptions>();
    call->add_option("PROGRAMME", options->file,
                     "A programme's file, or the name of one on the shelf (part-ml-hot-air …)")
        ->required();
    call->add_option("--balloon", options->balloons, "Binds whatever is fitted to this balloon on the day asked")
        ->type_name("REG");
    call->add_option("--item", options->items, "Binds this item")->type_name("ID");
    call->add_flag("--all", options->all, "Binds everything, the pool too");
    call->add_option("--on", options->on, "In force from this day (default: today)")->type_name("DATE");
    call->add_option("--by", options->by, "Who adopts it")->type_name("NAME");
    call->add_flag_callback(
        "--json", [] {}, "Answer as JSON (the answer always is)");
    call->footer("A programme that breaks its schema is refused with the path inside the document.");
    call->callback([=, &common, &chosen] { chosen = [=, &common] { return run(*options, common); }; });
}

}
