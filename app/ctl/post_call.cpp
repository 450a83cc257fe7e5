// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/post.h"
#include "ctl/call.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace crownring::ctl {

void addPost(CLI::App& app, Common& common, Chosen& chosen) {
    auto* call = app.add_subcommand("post", "Put entries into the record: all of them or none");
    auto file = std::make_shared<std::string>();
    auto json = std::make_shared<bool>(false);
    call->add_option("FILE", *file, "Entries as JSON, one a line; - for standard input")->required();
    call->add_flag("--json", *json, "Answer as JSON (the answer always is)");
    call->footer("An entry says what happened, when (on, time) and by whom (by). The kinds and their keys:\n"
                 "  item.entered       item kind [serial type made brought_forward{minutes landings inflations}]\n"
                 "  balloon.entered    balloon [title operations]\n"
                 "  item.fitted        balloon item [place]            item.removed   balloon item [place]\n"
                 "  flight.logged      balloon minutes [landings inflations kit max_temp_c tethered]\n"
                 "  requirement.done   item requirement [clock{…} method ref]\n"
                 "  programme.adopted  programme and one of balloons, items, everything [document digest]\n"
                 "  reading.taken      item quantity unit and one of value, held_at [gore row method]\n"
                 "  event.reported     event and one of balloon, item\n"
                 "  entry.corrected    replaces with{keys}             entry.voided   voids reason\n"
                 "Example:\n"
                 "  "
                 "{\"entry\":\"flight.logged\",\"on\":\"2026-05-03\",\"time\":\"05:40Z\",\"balloon\":\"QE-OAK\","
                 "\"minutes\":62}\n"
                 "Unknown keys are refused with the line number and the key. The schemas are in assets/schema.");
    call->callback([=, &common, &chosen] {
        chosen = [=, &common]() -> int {
            const auto content = contentOf(*file);
            if (!content)
                return refuse(content.error());
            const auto record = open(common, OpenMode::OrCreate);
            if (!record)
                return BadInput;
            const auto receipt = postText(*record, *record, *content, *file == "-" ? "standard input" : *file);
            if (!receipt)
                return refuse(receipt.error());
            std::cout << nlohmann::json{{"posted", receipt->ids.size()}}.dump() << "\n";
            return Done;
        };
    });
}

}
