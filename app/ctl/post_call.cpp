// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/post.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "text/shown.h"

#include <nlohmann/json.hpp>

namespace crownring::ctl {

int run(const PostOptions& options, const Common& common) {
    const auto content = contentOf(options.file);
    if (!content)
        return refuse(content.error());
    return write(common, [&](Record& record) {
        return postText(record, record, *content, options.file == "-" ? "standard input" : options.file)
            .map([](const Receipt& receipt) {
                nlohmann::ordered_json answer{{"posted", receipt.ids.size()}};
                if (const auto& end = receipt.end) {
                    answer["writer"] = end->writer.text();
                    answer["sequence"] = end->sequence;
                    answer["hash"] = hex(end->hash);
                }
                return escapedJson(answer.dump());
            });
    });
}

}
