// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/bench_file.h"
#include "answers/directives/fitted.h"
#include "bench/release/barred_phrase.h"
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/directives/directive_fault.h"
#include "rules/due/directive_rows.h"
#include "rules/programme/serial_order.h"
#include "text/blank.h"

#include <algorithm>

namespace crownring {

namespace {

// From memory: who releases work to a directive is who may release other work.
constexpr const char* complianceRule = "ML.A.303, ML.A.801; 14 CFR 39, 43.9 (from memory)";

using Issues = std::vector<Entry>;

/// The revisions of a directive that the record has, as they say now.
Result<Issues> issuesOf(Books& books, const DirectiveId& directive) {
    const auto told =
        books.told({Subject::Directive, directive.text(), {kindName<DirectiveIssued>()}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    Issues issues;
    for (const auto& line : *told)
        if (std::holds_alternative<DirectiveIssued>(nowOf(line).body))
            issues.push_back(nowOf(line));
    return issues;
}

bool isReversed(const std::vector<SerialSpan>& spans) {
    return std::ranges::any_of(
        spans, [](const SerialSpan& span) { return span.from && span.to && compareSerials(*span.from, *span.to) > 0; });
}

Findings judgedIssue(const Batch& batch, const Entry& entry, const DirectiveIssued& issued, int line) {
    const auto issues = issuesOf(batch.books, issued.directive);
    if (!issues)
        return tl::unexpected(issues.error());
    std::vector<Problem> problems;
    if (isReversed(issued.applies.serials) ||
        std::ranges::any_of(issued.applies.fitted, [](const auto& part) { return isReversed(part.serials); }))
        problems.push_back(Problem{DirectiveFault::RangeReversed, {}, {{}, line, "applies"}});
    for (const auto& other : *issues) {
        const auto& said = std::get<DirectiveIssued>(other.body);
        if (other.id == entry.id)
            continue;
        if (said.issuer != issued.issuer || said.state != issued.state)
            problems.push_back(
                Problem{DirectiveFault::OtherIssuer, {issued.directive, said.issuer}, {{}, line, "issuer"}});
        else if (said.revision == issued.revision)
            problems.push_back(
                Problem{DirectiveFault::IssuedTwice, {issued.directive, issued.revision}, {{}, line, "revision"}});
    }
    return problems;
}

/// What an answer is for, on its day.
struct Answered {
    std::vector<ItemFacts> items; ///< itself, or all that is on the balloon
    std::optional<Registration> balloon;
    std::vector<ItemFacts> beside; ///< all that is on the balloon
    std::vector<std::string> operations;
};

Result<Answered> answeredOn(Books& books, const DirectiveAnswered& answer, CivilDate on) {
    Answered answered;
    answered.balloon = answer.balloon;
    if (answer.item) {
        auto facts = books.facts({std::nullopt, {*answer.item}}, on);
        if (!facts)
            return tl::unexpected(facts.error());
        answered.items = std::move(*facts);
        if (!answered.items.empty())
            answered.balloon = answered.items.front().balloon;
    }
    if (answered.balloon) {
        auto facts = books.facts({answered.balloon, {}}, on);
        if (!facts)
            return tl::unexpected(facts.error());
        answered.beside = std::move(*facts);
    } else {
        answered.beside = answered.items;
    }
    if (answer.balloon)
        answered.items = answered.beside;
    if (!answered.beside.empty())
        answered.operations = answered.beside.front().operations;
    return answered;
}

/// The visit that has the item, or is the balloon's; nothing where it has not.
Result<std::optional<Visit>> visitOf(Books& books, const DirectiveAnswered& answer, const Answered& answered) {
    const auto told =
        books.told({Subject::Inspection, answer.inspection->text(), {kindName<InspectionOpened>()}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    for (const auto& line : *told) {
        const auto* opened = std::get_if<InspectionOpened>(&nowOf(line).body);
        if (opened && (answer.item ? std::ranges::find(opened->items, *answer.item) != opened->items.end()
                                   : opened->balloon == answered.balloon))
            return visitFrom(opened->visit);
    }
    return std::nullopt;
}

/// By the table for other work: whoever may release a visit that is for compliance.
Result<std::optional<Barred>> barOf(Books& books, const Entry& entry, const DirectiveAnswered& answer,
                                    const Answered& answered) {
    const auto entitlements = entitlementsOn(books, entry.on);
    if (!entitlements)
        return tl::unexpected(entitlements.error());
    const PersonId person(entry.by);
    const auto capacity = capacityFrom(answer.capacity);
    if (!capacity)
        return Barred{{BarredPhrase::NotEntitled, {person, answer.capacity}}, complianceRule};
    return mayRelease(*entitlements, {person, *capacity, answered.balloon, answered.operations, entry.on},
                      regimeOf(*capacity) == Regime::PartMl ? Visit::PartMlCompliance : Visit::UsCompliance);
}

/// What shows that it was done, and by whom.
Findings judgedDone(const Batch& batch, const Entry& entry, const DirectiveAnswered& answer, const Answered& answered,
                    int line) {
    if (answer.inspection) {
        const auto visit = visitOf(batch.books, answer, answered);
        if (!visit)
            return tl::unexpected(visit.error());
        if (!*visit)
            return std::vector{
                Problem{DirectiveFault::NotOfTheVisit,
                        {answer.item ? Argument(*answer.item) : Argument(answer.balloon.value_or(Registration())),
                         *answer.inspection},
                        {{}, line, "inspection"}}};
        if (isOfOwnersTasks(**visit)) // no task of an owner's list is one
            return std::vector{Problem{DirectiveFault::MayNotComply,
                                       {Phrase{BarredPhrase::OwnersTasksOnly, {PersonId(entry.by)}}},
                                       {{}, line, "inspection"},
                                       complianceRule}};
        return std::vector<Problem>{};
    }
    if (answer.capacity.empty()) {
        if (!isBlank(answer.licence) && !isBlank(answer.ref))
            return std::vector<Problem>{};
        return std::vector{Problem{DirectiveFault::NothingShows, {}, {{}, line, {}}, complianceRule}};
    }
    const auto bar = barOf(batch.books, entry, answer, answered);
    if (!bar)
        return tl::unexpected(bar.error());
    if (*bar)
        return std::vector{Problem{DirectiveFault::MayNotComply, {(*bar)->why}, {{}, line, "capacity"}, (*bar)->rule}};
    return std::vector<Problem>{};
}

/// Nobody takes out by a word what the record says is bound.
Findings judgedExcuse(const Batch& batch, const Entry& entry, const DirectiveIssued& issued, const Answered& answered,
                      int line) {
    const auto parts = PartsKnown::read(batch.books, entry.on);
    if (!parts)
        return tl::unexpected(parts.error());
    std::vector<const ItemFacts*> beside;
    for (const auto& each : answered.beside)
        beside.push_back(&each);
    std::vector<Problem> problems;
    for (const auto& item : answered.items)
        if (appliesTo(issued.applies, item, beside, *parts).applies == Truth::Yes)
            problems.push_back(
                Problem{DirectiveFault::RecordSaysBound, {issued.directive, item.id}, {{}, line, "answer"}});
    return problems;
}

Findings judgedAnswer(const Batch& batch, const Entry& entry, const DirectiveAnswered& answer, int line) {
    const auto issues = issuesOf(batch.books, answer.directive);
    if (!issues)
        return tl::unexpected(issues.error());
    const auto issue = std::ranges::find_if(
        *issues, [&](const Entry& each) { return std::get<DirectiveIssued>(each.body).revision == answer.revision; });
    if (issue == issues->end())
        return std::vector{
            Problem{DirectiveFault::NoSuchRevision, {answer.directive, answer.revision}, {{}, line, "revision"}}};
    if (isBlank(entry.by))
        return std::vector{Problem{DirectiveFault::ByNobody, {}, {{}, line, "by"}}};
    const auto& issued = std::get<DirectiveIssued>(issue->body);
    if (answer.terminating && isBlank(issued.terminating))
        return std::vector{Problem{DirectiveFault::NoTerminatingAction, {answer.directive}, {{}, line, "terminating"}}};
    const auto answered = answeredOn(batch.books, answer, entry.on);
    if (!answered)
        return tl::unexpected(answered.error());
    if (answer.balloon && std::ranges::none_of(answered->items, [&](const ItemFacts& item) {
            return std::ranges::find(issued.applies.kinds, item.kind) != issued.applies.kinds.end();
        }))
        return std::vector{
            Problem{DirectiveFault::BindsNothing, {answer.directive, *answer.balloon}, {{}, line, "balloon"}}};
    return answer.answer == DirectiveAnswer::Done ? judgedDone(batch, entry, answer, *answered, line)
                                                  : judgedExcuse(batch, entry, issued, *answered, line);
}

Findings judgedDirective(const Batch& batch, const Entry& now, int line) {
    if (const auto* issued = std::get_if<DirectiveIssued>(&now.body))
        return judgedIssue(batch, now, *issued, line);
    if (const auto* answer = std::get_if<DirectiveAnswered>(&now.body))
        return judgedAnswer(batch, now, *answer, line);
    const auto* done = std::get_if<RequirementDone>(&now.body);
    if (done && directiveOf(done->requirement))
        return std::vector{Problem{DirectiveFault::NotByRequirement, {}, {{}, line, "requirement"}}};
    return std::vector<Problem>{};
}

}

Findings askDirectives(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<DirectiveIssued, DirectiveAnswered, RequirementDone>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        if (!*now)
            continue;
        auto found = judgedDirective(batch, **now, line);
        if (!found)
            return tl::unexpected(atLine(found.error(), line));
        for (auto& problem : *found)
            problems.push_back(asAmended(std::move(problem), entry));
    }
    return problems;
}

}
