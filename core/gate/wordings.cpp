// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/bench_file.h"
#include "answers/wording/wording_lines.h"
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/wording_fault.h"
#include "text/blank.h"

#include <algorithm>
#include <iterator>

namespace crownring {

namespace {

Findings judgedAdoption(const Batch& batch, const TextAdopted& adopted, int line) {
    auto problems = faultsOf(adopted);
    for (auto& each : problems)
        each.where.line = line;
    const auto told =
        batch.books.told({Subject::Text, adopted.text.text(), {kindName<TextAdopted>()}, CivilDate::last()});
    if (!told)
        return tl::unexpected(atLine(told.error(), line));
    for (const auto& other : *told)
        if (const auto* said = std::get_if<TextAdopted>(&nowOf(other).body);
            problems.empty() && said && said->revision == adopted.revision && wordingOf(*said) != wordingOf(adopted))
            problems.push_back(
                Problem{WordingFault::OtherWording, {adopted.text, adopted.revision}, {{}, line, "revision"}});
    return problems;
}

Argument nameOfConfirmed(const TextConfirmed& said) {
    return said.text ? Argument(*said.text) : Argument(*said.checklist);
}

/// For which visits that is signed by which is confirmed, or why there is no such thing.
struct Meant {
    std::vector<Visit> visits;
    std::optional<Problem> problem;
};

Result<Meant> meantText(const Batch& batch, const TextConfirmed& said, CivilDate on) {
    const auto text = statementTextFrom(*said.text);
    const auto book = wordingBook(batch.books, on);
    if (!book)
        return tl::unexpected(book.error());
    const auto adopted = book->adopted.find(*said.text);
    if (!text || adopted == book->adopted.end())
        return Meant{{}, Problem{WordingFault::NotAdopted, {*said.text, on}, atKey("text")}};
    const auto inUse = named(adopted->second.wording);
    if (!isOf(said, inUse))
        return Meant{{},
                     Problem{WordingFault::AnotherDigest, {*said.text, inUse.revision, inUse.digest}, atKey("digest")}};
    return Meant{visitsSignedBy(*text), {}};
}

Result<Meant> meantChecklist(const Batch& batch, const TextConfirmed& said) {
    for (const auto& ships : shippedChecklists())
        if (ships.checklist == said.checklist && ships.revision == said.revision) {
            if (!isOf(said, ships))
                return Meant{{},
                             Problem{WordingFault::AnotherDigest,
                                     {*said.checklist, ships.revision, ships.digest},
                                     atKey("digest")}};
            return Meant{visitsOfChecklist(std::string(shippedDocument(ships))), {}};
        }
    const auto document = checklistOfRecord(batch.books, said);
    if (!document)
        return tl::unexpected(document.error());
    if (document->empty())
        return Meant{{}, Problem{WordingFault::NoSuchChecklist, {*said.checklist, said.revision}, atKey("checklist")}};
    return Meant{visitsOfChecklist(*document), {}};
}

Result<Meant> meant(const Batch& batch, const TextConfirmed& said, CivilDate on) {
    return said.text ? meantText(batch, said, on) : meantChecklist(batch, said);
}

Findings judgedConfirmation(const Batch& batch, const Entry& entry, int line) {
    const auto& said = std::get<TextConfirmed>(entry.body);
    const auto capacity = capacityFrom(said.capacity);
    if (!capacity)
        return std::vector{Problem{WordingFault::NoCapacity, {said.capacity}, {{}, line, "capacity"}}};
    const auto of = meant(batch, said, entry.on);
    if (!of)
        return tl::unexpected(atLine(of.error(), line));
    if (of->problem)
        return std::vector{atLine(*of->problem, line)};
    const auto entitlements = entitlementsOn(batch.books, entry.on);
    if (!entitlements)
        return tl::unexpected(atLine(entitlements.error(), line));
    auto bar = barOfConfirming(*capacity, of->visits);
    if (!bar)
        bar = notHeld(*entitlements, said.confirmedBy, *capacity, entry.on);
    if (bar)
        return std::vector{Problem{WordingFault::MayNotConfirm, {bar->why}, {{}, line, "confirmed_by"}, bar->rule}};
    const auto licence = licenceOf(*entitlements, said.confirmedBy, *capacity, entry.on);
    if (said.licence != licence)
        return std::vector{Problem{WordingFault::AnotherLicence, {licence}, {{}, line, "licence"}}};
    return std::vector<Problem>{};
}

/// Who may confirm it may take it back; an owner only his own.
Findings judgedTakingBack(const Batch& batch, const Entry& entry, const TextConfirmed& said, int line) {
    const auto refused =
        std::vector{Problem{WordingFault::TakenBackByNobody, {nameOfConfirmed(said)}, {{}, line, "by"}}};
    if (isBlank(entry.by))
        return refused;
    const auto of = meant(batch, said, CivilDate::last());
    if (!of)
        return tl::unexpected(atLine(of.error(), line));
    const auto entitlements = entitlementsOn(batch.books, entry.on);
    if (!entitlements)
        return tl::unexpected(atLine(entitlements.error(), line));
    const PersonId person(entry.by);
    if (person == said.confirmedBy)
        return std::vector<Problem>{};
    // What it was of may be in use no more.
    const auto text = said.text ? statementTextFrom(*said.text) : std::nullopt;
    const auto visits = text ? visitsSignedBy(*text) : of->visits;
    const bool may = std::ranges::any_of(*entitlements, [&](const Entitlement& each) {
        const bool isOwner = each.capacity == Capacity::PilotOwner || each.capacity == Capacity::PrivatePilot;
        return each.person == person && !isOwner && !barOfConfirming(each.capacity, visits) &&
               !notHeld(*entitlements, person, each.capacity, entry.on);
    });
    return may ? std::vector<Problem>{} : refused;
}

Findings judgedAmendment(const Batch& batch, const Entry& entry, int line) {
    const auto root = amendedRoot(batch.journal, entry);
    if (!root)
        return tl::unexpected(atLine(root.error(), line));
    if (!*root)
        return std::vector<Problem>{};
    const auto* adopted = std::get_if<TextAdopted>(&(*root)->entry.body);
    const auto* confirmed = std::get_if<TextConfirmed>(&(*root)->entry.body);
    if (!adopted && !confirmed)
        return std::vector<Problem>{};
    if (std::holds_alternative<EntryCorrected>(entry.body))
        return std::vector{Problem{WordingFault::NotCorrected,
                                   {adopted ? Argument(adopted->text) : nameOfConfirmed(*confirmed)},
                                   {{}, line, "with"}}};
    if (confirmed)
        return judgedTakingBack(batch, entry, *confirmed, line);
    return std::vector<Problem>{};
}

Findings judgedWording(const Batch& batch, const Entry& entry, int line) {
    if (const auto* adopted = std::get_if<TextAdopted>(&entry.body))
        return judgedAdoption(batch, *adopted, line);
    if (std::holds_alternative<TextConfirmed>(entry.body))
        return judgedConfirmation(batch, entry, line);
    return judgedAmendment(batch, entry, line);
}

}

Findings askWordings(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        auto found = judgedWording(batch, entry, line);
        if (!found)
            return found;
        std::ranges::move(*found, std::back_inserter(problems));
    }
    return problems;
}

}
