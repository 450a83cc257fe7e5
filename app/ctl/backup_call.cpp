// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/call.h"

#include <nlohmann/json.hpp>

namespace crownring::ctl {

void addBackup(CLI::App& app, Common& common, Chosen& chosen) {
    auto* call = app.add_subcommand("backup", "Write a verified copy of the record to a new file");
    auto file = std::make_shared<std::string>();
    call->add_option("FILE", *file, "The copy; must not exist")->required();
    call->add_flag_callback(
        "--json", [] {}, "Answer as JSON (the answer always is)");
    call->footer("Do not copy the record's file while it is open: what was written last stands in a file beside it.");
    call->callback([=, &common, &chosen] {
        chosen = [=, &common]() -> int {
            const auto record = open(common);
            if (!record)
                return BadInput;
            if (const auto done = record->backUpTo(*file); !done)
                return refuse(done.error());
            print({{"backup", *file}});
            return Done;
        };
    });
}

}
