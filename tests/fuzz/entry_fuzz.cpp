// SPDX-License-Identifier: GPL-3.0-or-later
/// Bytes as a file of entries. What is taken must be written and read back as the same, and amended without harm; what
/// is refused must say where and which fault it is.

#include "record/amendment.h"
#include "record/entry_json.h"

#include <nlohmann/json.hpp>

#include <cstdint>
#include <cstdlib>
#include <string_view>

using namespace crownring;

namespace {

void require(bool holds) {
    if (!holds)
        std::abort();
}

}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(bytes), size);
    const auto entries = entriesFrom(text, "fuzz.jsonl");
    if (!entries) {
        for (const auto& problem : entries.error())
            require(problem.where.line > 0 && !rowOf(problem.fault).name.empty());
        return 0;
    }
    std::vector<Entry> amendments;
    for (const auto& each : *entries) {
        const auto line = canonicalText(each.entry);
        const auto again = entryFrom(std::string_view(line));
        require(again.has_value() && *again == each.entry && canonicalText(*again) == line);
        if (amends(each.entry))
            amendments.push_back(each.entry);
    }
    for (const auto& each : *entries) {
        const auto result = amended(each.entry, amendments);
        require(!result.entry || entryFrom(toJson(*result.entry)).has_value());
    }
    return 0;
}
