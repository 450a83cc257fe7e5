// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/post.h"
#include "ctl/call.h"
#include "ctl/calls.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace crownring::ctl {

int run(const PostOptions& options, const Common& common) {
    const auto content = contentOf(options.file);
    if (!content)
        return refuse(content.error());
    const auto record = open(common, OpenMode::OrCreate);
    if (!record)
        return BadInput;
    const auto receipt = postText(*record, *record, *content, options.file == "-" ? "standard input" : options.file);
    if (!receipt)
        return refuse(receipt.error());
    std::cout << nlohmann::json{{"posted", receipt->ids.size()}}.dump() << "\n";
    return Done;
}

}
