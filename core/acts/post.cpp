// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/post.h"

#include "answers/bench_file.h"
#include "answers/discrepancies.h"
#include "answers/review/reviews.h"
#include "bench/confirmed/wording_refusals.h"
#include "bench/review/review_rule.h"
#include "gate/gate.h"
#include "gate/refusing.h"
#include "problem/faults/programme_fault.h"
#include "record/chain/chain.h"
#include "rules/programme/programme.h"
#include "trust/proof.h"

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

/// Where that is left to the record: of an inspection that is in it. Who opens and signs in one batch says it himself.
void fillInConfirmed(Body& body, CivilDate on, const EntryId& id, Books& books) {
    const auto ofVisit = [&](auto& said, Outcome outcome, const PersonId& signatory) {
        const auto capacity = capacityFrom(said.capacity);
        if (!said.confirmed.empty() || !capacity)
            return;
        const auto file = benchFile(books, said.inspection, on);
        if (!file || !file->inspection.isOpen())
            return;
        said.confirmed =
            confirmedFor(wordingAsked(*file, {outcome, signatory, *capacity, said.manuals, said.limitations, on}));
    };
    if (auto* closing = std::get_if<InspectionClosed>(&body); closing && closing->signatory)
        ofVisit(*closing, closing->outcome, *closing->signatory);
    else if (auto* release = std::get_if<ReleaseIncomplete>(&body))
        ofVisit(*release, Outcome::Incomplete, release->signatory);
    else if (auto* approval = std::get_if<ReturnApproved>(&body); approval && approval->confirmed.empty()) {
        const auto file = returnFile(books, approval->inspection, on);
        if (const auto capacity = capacityFrom(approval->capacity); capacity && file)
            approval->confirmed = confirmedFor(wordingAsked(*file, {approval->signatory, *capacity, on}));
    } else if (auto* review = std::get_if<ReviewSigned>(&body);
               review && (review->confirmed.empty() || review->statement.empty())) {
        Entry signing;
        signing.id = id;
        signing.on = on;
        signing.body = *review;
        if (const auto file = reviewFile(books, signing)) {
            const auto asked = wordingAsked(*file, *review);
            if (review->confirmed.empty())
                review->confirmed = confirmedFor(asked);
            if (review->statement.empty())
                review->statement = asked.statement.text;
        }
    }
}

/// The licence under which somebody confirms, where that is left to the record.
std::optional<Problem> fillIn(TextConfirmed& said, CivilDate on, Books& books) {
    const auto capacity = capacityFrom(said.capacity);
    if (!said.licence.empty() || !capacity)
        return std::nullopt;
    const auto entitlements = entitlementsOn(books, on);
    if (!entitlements)
        return entitlements.error();
    said.licence = licenceOf(*entitlements, said.confirmedBy, *capacity, on);
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
        else if (auto* confirmed = std::get_if<TextConfirmed>(&entry.body))
            problem = fillIn(*confirmed, entry.on, books);
        if (!proofIn(entry)) // what is proven is a text to the last word
            fillInConfirmed(entry.body, entry.on, entry.id, books);
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
