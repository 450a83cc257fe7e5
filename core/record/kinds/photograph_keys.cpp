// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/photograph_keys.h"

#include "problem/faults/entry_fault.h"
#include "record/chain/chain.h"

namespace crownring {

void checkDigest(ObjectReader& reader, std::string_view key, const std::string& digest) {
    if (!digestFromHex(digest))
        reader.refuse(key, EntryFault::NotADigest);
}

std::vector<std::string> readPhotographs(ObjectReader& reader) {
    auto photographs = reader.optionalTexts("photographs");
    for (const auto& digest : photographs)
        checkDigest(reader, "photographs", digest);
    return photographs;
}

void writePhotographs(nlohmann::json& into, const std::vector<std::string>& photographs) {
    if (!photographs.empty())
        into["photographs"] = photographs;
}

}
