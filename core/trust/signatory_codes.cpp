// SPDX-License-Identifier: GPL-3.0-or-later
#include "trust/signatory_codes.h"

#include "text/blank.h"
#include "text/skeleton.h"

#include <algorithm>

namespace crownring {

bool isSamePerson(std::string_view one, std::string_view other) { return skeleton(one) == skeleton(other); }

bool CodeSet::isByAnother() const { return said.proof && !isBlank(by) && !isSamePerson(by, said.signatory.text()); }

std::vector<CodeSet> codesFrom(std::span<const JournalLine> told) {
    std::vector<CodeSet> codes;
    for (const auto& line : told)
        if (const auto* said = std::get_if<SignatoryCode>(&line.entry.body); said && !line.unread)
            codes.push_back({line.entry.id, line.number, stampOf(line.entry), line.entry.by, *said});
    std::ranges::sort(codes, {}, &CodeSet::number);
    return codes;
}

const CodeSet* inForce(std::span<const CodeSet> codes, std::string_view person, std::int64_t number) {
    const CodeSet* latest = nullptr;
    for (const auto& each : codes)
        if (each.number < number && isSamePerson(each.said.signatory.text(), person))
            latest = &each;
    return latest;
}

std::vector<CodeSet> setByOthers(std::span<const CodeSet> codes) {
    std::vector<CodeSet> open;
    for (const auto& each : codes) {
        const bool isReplaced = std::ranges::any_of(codes, [&](const CodeSet& other) {
            return each.stamp < other.stamp && !other.isByAnother() &&
                   isSamePerson(other.said.signatory.text(), each.said.signatory.text());
        });
        if (each.isByAnother() && !isReplaced)
            open.push_back(each);
    }
    std::ranges::sort(open, {}, &CodeSet::stamp);
    return open;
}

}
