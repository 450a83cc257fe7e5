// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/bench_fault.h"

namespace crownring {

namespace {

/// What a signature covers stays as it was written.
void compare(const JournalLine& root, const InspectionClosed& written, int line, std::vector<Problem>& problems) {
    const auto refuse = [&](BenchFault fault, const char* key) {
        problems.push_back(Problem{fault, {}, {{}, line, std::string("with/") + key}});
    };
    if (momentOf(root.entry) != momentOf(*root.current))
        refuse(BenchFault::SignatureDayIsFixed, "on");
    const auto& now = std::get<InspectionClosed>(root.current->body);
    const auto keep = [&](bool same, const char* key) {
        if (!same)
            refuse(BenchFault::SignatureIsFixed, key);
    };
    keep(written.outcome == now.outcome, "outcome");
    keep(written.inspection == now.inspection, "inspection");
    keep(written.signatory == now.signatory, "signatory");
    keep(written.capacity == now.capacity, "capacity");
    keep(written.statement == now.statement, "statement");
    keep(written.clocks == now.clocks, "clocks");
    keep(written.seal == now.seal, "seal");
}

}

Findings askSignedWords(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto* correction = std::get_if<EntryCorrected>(&entry.body);
        if (!correction)
            continue;
        const auto root = rootOf(batch.journal, correction->replaces);
        if (!root)
            return tl::unexpected(atLine(root.error(), line));
        if (const auto* closing = std::get_if<InspectionClosed>(&root->entry.body); closing && root->current)
            compare(*root, *closing, line, problems);
    }
    return problems;
}

}
