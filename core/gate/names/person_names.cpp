// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/bench_fault.h"
#include "problem/faults/trust_fault.h"
#include "text/skeleton.h"
#include "trust/proof.h"

#include <algorithm>
#include <map>

namespace crownring {

namespace {

struct NamedPerson {
    std::string name;
    const char* key;
};

/// Whoever is entitled, signs, agrees, confirms, answers a directive, or has or sets a code.
std::vector<NamedPerson> namedIn(const Entry& entry) {
    std::vector<NamedPerson> names;
    if (const auto* entitled = std::get_if<PersonEntitled>(&entry.body))
        names.push_back({entitled->person.text(), "person"});
    if (const auto* confirmed = std::get_if<TextConfirmed>(&entry.body))
        names.push_back({confirmed->confirmedBy.text(), "confirmed_by"});
    if (const auto* deferred = std::get_if<DefectDeferred>(&entry.body))
        names.push_back({deferred->agreedBy.text(), "agreed_by"});
    if (std::holds_alternative<DirectiveAnswered>(entry.body))
        names.push_back({entry.by, "by"});
    if (const auto* code = std::get_if<SignatoryCode>(&entry.body)) {
        names.push_back({code->signatory.text(), "signatory"});
        if (code->proof)
            names.push_back({entry.by, "by"});
    }
    if (const auto by = signedFor(entry))
        names.push_back({by->person.text(), by->purpose == Purpose::Revocation ? "by"
                                            : by->purpose == Purpose::Review   ? "reviewer"
                                                                               : "signatory"});
    std::erase_if(names, [](const NamedPerson& each) { return each.name.empty(); });
    return names;
}

/// People of the record, by what their names look like, in the order in which they came into it.
class Known {
public:
    static Result<Known> of(Books& books) {
        auto told = books.told(
            {Subject::Person, {}, {kindName<PersonEntitled>(), kindName<SignatoryCode>()}, CivilDate::last()});
        if (!told)
            return tl::unexpected(told.error());
        std::ranges::sort(*told, {}, &JournalLine::number);
        Known known;
        for (const auto& line : *told) {
            const auto& body = nowOf(line).body;
            if (const auto* entitled = std::get_if<PersonEntitled>(&body))
                known.add(entitled->person.text());
            else if (const auto* code = std::get_if<SignatoryCode>(&body))
                known.add(code->signatory.text());
        }
        return known;
    }

    /// The first that looks so, where it is another.
    [[nodiscard]] std::optional<std::string> takenBefore(const std::string& name) const {
        const auto first = m_first.find(skeleton(name));
        return first == m_first.end() || first->second == name ? std::nullopt : std::optional(first->second);
    }

private:
    void add(const std::string& name) { m_first.emplace(skeleton(name), name); }
    std::map<std::string, std::string> m_first;
};

}

Findings askPersonNames(const Batch& batch) {
    std::vector<Problem> problems;
    std::optional<Known> known;
    for (const auto& [entry, line] : batch.entries) {
        const auto amended = amendedBy(batch.journal, entry);
        if (!amended)
            return tl::unexpected(atLine(amended.error(), line));
        for (const auto& [name, key] : namedIn(*amended ? **amended : entry)) {
            if (!known) {
                auto told = Known::of(batch.books);
                if (!told)
                    return tl::unexpected(atLine(told.error(), line));
                known = std::move(*told);
            }
            if (auto other = known->takenBefore(name))
                problems.push_back(asAmended(
                    Problem{TrustFault::LooksLikeAnother, {name, std::move(*other)}, {{}, line, key}}, entry));
        }
    }
    return problems;
}

}
