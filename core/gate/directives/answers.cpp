// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/directives/fitted.h"
#include "bench/release/barred_phrase.h"
#include "gate/checks.h"
#include "gate/directives/answering.h"
#include "gate/refusing.h"
#include "problem/faults/directives/directive_fault.h"
#include "problem/faults/entry_fault.h"
#include "rules/due/directive_rows.h"
#include "text/blank.h"

#include <algorithm>

namespace crownring {

namespace {

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

/// What shows what is answered, and by whom: that it was done, and as much that it need not be.
Findings judgedEvidence(const Batch& batch, Answering& answering, const Entry& entry, const DirectiveAnswered& answer,
                        const Answered& answered, int line) {
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
    const PersonId person(entry.by);
    const auto bar = answering.bar(person, answer.capacity, entry.on, answered);
    if (!bar)
        return tl::unexpected(bar.error());
    if (*bar)
        return std::vector{Problem{DirectiveFault::MayNotComply, {(*bar)->why}, {{}, line, "capacity"}, (*bar)->rule}};
    const auto holds = answer.licence.empty() ? Result<bool>(true)
                                              : answering.holds(person, answer.capacity, entry.on, answer.licence);
    if (!holds)
        return tl::unexpected(holds.error());
    if (!*holds)
        return std::vector{Problem{DirectiveFault::NotHisLicence, {answer.licence, person}, {{}, line, "licence"}}};
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

/// The first day on which anybody could know of it.
CivilDate knownFrom(const std::vector<Entry>& issues) {
    auto first = CivilDate::last();
    for (const auto& issue : issues)
        first = std::min({first, issue.on, std::get<DirectiveIssued>(issue.body).effective});
    return first;
}

/// What was answered before there was anything to answer for.
std::vector<Problem> judgedDay(const Entry& entry, const DirectiveIssued& issued, const DirectiveAnswered& answer,
                               const Answered& answered, CivilDate known, int line) {
    std::vector<Problem> problems;
    if (answer.answer == DirectiveAnswer::NotApplicable && entry.on < known)
        problems.push_back(Problem{DirectiveFault::ExcusedBeforeIssue, {answer.directive, known}, {{}, line, "on"}});
    for (const auto& item : answered.items)
        if (item.made && isBefore(entry.on, *item.made) &&
            std::ranges::find(issued.applies.kinds, item.kind) != issued.applies.kinds.end())
            problems.push_back(Problem{DirectiveFault::BeforeItWasMade, {item.id, item.made->iso()}, {{}, line, "on"}});
    return problems;
}

Findings judgedAnswer(const Batch& batch, Answering& answering, const Entry& entry, const DirectiveAnswered& answer,
                      int line) {
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
    if (!answer.amoc.empty() && isBlank(answer.amoc))
        return std::vector{Problem{EntryFault::Blank, {}, {{}, line, "amoc"}}};
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
    if (auto early = judgedDay(entry, issued, answer, *answered, knownFrom(*issues), line); !early.empty())
        return early;
    if (answer.answer == DirectiveAnswer::NotApplicable)
        if (auto bound = judgedExcuse(batch, entry, issued, *answered, line); !bound || !bound->empty())
            return bound;
    return judgedEvidence(batch, answering, entry, answer, *answered, line);
}

Findings judgedDirective(const Batch& batch, Answering& answering, const Entry& now, int line) {
    if (const auto* issued = std::get_if<DirectiveIssued>(&now.body))
        return judgedIssue(batch, now, *issued, line);
    if (const auto* answer = std::get_if<DirectiveAnswered>(&now.body))
        return judgedAnswer(batch, answering, now, *answer, line);
    const auto* done = std::get_if<RequirementDone>(&now.body);
    if (done && directiveOf(done->requirement))
        return std::vector{Problem{DirectiveFault::NotByRequirement, {}, {{}, line, "requirement"}}};
    return std::vector<Problem>{};
}

}

Findings askDirectives(const Batch& batch) {
    std::vector<Problem> problems;
    Answering answering(batch.books);
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<DirectiveIssued, DirectiveAnswered, RequirementDone>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        if (!*now)
            continue;
        auto found = judgedDirective(batch, answering, **now, line);
        if (!found)
            return tl::unexpected(atLine(found.error(), line));
        for (auto& problem : *found)
            problems.push_back(asAmended(std::move(problem), entry));
    }
    return problems;
}

}
