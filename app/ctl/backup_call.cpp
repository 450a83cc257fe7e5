// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/call.h"
#include "ctl/calls.h"
#include "writing/target.h"

#include <nlohmann/json.hpp>

namespace crownring::ctl {

int run(const BackupOptions& options, const Common& common) {
    const auto record = open(common, OpenMode::Existing, Prove::ByTheCall); // the copy is proven
    if (!record)
        return BadInput;
    if (const auto done = record->backUpTo(options.file, options.force ? Replace::Asked : Replace::Never); !done)
        return refuse(done.error());
    print({{"backup", options.file}});
    return Done;
}

}
