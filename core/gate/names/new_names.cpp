// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/entry_fault.h"
#include "record/amendment.h"
#include "text/legible.h"

#include <algorithm>

namespace crownring {

namespace {

std::string_view keyOf(Subject subject) {
    switch (subject) {
    case Subject::Item:
        return "item";
    case Subject::Balloon:
        return "balloon";
    case Subject::Inspection:
        return "inspection";
    case Subject::Defect:
        return "defect";
    case Subject::Person:
        return "person";
    default:
        return {};
    }
}

void addTester(std::vector<Mention>& to, const std::optional<TesterId>& tester) {
    if (tester)
        to.push_back({{Subject::Tester, tester->text()}, "tester"});
}

/// What an entry may be the first to name.
std::vector<Mention> namesIn(const Body& body) {
    std::vector<Mention> named;
    if (auto brought = broughtBy(body))
        named.push_back({*brought, keyOf(brought->subject)});
    if (const auto* calibrated = std::get_if<TesterCalibrated>(&body))
        addTester(named, calibrated->tester);
    if (const auto* reading = std::get_if<ReadingTaken>(&body))
        addTester(named, reading->tester);
    if (const auto* settled = std::get_if<LineSettled>(&body))
        addTester(named, settled->tester);
    const auto* done = std::get_if<RequirementDone>(&body);
    if (done && done->signatory)
        named.push_back({{Subject::Person, done->signatory->text()}, "signatory"});
    return named;
}

/// Of an amendment: what is amended, as that was written; else nothing.
Result<std::vector<Mention>> firstNamedBy(const Batch& batch, const Entry& entry) {
    const auto target = amends(entry);
    if (!target)
        return std::vector<Mention>();
    const auto root = rootOf(batch.journal, *target);
    if (!root)
        return tl::unexpected(root.error());
    return namesIn(root->entry.body);
}

/// Earlier programs took such names: whoever has one goes on with it.
Result<bool> wasNamedBefore(const Batch& batch, const Named& named, const std::vector<Mention>& asFirstWritten) {
    if (std::ranges::any_of(asFirstWritten, [&](const Mention& each) {
            return each.named.subject == named.subject && each.named.name == named.name;
        }))
        return true;
    const auto told = batch.books.told({named.subject, named.name, {}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    return std::ranges::any_of(*told, [&](const JournalLine& line) {
        return std::ranges::none_of(batch.entries,
                                    [&](const NumberedEntry& each) { return each.entry.id == line.entry.id; });
    });
}

}

Findings askNewNames(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto amended = amendedBy(batch.journal, entry);
        if (!amended)
            return tl::unexpected(atLine(amended.error(), line));
        auto named = namesIn(*amended ? (*amended)->body : entry.body);
        std::erase_if(named, [](const Mention& each) { return isLegible(each.named.name); });
        if (named.empty())
            continue;
        const auto first = firstNamedBy(batch, entry);
        if (!first)
            return tl::unexpected(atLine(first.error(), line));
        for (const auto& each : named) {
            const auto before = wasNamedBefore(batch, each.named, *first);
            if (!before)
                return tl::unexpected(atLine(before.error(), line));
            if (!*before)
                problems.push_back(asAmended(
                    Problem{EntryFault::NotLegible, {each.named.name}, {{}, line, std::string(each.key)}}, entry));
        }
    }
    return problems;
}

}
