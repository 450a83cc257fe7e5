// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/post.h"

#include "answers/bench_file.h"
#include "bench/review/review_rule.h"
#include "gate/gate.h"
#include "gate/refusing.h"
#include "problem/faults/programme_fault.h"
#include "record/chain/chain.h"
#include "rules/programme/programme.h"

#include <algorithm>
#include <iterator>

namespace crownring {

namespace {

/// Gives an adoption its programme's text and digest. The text of the entry itself comes first, then what the record
/// holds, then the shelf.
std::optional<Problem> fillIn(ProgrammeAdopted& adopted, Books& books) {
    if (adopted.document.empty()) {
        auto held = books.programmeDocument(adopted.programme);
        if (!held)
            return held.error();
        adopted.document = held->empty() ? std::string(shelfText(adopted.programme)) : std::move(*held);
    }
    if (adopted.document.empty())
        return Problem{ProgrammeFault::Unknown, {adopted.programme}, atKey("programme")};
    if (auto problem = unreadableText(adopted))
        return problem;
    const auto digest = hex(sha256(adopted.document));
    if (!adopted.digest.empty() && adopted.digest != digest)
        return Problem{ProgrammeFault::AnotherDigest, {}, atKey("digest")};
    adopted.digest = digest;
    return std::nullopt;
}

/// What a review is signed under, where that is left to the record.
std::optional<Problem> fillIn(ReviewSigned& said, CivilDate on, Books& books) {
    const auto capacity = capacityFrom(said.capacity);
    if (!said.authorisation.empty() || !capacity)
        return std::nullopt;
    const auto entitlements = entitlementsOn(books, on);
    if (!entitlements)
        return entitlements.error();
    said.authorisation = authorisationOf(*entitlements, said.reviewer, *capacity, on);
    return std::nullopt;
}

Problem placedIn(Problem problem, const std::string& file) {
    problem.where.file = file;
    return problem;
}

}

Results<void> complete(std::vector<NumberedEntry>& entries, Books& books, const std::string& file) {
    std::vector<Problem> problems;
    for (auto& [entry, line] : entries) {
        std::optional<Problem> problem;
        if (auto* adopted = std::get_if<ProgrammeAdopted>(&entry.body))
            problem = fillIn(*adopted, books);
        else if (auto* review = std::get_if<ReviewSigned>(&entry.body))
            problem = fillIn(*review, entry.on, books);
        if (problem) {
            problem->where.file = file;
            problem->where.line = line;
            problems.push_back(std::move(*problem));
        }
    }
    if (!problems.empty())
        return tl::unexpected(std::move(problems));
    return {};
}

Results<Receipt> post(Journal& journal, Books& books, std::vector<NumberedEntry> entries, const std::string& file,
                      const Journal::Judge& also) {
    if (auto completed = complete(entries, books, file); !completed)
        return tl::unexpected(std::move(completed.error()));
    return journal.append(std::move(entries), file, [&](std::span<const NumberedEntry> written) {
        auto refused = refusalsOf({journal, books, written});
        if (also)
            std::ranges::move(also(written), std::back_inserter(refused));
        for (auto& each : refused)
            each = placedIn(std::move(each), file);
        return refused;
    });
}

Results<Receipt> postText(Journal& journal, Books& books, std::string_view text, const std::string& file) {
    auto entries = entriesFrom(text, file);
    if (!entries)
        return tl::unexpected(std::move(entries.error()));
    return post(journal, books, std::move(*entries), file);
}

Results<Receipt> postOne(Journal& journal, Books& books, Entry entry) {
    return post(journal, books, {{std::move(entry), 0}}, {});
}

}
